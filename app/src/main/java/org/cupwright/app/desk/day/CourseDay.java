package org.cupwright.app.desk.day;

import java.time.LocalDate;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DayRain;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.policy.Policy;
import org.cupwright.policy.PolicyHistory;
import org.cupwright.units.GreenSpeed;

/**
 * One day on one course: the policy in force, the green speed, the weather expected.
 *
 * @param course the course
 * @param date the day
 * @param policy the policy in force that day
 * @param policyVersion how many changes of the policy there had been
 * @param speed the day's fastest green speed, and where it comes from
 * @param rain whether rain is expected during play, and who says so
 * @param log what the logbook says of that day
 */
public record CourseDay(
        Course course, LocalDate date, Policy policy, int policyVersion, DaySpeed speed, DayRain rain, DayLog log) {

    public static CourseDay of(Stores stores, DayQuestion question, Session session) {
        Course course = session.course(stores);
        LocalDate date = question.date().orElseGet(() -> CourseToday.of(course, session.clock()));
        PolicyHistory history = stores.policies().history(course.id());
        Policy policy = history.at(date);
        DayLog log = DayLog.of(stores.facts(), course, date);
        FactsInEffect facts = new FactsInEffect(stores.facts(), course.id());
        DaySpeed speed = new SpeedOfDay(facts, log, policy).or(question.speed());
        DayRain rain = question.rain().orElseGet(() -> RainOfDay.foretold(facts, log, policy));
        return new CourseDay(course, date, policy, history.changes().size(), speed, rain, log);
    }

    /** The day's fastest green speed. */
    public GreenSpeed fastest() {
        return new GreenSpeed(speed.feet());
    }
}
