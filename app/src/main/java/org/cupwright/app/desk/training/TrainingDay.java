package org.cupwright.app.desk.training;

import java.time.LocalDate;
import java.time.ZoneId;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.policy.PolicyKeys;
import org.cupwright.app.desk.policy.TrainingPolicy;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.PolicyStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/**
 * What training rests on: it is of people, not of a course, and is asked about also where no course is meant.
 *
 * @param course its id; empty where none is meant
 * @param zone by whose clock days are meant
 * @param policy as it is on that day
 */
record TrainingDay(String course, ZoneId zone, LocalDate today, Policy policy) {
    static TrainingDay of(Session session, Stores stores) {
        try {
            Course course = session.course(stores);
            LocalDate today = CourseToday.of(course, session.clock());
            Policy policy = PolicyKeys.history(stores, session.course()).at(today);
            return new TrainingDay(course.id(), course.frame().zone(), today, policy);
        } catch (Problem noneMeant) {
            ZoneId zone = session.clock().getZone();
            LocalDate today = LocalDate.now(session.clock());
            Policy policy = stores.policies().history(PolicyStore.EVERY_COURSE).at(today);
            return new TrainingDay("", zone, today, policy);
        }
    }

    Competences competences(Stores stores) {
        return competences(stores, today);
    }

    Competences competences(Stores stores, LocalDate day) {
        return new Competences(stores.training().decisions(), day, policy.get(TrainingPolicy.REFRESHER_MONTHS));
    }
}
