package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.log.HolesCut.HoleCut;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;

/** How one hole stands on a day: what is planned there, what people asked for, and what was cut. */
public record ShowHole(Session session) {
    /**
     * A hole on a day.
     *
     * @param course the course
     * @param hole the hole
     * @param question the day at the speed and in the weather of its plan; without a plan as it was asked
     * @param plan the day's plan
     * @param number which of the day's plans that is; 0 where there is none
     * @param cut what the logbook says was done
     */
    public record Answer(
            Course course,
            Hole hole,
            DayQuestion question,
            Optional<StoredPlan> plan,
            long number,
            Optional<HoleCut> cut) {
        /** What the plan has for the hole. */
        public Optional<StoredHole> planned() {
            return plan.flatMap(known -> known.find(hole.id()));
        }

        /** What people asked for it. */
        public Optional<Asked> asked() {
            return plan.stream()
                    .flatMap(known -> known.asked().stream())
                    .filter(one -> one.hole().equals(hole.id()) && !one.isNothing())
                    .findFirst();
        }

        /** Where the hole is as it was cut, or is to be; empty where nobody says. */
        public Optional<MapPoint> spot() {
            return cut.flatMap(HoleCut::at)
                    .or(() -> planned().map(hole -> hole.position().judgement().position()));
        }
    }

    public Answer of(DayQuestion question, String holeId) {
        return session.read(stores -> of(stores, question, holeId));
    }

    private Answer of(Stores stores, DayQuestion question, String holeId) {
        Course course = session.course(stores);
        Hole hole = HoleChoice.hole(course, holeId);
        LocalDate date = question.date().orElseGet(() -> CourseToday.of(course, session.clock()));
        Optional<StoredPlan> plan = PlanChoice.find(stores, course, date);
        return new Answer(
                course,
                hole,
                plan.map(known -> asPlanned(question, known)).orElse(question),
                plan,
                stores.versions(course.id(), date).of(Part.PLAN),
                HolesCut.of(stores.facts(), course, date).find(hole.id()));
    }

    /** The day as its plan was made for it, whatever the question says of speed and weather. */
    public static DayQuestion asPlanned(DayQuestion question, StoredPlan plan) {
        return new DayQuestion(
                Optional.of(plan.date()),
                Optional.of(plan.basis().daySpeed()),
                Optional.of(plan.basis().dayRain()),
                question.ground());
    }
}
