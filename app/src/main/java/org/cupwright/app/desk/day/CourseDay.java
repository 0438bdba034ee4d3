package org.cupwright.app.desk.day;

import java.time.LocalDate;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.holelocation.HoldPolicy;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
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
 * @param fastest the day's fastest green speed
 * @param rain whether rain is expected during play
 * @param log what the logbook says of that day
 */
public record CourseDay(
        Course course, LocalDate date, Policy policy, int policyVersion, GreenSpeed fastest, boolean rain, DayLog log) {

    public static CourseDay of(Stores stores, DayQuestion question, Session session) {
        Course course = session.course(stores);
        LocalDate date = question.date().orElseGet(() -> CourseToday.of(course, session.clock()));
        PolicyHistory history = stores.policies().history(course.id());
        Policy policy = history.at(date);
        DayLog log = DayLog.of(stores.facts(), course, date);
        GreenSpeed fastest = question.speedFeet().map(CourseDay::speed).orElseGet(() -> fastest(log, policy));
        return new CourseDay(course, date, policy, history.changes().size(), fastest, question.rain(), log);
    }

    /** As it was read that day, with what may come on top; without a reading what the course takes for granted. */
    private static GreenSpeed fastest(DayLog log, Policy policy) {
        return log.speedRead()
                .map(read -> read.by(policy))
                .orElseGet(() -> new GreenSpeed(policy.get(HoldPolicy.SEASON_SPEED_FEET)));
    }

    private static GreenSpeed speed(double feet) {
        if (!(feet >= GreenSpeed.SLOWEST_FEET && feet <= GreenSpeed.FASTEST_FEET)) {
            throw Problem.of(
                    Message.of("problem.speed", new Name(plain(feet))),
                    "speed",
                    plain(feet),
                    Message.of(
                            "try.speed",
                            new Name(plain(GreenSpeed.SLOWEST_FEET)),
                            new Name(plain(GreenSpeed.FASTEST_FEET))));
        }
        return new GreenSpeed(feet);
    }

    private static String plain(double feet) {
        return feet == Math.rint(feet) ? Long.toString((long) feet) : Double.toString(feet);
    }
}
