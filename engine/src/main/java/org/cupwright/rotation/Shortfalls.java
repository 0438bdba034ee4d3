package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Third;
import org.cupwright.holelocation.Verdict;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.counting.Parts;
import org.cupwright.rotation.counting.Split;

/** What the day's plan could not do, and which holes a balance leaves out. */
final class Shortfalls {
    private final DayOutcome outcome;
    private final Aims aims;
    private final List<Message> all = new ArrayList<>();

    Shortfalls(DayOutcome outcome, Aims aims) {
        this.outcome = outcome;
        this.aims = aims;
    }

    List<Message> all() {
        if (outcome.thirdsOff() > 0) {
            parts("thirds", Split.THIRD);
            for (Third third : Third.values()) {
                whyThirdsAreOff(third);
            }
        }
        balance(Term.LEFT_RIGHT, Split.LATERAL);
        balance(Term.LATERAL, Split.LATERAL);
        balance(Term.DIFFICULTY, Split.DIFFICULTY);
        for (int i = 0; i < outcome.greens().size(); i++) {
            hole(outcome.greens().get(i), outcome.chosen().get(i));
        }
        return List.copyOf(all);
    }

    /**
     * Thirds can be off for two reasons only: fewer greens offer a third than should have it, or more greens offer
     * nothing else than may have it. (By Hall's theorem a set of thirds is at fault; with three of them, one is, or the
     * one left over.)
     */
    private void whyThirdsAreOff(Third third) {
        int part = third.ordinal();
        int placed = Split.THIRD.parts(outcome.tally()).total();
        long one = Split.THIRD.one(part);
        Translated word = new Translated("third." + EnumNames.lowerCamel(third));
        long offering = outcome.greens().stream()
                .filter(green -> green.offers(Split.THIRD).contains(one))
                .count();
        int least = aims.thirds().least(part, placed);
        if (offering < least) {
            name("tooFewGreensOffer", word, new Count(offering), new Count(least));
        }
        long nothingElse = outcome.greens().stream()
                .filter(green -> green.offers(Split.THIRD).equals(Set.of(one)))
                .count();
        int most = aims.thirds().most(part, placed);
        if (nothingElse > most) {
            name("tooManyGreensOfferOnly", word, new Count(nothingElse), new Count(most));
        }
    }

    private void balance(Term term, Split split) {
        if (aims.weight(term) > 0 && aims.ofDay(term, outcome.tally()) > 0) {
            parts(EnumNames.lowerCamel(term), split);
        }
    }

    private void parts(String finding, Split split) {
        Parts parts = split.parts(outcome.tally());
        name(finding, new Count(parts.first()), new Count(parts.second()), new Count(parts.third()));
    }

    private void hole(OpenGreen green, Appraised chosen) {
        Name hole = new Name(green.hole());
        if (!green.from().hasLineOfPlay()) {
            name("noLineOfPlay", hole);
        }
        if (chosen.candidate().rank().isEmpty()) {
            name("difficultyUnknown", hole);
        }
        if (chosen.candidate().doubtful()) {
            name("doubtful", hole);
        } else if (chosen.candidate().verdict() == Verdict.CAUTION) {
            name("care", hole);
        }
        if (chosen.terms().get(Term.NEAR_YESTERDAY) > 0) {
            MapPoint yesterday = green.from().yesterday().orElseThrow();
            double away = chosen.candidate().at().distanceMetres(yesterday);
            name("nearYesterday", hole, new Length(away), new Length(aims.leastFromYesterdayMetres()));
        }
    }

    private void name(String finding, Argument... arguments) {
        all.add(Message.of("rotation.finding." + finding, arguments));
    }
}
