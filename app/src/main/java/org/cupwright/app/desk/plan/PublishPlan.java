package org.cupwright.app.desk.plan;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.desk.CourseChoice;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.course.Course;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Publishes a day's plan, so that it stands until somebody withdraws it; or withdraws it again. */
public final class PublishPlan {
    private final DataFolder folder;
    private final Clock clock;

    public PublishPlan(DataFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** What is wanted of the plan. */
    public enum Step {
        PUBLISH(State.PUBLISHED),
        WITHDRAW(State.DRAFT);

        private final State leadsTo;

        Step(State leadsTo) {
            this.leadsTo = leadsTo;
        }
    }

    /**
     * The plan as it stands afterwards.
     *
     * @param changed whether it stood otherwise before
     */
    public record Answer(Course course, StoredPlan plan, boolean changed) {}

    /** Takes the step; a plan that stands there already is left as it is. */
    public Answer take(Step step, Optional<String> courseId, Optional<LocalDate> date) {
        Answer answer = folder.read(stores -> {
            Course course = CourseChoice.course(stores, courseId);
            LocalDate day = date.orElseGet(() -> CourseToday.of(course, clock));
            return taken(step, course, PlanChoice.plan(stores, course, day));
        });
        if (answer.changed()) {
            folder.write(stores -> stores.plans().add(answer.plan()));
        }
        return answer;
    }

    private static Answer taken(Step step, Course course, StoredPlan plan) {
        if (plan.state() == State.DONE) {
            throw Problem.of(
                    Message.of("problem.planDone", new Message.Day(plan.date())),
                    Message.of("where.option", new Name("--date")),
                    plan.date().toString(),
                    Message.of("try.planDone"));
        }
        return new Answer(course, plan.in(step.leadsTo), plan.state() != step.leadsTo);
    }
}
