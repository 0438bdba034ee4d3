package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.PlanChange;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/** Takes back the last change of plans as a whole: its days have again the plans they had before it. */
public record UndoChange(Session session) {
    /** Nobody plans so far ahead. */
    private static final int FAR_YEARS = 10;

    /**
     * What was taken back.
     *
     * @param policy the settings of today
     * @param change the change
     * @param holes the holes that are where they were before it
     */
    public record Answer(Course course, Policy policy, PlanChange change, List<ChangedHole> holes) {}

    /** @throws Problem where there is none, or something of it was changed since: then with which days, and how */
    public Answer undo() {
        return undo(SeenPlans.NONE);
    }

    /** The same, for somebody who has looked at the plans; a problem too where some of them are others by now. */
    public Answer undo(SeenPlans seen) {
        return session.decide(Right.PLAN, stores -> {
            Course course = session.course(stores);
            seen.refuseIfOthers(stores, course);
            LocalDate today = CourseToday.of(course, session.clock());
            PlanChange last = last(stores, course, today);
            refuseIfChanged(stores, course, last, today);
            List<ChangedHole> holes = new ArrayList<>();
            for (LocalDate day : last.days()) {
                StoredPlan now = PlanChoice.plan(stores, course, day);
                StoredPlan before =
                        stores.plans().before(course.id(), day, last).orElseThrow();
                stores.plans().add(before);
                holes.addAll(moved(now, before));
            }
            return new Answer(course, stores.policies().history(course.id()).at(today), last, holes);
        });
    }

    private static PlanChange last(Stores stores, Course course, LocalDate today) {
        return stores.plans().between(course.id(), today, today.plusYears(FAR_YEARS)).stream()
                .flatMap(plan -> plan.change().stream())
                .max(Comparator.comparing(PlanChange::at))
                .orElseThrow(() -> Problem.of(Message.of("problem.nothingToUndo"), Message.of("try.nothingToUndo")));
    }

    private static void refuseIfChanged(Stores stores, Course course, PlanChange last, LocalDate today) {
        List<Message> since = last.days().stream()
                .flatMap(day -> since(stores, course, last, day, today).stream())
                .toList();
        if (!since.isEmpty()) {
            throw Problem.of(
                    Message.of("problem.changedSince", new Name(last.person()), new Said(since)),
                    Message.of("try.changedSince"));
        }
    }

    private static Optional<Message> since(
            Stores stores, Course course, PlanChange last, LocalDate date, LocalDate today) {
        Day day = new Day(date);
        StoredPlan now = PlanChoice.plan(stores, course, date);
        if (date.isBefore(today)) {
            return Optional.of(Message.of("since.past", day));
        }
        if (!now.change().equals(Optional.of(last))) {
            return Optional.of(Message.of("since.planned", day));
        }
        if (now.state() != State.DRAFT) {
            return Optional.of(Message.of("since.published", day));
        }
        StoredPlan before = stores.plans().before(course.id(), date, last).orElseThrow();
        List<String> cut = cut(CutSoFar.of(now, HolesCut.of(stores.facts(), course, date)), moved(now, before));
        return cut.isEmpty()
                ? Optional.empty()
                : Optional.of(Message.of("since.cut", day, new Name(String.join(", ", cut))));
    }

    /** What is cut where the change had it; a hole that it left alone may have been cut before it, or since. */
    private static List<String> cut(CutSoFar cut, List<ChangedHole> moved) {
        Set<String> holes = moved.stream().map(ChangedHole::hole).collect(Collectors.toSet());
        return cut.holes().stream().filter(holes::contains).toList();
    }

    private static List<ChangedHole> moved(StoredPlan now, StoredPlan before) {
        return Stream.concat(before.holes().stream(), now.holes().stream())
                .map(StoredHole::hole)
                .distinct()
                .filter(hole -> !place(now, hole).equals(place(before, hole)))
                .map(hole -> new ChangedHole(
                        now.date(), hole, now.find(hole), before.find(hole), Message.of("change.why.undone")))
                .toList();
    }

    private static Optional<?> place(StoredPlan plan, String hole) {
        return plan.find(hole).map(planned -> planned.position().judgement().position());
    }
}
