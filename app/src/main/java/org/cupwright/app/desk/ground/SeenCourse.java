package org.cupwright.app.desk.ground;

import java.time.LocalDate;
import java.util.Map;
import org.cupwright.app.desk.ChangedMeanwhile;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.course.Course;

/** The version of a course that somebody saw who changes it. */
final class SeenCourse {
    private SeenCourse() {}

    static long version(Stores stores, Course course) {
        return stores.versions(course.id(), LocalDate.EPOCH).of(Part.COURSE); // the day matters to plans alone
    }

    /** @throws org.cupwright.message.Problem if the course is another by now */
    static void refuseIfOther(Stores stores, Course course, long version) {
        Versions seen = new Versions(Map.of(Part.COURSE, version));
        Versions now = new Versions(Map.of(Part.COURSE, version(stores, course)));
        new ChangedMeanwhile(stores, course.id(), seen, now).refuse(Part.COURSE);
    }
}
