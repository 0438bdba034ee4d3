package org.cupwright.app.office.today;

import java.time.LocalDate;
import org.cupwright.app.desk.plan.PlanChoice;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.course.Course;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;

/** The plan that somebody has looked at, as long as it is still the day's. */
record SeenPlan(Session session) {
    /**
     * The day's plan.
     *
     * @param number its number when it was looked at
     * @throws Problem when it is another by now
     */
    StoredPlan of(LocalDate date, long number) {
        return session.read(stores -> {
            Course course = session.course(stores);
            StoredPlan plan = PlanChoice.plan(stores, course, date);
            if (stores.versions(course.id(), date).of(Part.PLAN) != number) {
                throw Problem.of("planChanged", "date", date, new Message.Day(date));
            }
            return plan;
        });
    }
}
