package org.cupwright.app.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.log.HolesCut.HoleCut;
import org.cupwright.course.Course;
import org.cupwright.policy.Policy;

/** Why a hole was where it was on a day: from the plan that was stored, not computed anew. */
public final class ExplainHole {
    private final DataFolder folder;
    private final Clock clock;

    public ExplainHole(DataFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** The plan of the day, the hole in it, the policy of that day, and what the logbook says of its cutting. */
    public record Answer(Course course, Policy policy, StoredPlan plan, StoredHole hole, Optional<HoleCut> cut) {}

    public Answer of(Optional<String> courseId, Optional<LocalDate> date, String holeId) {
        return folder.read(stores -> {
            Course course = CourseChoice.course(stores, courseId);
            LocalDate day = date.orElseGet(() -> CourseToday.of(course, clock));
            CourseChoice.hole(course, holeId);
            StoredPlan plan = PlanChoice.plan(stores, course, day);
            StoredHole hole = plan.find(holeId).orElseThrow(() -> PlanChoice.leftOut(holeId, day));
            return new Answer(
                    course,
                    stores.policies().history(course.id()).at(day),
                    plan,
                    hole,
                    HolesCut.of(stores.facts(), course, day).find(holeId));
        });
    }
}
