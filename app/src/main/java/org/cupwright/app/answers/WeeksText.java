package org.cupwright.app.answers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.app.answers.Line.Cell;
import org.cupwright.app.answers.WeekCell.Sign;
import org.cupwright.app.desk.plan.PlanWeeks;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.Scheme;
import org.cupwright.rotation.SchemePolicy;

/** Weeks of plans in words: what somebody has to decide about first, then a table of holes by days, week by week. */
public record WeeksText(Texts texts) {
    private static final int DAYS_A_WEEK = 7;
    private static final int HOLE_WIDTH = 6;
    private static final int DAY_WIDTH = 10;

    public Lines lines(PlanWeeks.Answer answer) {
        List<StoredPlan> plans = answer.plans();
        FirstText first = new FirstText(texts, answer.day());
        Lines lines = first.before(answer.first().before(), new Lines(texts)).gap();
        lines.line(texts.say(
                "weeks.title",
                answer.day().course().name(),
                texts.weekday(plans.get(0).date()),
                texts.day(plans.get(plans.size() - 1).date()),
                plans.size()));
        lines.wrapped(
                "", new DayText(texts).whence(answer.day().speed(), answer.day().rain()));
        Optional<Scheme> scheme = plans.get(plans.size() - 1).basis().scheme().filter(Scheme::goesByAreas);
        if (scheme.isPresent()) {
            lines.wrapped("", texts.say("scheme." + EnumNames.lowerCamel(scheme.get())));
        }
        if (answer.stopped()) {
            lines.wrapped("", stopped(answer.found()));
        }
        decide(plans, lines);
        changedAllTheSame(plans, answer.day().policy(), lines);
        lines = new ShortageText(texts).after(answer.found().shortages(), lines);
        lines.gap().wrapped("", even(plans));
        List<String> holes =
                answer.day().course().round().stream().map(Hole::id).toList();
        for (int from = 0; from < plans.size(); from += DAYS_A_WEEK) {
            week(plans.subList(from, Math.min(plans.size(), from + DAYS_A_WEEK)), holes, lines.gap());
        }
        boolean stays = plans.stream().flatMap(plan -> plan.holes().stream()).anyMatch(StoredHole::stays);
        return lines.gap().wrapped("", texts.say(stays ? "weeks.signsStay" : "weeks.signs"));
    }

    /** What somebody has to decide about in plans as they stand, and how even they are; without the table. */
    public Lines standing(List<StoredPlan> plans, Policy policy) {
        Lines lines = new Lines(texts);
        decide(plans, lines);
        changedAllTheSame(plans, policy, lines);
        return lines.wrapped("", even(plans));
    }

    /** What only the search knows of the plans it has just made: how it ended, and why rules were set aside. */
    public Lines found(PlanWeeks.Answer answer) {
        List<StoredPlan> plans = answer.plans();
        Lines lines = new Lines(texts)
                .wrapped(
                        "",
                        texts.say(
                                "weeks.title",
                                answer.day().course().name(),
                                texts.weekday(plans.get(0).date()),
                                texts.day(plans.get(plans.size() - 1).date()),
                                plans.size()));
        if (answer.stopped()) {
            lines.wrapped("", stopped(answer.found()));
        }
        return new ShortageText(texts).after(answer.found().shortages(), lines);
    }

    private String stopped(PlanWeeks.Found found) {
        return found.ceiling()
                .map(time -> texts.say("weeks.ceiling", time.toMillis() / 1000.0))
                .orElseGet(() -> texts.say("weeks.stopped"));
    }

    /** What the plan could not keep to, hole by hole, and what was left as it stands. */
    private void decide(List<StoredPlan> plans, Lines lines) {
        Map<Aside, List<String>> aside = new LinkedHashMap<>();
        Map<String, List<String>> leftOut = new LinkedHashMap<>();
        List<String> standing = new ArrayList<>();
        for (StoredPlan plan : plans) {
            String day = texts.weekday(plan.date());
            if (plan.state() != State.DRAFT) {
                standing.add(day);
            }
            for (StoredHole hole : plan.holes()) {
                if (!hole.stays() && !hole.position().judgement().setAside().isEmpty()) {
                    aside.computeIfAbsent(aside(hole), key -> new ArrayList<>()).add(day);
                }
            }
            plan.findings().stream()
                    .filter(finding -> LEFT_OUT.contains(finding.key()))
                    .forEach(finding -> leftOut.computeIfAbsent(texts.say(finding), key -> new ArrayList<>())
                            .add(day));
        }
        standing(standing, lines);
        aside.forEach((what, days) -> lines.wrapped("! ", said(what, days)));
        leftOut.forEach((says, days) -> lines.wrapped("! ", says + " " + String.join(", ", days)));
    }

    /** What is set aside for a hole: the rest of old holes, or rules that go before it, by their names. */
    private record Aside(String hole, boolean rest, String rules) {}

    private Aside aside(StoredHole hole) {
        Set<RuleId> rules = hole.position().judgement().setAside();
        String names =
                rules.stream().map(rule -> texts.say("rule." + rule.id())).collect(Collectors.joining(", "));
        return new Aside(hole.hole(), rules.contains(RuleId.OLD_HOLE), names);
    }

    private String said(Aside what, List<String> days) {
        String all = String.join(", ", days);
        return what.rest()
                ? texts.say("weeks.setAside", what.hole(), days.size(), all)
                : texts.say("weeks.eased", what.hole(), days.size(), all, what.rules());
    }

    /** Holes that are changed on days on which none should be, and that nobody asked for. */
    private void changedAllTheSame(List<StoredPlan> plans, Policy policy, Lines lines) {
        for (StoredPlan plan : plans) {
            List<String> changed = plan.holes().stream()
                    .filter(hole -> plan.state() == State.DRAFT
                            && !hole.stays()
                            && hole.askedBy().isEmpty()
                            && !SchemePolicy.changes(policy, hole.hole(), plan.date()))
                    .map(StoredHole::hole)
                    .toList();
            if (!changed.isEmpty()) {
                String holes = String.join(", ", changed);
                lines.wrapped("! ", texts.say("weeks.changed", texts.weekday(plan.date()), holes, changed.size()));
            }
        }
    }

    private static final List<String> LEFT_OUT =
            List.of("rotation.finding.closed", "rotation.finding.nothingUsable", "rotation.finding.allForbidden");

    private void standing(List<String> days, Lines lines) {
        if (!days.isEmpty()) {
            lines.wrapped("", texts.say("weeks.standing", days.size(), String.join(", ", days)));
        }
    }

    private String even(List<StoredPlan> plans) {
        long thirds = plans.stream()
                .filter(plan -> plan.findings().stream()
                        .noneMatch(finding -> finding.key().equals("rotation.finding.thirds")))
                .count();
        long care = plans.stream()
                .flatMap(plan -> plan.holes().stream())
                .filter(hole -> hole.position().judgement().verdict() == Verdict.CAUTION)
                .count();
        List<StoredHole> all =
                plans.stream().flatMap(plan -> plan.holes().stream()).toList();
        String even = texts.say("weeks.even", thirds, plans.size(), care, all.size());
        long stay = all.stream().filter(StoredHole::stays).count();
        return stay == 0 ? even : even + " " + texts.say("weeks.stay", stay);
    }

    private void week(List<StoredPlan> plans, List<String> holes, Lines lines) {
        List<Cell> head = new ArrayList<>(List.of(Line.left("", HOLE_WIDTH)));
        plans.forEach(plan -> head.add(Line.left(day(plan.date()), DAY_WIDTH)));
        lines.row(head, "");
        for (String hole : holes) {
            List<Cell> cells = new ArrayList<>(List.of(Line.left(hole, HOLE_WIDTH)));
            plans.forEach(plan -> cells.add(Line.left(cell(plan.find(hole)), DAY_WIDTH)));
            lines.row(cells, "");
        }
    }

    private String day(LocalDate date) {
        return texts.weekday(date);
    }

    /** Where a hole is in two short words, whether it asks for care or stays; {@code –} where it is not. */
    private String cell(Optional<StoredHole> hole) {
        WeekCell cell = new WeekCell(texts, hole);
        return cell.numbered()
                + cell.signs().stream()
                        .filter(sign -> sign == Sign.SET_ASIDE || sign == Sign.CARE || sign == Sign.STAYS)
                        .map(cell::say)
                        .collect(Collectors.joining());
    }
}
