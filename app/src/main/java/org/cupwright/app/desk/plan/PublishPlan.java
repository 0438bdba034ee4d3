package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.course.Course;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;

/** Publishes a day's plan, so that it stands until somebody withdraws it; or withdraws it again. */
public record PublishPlan(Session session) {
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

    /**
     * Takes the step; a plan that stands there already is left as it is.
     *
     * @param sure whether a plan is meant with two holes of one green nearer to each other than the course wants
     */
    public Answer take(Step step, Optional<LocalDate> date, boolean sure) {
        return session.decide(Right.PLAN, stores -> {
            Course course = session.course(stores);
            LocalDate day = date.orElseGet(() -> CourseToday.of(course, session.clock()));
            Answer answer = taken(step, course, PlanChoice.plan(stores, course, day));
            if (answer.changed()) {
                if (step == Step.PUBLISH && !sure) {
                    askAboutSharedGreens(answer.plan());
                }
                stores.plans().add(answer.plan());
            }
            return answer;
        });
    }

    /** Two groups on one green stand in each other's way: whoever publishes that should know. */
    private static void askAboutSharedGreens(StoredPlan plan) {
        plan.findings().stream()
                .filter(finding -> finding.key().toLowerCase(Locale.ROOT).endsWith("nearonsharedgreen"))
                .findFirst()
                .ifPresent(near -> {
                    throw Problem.of(
                            Message.of("problem.nearOnSharedGreen", new Message.Said(near)),
                            "date",
                            plan.date(),
                            Message.of("try.nearOnSharedGreen"));
                });
    }

    private static Answer taken(Step step, Course course, StoredPlan plan) {
        if (plan.state() == State.DONE) {
            throw Problem.of("planDone", "date", plan.date(), new Message.Day(plan.date()));
        }
        return new Answer(course, plan.in(step.leadsTo), plan.state() != step.leadsTo);
    }
}
