package org.cupwright.app.desk.begin;

import java.util.Comparator;
import java.util.List;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Place;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.formats.outlines.RoundOrder;
import org.cupwright.message.Problem;

/** Makes the course of what was set up. From then on it is one like any other. */
public record FinishCourse(Session session) {
    /** @throws Problem if something is missing */
    public Course finish() {
        return session.decide(Right.SURVEY, stores -> {
            SettingUp stands = BeginCourse.stands(stores);
            LookOver.Answer seen = LookOver.of(stands);
            if (!seen.missing().isEmpty()) {
                LookOver.Remark first = seen.missing().get(0);
                throw Problem.of(first.says(), "course", stands.place().name(), first.tryThis());
            }
            Course course = course(stands);
            stores.courses().add(course);
            stores.setUp().add(stands.asDone());
            return course;
        });
    }

    private static Course course(SettingUp stands) {
        Place place = stands.place();
        List<Hole> holes = stands.ofHoles().stream()
                .map(BegunGreen::hole)
                .sorted(Comparator.comparing(Hole::id, RoundOrder.byName()))
                .toList();
        return new Course(place.id(), place.name(), new CourseFrame(place.epsg(), place.zone()), holes);
    }
}
