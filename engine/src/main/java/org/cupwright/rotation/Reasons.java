package org.cupwright.rotation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.Third;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.candidate.Area;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.counting.Split;

/** Why a hole is where it is, as far as the plan knows. */
final class Reasons {
    private final DayOutcome outcome;
    private final Aims aims;

    Reasons(DayOutcome outcome, Aims aims) {
        this.outcome = outcome;
        this.aims = aims;
    }

    List<Message> of(OpenGreen green, Appraised chosen) {
        Candidate candidate = chosen.candidate();
        List<Message> reasons = new ArrayList<>();
        Optional<LocalDate> since = green.from().wishes().since();
        if (since.isPresent()) {
            reasons.add(reason("stays", new Day(since.get())));
            reasons.addAll(rules(candidate.judgement()));
            return reasons;
        }
        if (green.locked()) {
            reasons.add(reason("locked"));
        }
        green.from().wishes().areaOf(candidate.at()).map(this::area).ifPresent(reasons::add);
        reasons.addAll(goodWord(candidate.judgement()));
        reasons.add(third(green, candidate));
        reasons.add(yesterday(green, candidate));
        reasons.addAll(rules(candidate.judgement()));
        reasons.add(reason("room", new Length(candidate.goodWithinMetres())));
        reasons.add(candidate
                .rank()
                .map(rank -> reason("difficulty", new Translated("difficulty." + EnumNames.lowerCamel(rank))))
                .orElse(reason("difficultyUnknown")));
        return reasons;
    }

    private Message area(Area area) {
        Name number = new Name(area.number());
        return aims.leavesTheSpot() ? reason("areaOnly", number) : reason("area", number);
    }

    /** What the person says who speaks for the spot: the rule's own sentence. */
    private static List<Message> goodWord(Judgement judgement) {
        boolean good = judgement
                .word()
                .map(PersonsOpinion::kind)
                .filter(PersonsOpinion.Kind::speaksForAHole)
                .isPresent();
        return good ? List.of(judgement.rule(RuleId.DRAWN_GROUND).says()) : List.of();
    }

    private Message third(OpenGreen green, Candidate candidate) {
        Optional<Third> third = candidate.third();
        if (third.isEmpty()) {
            return reason("noLineOfPlay");
        }
        Translated word = new Translated("third." + EnumNames.lowerCamel(third.get()));
        if (green.offers(Split.THIRD).size() == 1 && !green.locked()) {
            return reason("onlyThird", word);
        }
        if (!aims.balancesThirds()) {
            return reason("thirdFree", word);
        }
        int part = third.get().ordinal();
        int placed = Split.THIRD.parts(outcome.tally()).total();
        return reason(
                "third",
                word,
                new Count(Split.THIRD.parts(outcome.tally()).count(part)),
                new Count(aims.thirds().most(part, placed)));
    }

    private Message yesterday(OpenGreen green, Candidate candidate) {
        if (green.from().yesterday().isEmpty()) {
            return green.from()
                    .yesterdaysThird()
                    .map(third -> reason("yesterdayRoughly", new Translated("third." + EnumNames.lowerCamel(third))))
                    .orElseGet(() -> reason("yesterdayUnknown"));
        }
        double away = candidate.at().distanceMetres(green.from().yesterday().get());
        double least = aims.leastFromYesterdayMetres();
        return reason(away < least ? "nearYesterday" : "fromYesterday", new Length(away), new Length(least));
    }

    /**
     * Rules set aside, refused or answered with care; where there are none of them, the rule with the least to spare.
     */
    private static List<Message> rules(Judgement judgement) {
        List<Message> said = new ArrayList<>();
        for (RuleResult result : judgement.rules()) {
            if (judgement.setAside().contains(result.rule())) {
                said.add(rule("setAside", result));
            } else if (speaksAgainst(result)) {
                said.add(result.says()); // nothing was measured, and the sentence names who says so
            } else if (result.outcome() == Outcome.FAIL) {
                said.add(rule("fails", result));
            } else if (result.leans().equals(Optional.of(Outcome.FAIL))) {
                said.add(rule("doubtful", result));
            } else if (result.leans().isPresent()) {
                said.add(rule("check", result));
            } else if (result.outcome() == Outcome.CAUTION) {
                said.add(rule("care", result));
            }
        }
        if (said.isEmpty()) {
            judgement.rules().stream()
                    .filter(result -> result.outcome() == Outcome.PASS && measured(result))
                    .min(Comparator.comparingDouble(Reasons::spare))
                    .ifPresent(result -> said.add(rule("leastToSpare", result)));
        }
        return said;
    }

    private static boolean speaksAgainst(RuleResult result) {
        return result.rule() == RuleId.DRAWN_GROUND
                && (result.outcome() == Outcome.FAIL || result.outcome() == Outcome.CAUTION);
    }

    /** The margin as a share of the limit, so that metres and slopes can be compared. */
    private static double spare(RuleResult result) {
        return result.margin().orElseThrow() / Math.abs(result.limit().orElseThrow());
    }

    private static boolean measured(RuleResult result) {
        return result.value().isPresent()
                && result.margin().isPresent()
                && result.limit().isPresent()
                && result.limit().getAsDouble() != 0;
    }

    private static Message rule(String what, RuleResult result) {
        Translated name = new Translated("rule." + result.rule().id());
        if (result.value().isEmpty() || result.limit().isEmpty()) {
            return reason(what, name);
        }
        return reason(
                what + "Measured",
                name,
                Measures.of(result, result.value().getAsDouble()),
                Measures.of(result, result.limit().getAsDouble()));
    }

    private static Message reason(String what, Argument... arguments) {
        return Message.of("rotation.reason." + what, arguments);
    }
}
