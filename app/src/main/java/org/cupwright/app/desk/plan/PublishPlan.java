package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;

/** Publishes a day's plan, so that it stands until somebody withdraws it; or withdraws it again. */
public record PublishPlan(Session session) {
    private static final Set<String> NEAR =
            Set.of("rotation.finding.nearOnSharedGreen", "rotation.finding.tooNearOnSharedGreen");

    /** What is wanted of the plan. */
    public enum Step {
        PUBLISH(State.PUBLISHED, AuditKind.PLAN_PUBLISHED),
        WITHDRAW(State.DRAFT, AuditKind.PLAN_WITHDRAWN);

        private final State leadsTo;
        private final AuditKind isCalled;

        Step(State leadsTo, AuditKind isCalled) {
            this.leadsTo = leadsTo;
            this.isCalled = isCalled;
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
                keep(stores, step, answer.plan());
            }
            return answer;
        });
    }

    /** Publishes a plan that somebody has looked at, whatever is near on it; refused when it is another by now. */
    public Answer publish(StoredPlan seen) {
        return session.decide(Right.PLAN, stores -> {
            Course course = session.course(stores);
            StoredPlan now = PlanChoice.plan(stores, course, seen.date());
            if (!now.equals(seen)) {
                throw Problem.of("planChanged", "date", seen.date(), new Message.Day(seen.date()));
            }
            Answer answer = taken(Step.PUBLISH, course, now);
            if (answer.changed()) {
                keep(stores, Step.PUBLISH, answer.plan());
            }
            return answer;
        });
    }

    /**
     * Takes the step for somebody who has looked at the day's plan, whatever is near on it.
     *
     * @param seen its number when it was looked at
     * @throws Problem when it is another by now: with what became of it
     */
    public Answer take(Step step, LocalDate day, long seen) {
        return session.decide(Right.PLAN, stores -> {
            Course course = session.course(stores);
            new SeenPlans(Map.of(day, seen)).refuseIfOthers(stores, course);
            Answer answer = taken(step, course, PlanChoice.plan(stores, course, day));
            if (answer.changed()) {
                keep(stores, step, answer.plan());
            }
            return answer;
        });
    }

    private void keep(Stores stores, Step step, StoredPlan plan) {
        stores.plans().add(plan);
        About about = new About(plan.courseId(), new Message.Day(plan.date()));
        stores.audit().add(session.did(step.isCalled, about, Optional.empty(), Optional.empty()));
    }

    /** The plan as it stands before anything is done. */
    public StoredPlan standing(Optional<LocalDate> date) {
        return session.read(stores -> {
            Course course = session.course(stores);
            return PlanChoice.plan(stores, course, date.orElseGet(() -> CourseToday.of(course, session.clock())));
        });
    }

    /** Two holes of one green that a plan has nearer to each other than the course wants. */
    public static Optional<Message> nearOnSharedGreens(StoredPlan plan) {
        List<Message> near = plan.findings().stream()
                .filter(finding -> NEAR.contains(finding.key()))
                .toList();
        return near.isEmpty() ? Optional.empty() : Optional.of(Message.of("publish.near", new Message.Said(near)));
    }

    /** Two groups on one green stand in each other's way: whoever publishes that should know. */
    private static void askAboutSharedGreens(StoredPlan plan) {
        nearOnSharedGreens(plan).ifPresent(near -> {
            throw Problem.of(near, "date", plan.date(), Message.of("try.nearOnSharedGreen"));
        });
    }

    private static Answer taken(Step step, Course course, StoredPlan plan) {
        if (plan.state() == State.DONE) {
            throw Problem.of("planDone", "date", plan.date(), new Message.Day(plan.date()));
        }
        return new Answer(course, plan.in(step.leadsTo), plan.state() != step.leadsTo);
    }
}
