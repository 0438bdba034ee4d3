package org.cupwright.app.desk.findings;

import java.util.List;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.course.Hole;
import org.cupwright.green.RestsOn;

/** What is known of a course's ground, from what was measured alone: no survey is fitted. */
public record KnowGround(Session session) {
    /**
     * What is known of one green.
     *
     * @param hole the hole
     * @param restsOn what the knowledge of its ground rests on; a survey that turns out too thin is none after all
     * @param surveys the oldest first
     * @param readings how many level readings it has
     */
    public record OfGreen(Hole hole, RestsOn restsOn, List<SurveyVersion> surveys, int readings) {}

    /** The greens of a course in round order. */
    public record Answer(CourseDay day, List<OfGreen> greens) {
        public Answer {
            greens = List.copyOf(greens);
        }

        /** All greens together, m². */
        public double areaSquareMetres() {
            return greens.stream()
                    .mapToDouble(green -> green.hole().green().areaSquareMetres())
                    .sum();
        }
    }

    public Answer of(DayQuestion question) {
        return session.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            String course = day.course().id();
            LevelSpots levels = stores.surveys().levels(course);
            return new Answer(
                    day,
                    day.course().holes().stream()
                            .map(hole -> of(stores, course, hole, levels))
                            .toList());
        });
    }

    private static OfGreen of(Stores stores, String course, Hole hole, LevelSpots levels) {
        List<SurveyVersion> surveys = stores.surveys().versions(course, hole.id());
        int readings = levels.of(hole.id()).size();
        RestsOn withoutSurvey = readings == 0 ? RestsOn.OUTLINE : RestsOn.LEVELS;
        return new OfGreen(hole, surveys.isEmpty() ? withoutSurvey : RestsOn.SURVEY, surveys, readings);
    }
}
