package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** The stored plan that a person means. */
public final class PlanChoice {
    private static final int DAYS_NAMED = 5;

    private PlanChoice() {}

    /** The newest version of a day's plan; there must be one. */
    public static StoredPlan plan(Stores stores, Course course, LocalDate day) {
        return find(stores, course, day).orElseThrow(() -> none(stores, course, day));
    }

    /** The newest version of a day's plan. It is done once the logbook says of every hole that it was cut, or left. */
    public static Optional<StoredPlan> find(Stores stores, Course course, LocalDate day) {
        return stores.plans().find(course.id(), day).map(plan -> {
            HolesCut cut = HolesCut.of(stores.facts(), course, day);
            return CutSoFar.of(plan, cut).all() ? plan.in(StoredPlan.State.DONE) : plan;
        });
    }

    static Problem none(Stores stores, Course course, LocalDate day) {
        List<LocalDate> known = stores.plans().days(course.id(), DAYS_NAMED);
        String days = known.stream().map(LocalDate::toString).collect(Collectors.joining(", "));
        return Problem.of(
                Message.of("problem.noPlan", new Message.Day(day)),
                "date",
                day,
                known.isEmpty()
                        ? Message.of("try.planFirst", new Name(day.toString()))
                        : Message.of("try.daysPlanned", new Name(days), new Name(day.toString())));
    }

    /** The plan has no spot for a hole. */
    public static Problem leftOut(String hole, LocalDate day) {
        return Problem.of("holeLeftOut", "hole", hole, new Name(hole), new Message.Day(day));
    }
}
