package org.cupwright.app.desk.resurvey;

import java.util.List;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.course.Hole;

/** Lists the surveys that are kept of each green. */
public record ListSurveys(Session session) {
    /**
     * One green's surveys.
     *
     * @param hole the hole
     * @param surveys the oldest first; none where the green was never surveyed
     */
    public record OfGreen(Hole hole, List<SurveyVersion> surveys) {}

    /** The surveys of some greens, in round order. */
    public record Answer(CourseDay day, List<OfGreen> greens) {
        public Answer {
            greens = List.copyOf(greens);
        }
    }

    /** The surveys of some holes; none named, or "all": of every hole. */
    public Answer of(DayQuestion question, List<String> holes) {
        return session.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            String course = day.course().id();
            List<OfGreen> greens = HoleChoice.holes(day.course(), holes).stream()
                    .map(hole -> new OfGreen(hole, stores.surveys().versions(course, hole.id())))
                    .toList();
            return new Answer(day, greens);
        });
    }
}
