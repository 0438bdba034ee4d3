package org.cupwright.app.desk.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.democourse.DemoSeason;
import org.cupwright.green.LevelReading;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;

/** Puts the invented course, with all that its invented club knows and did, into the data folder. */
public record SetUpDemo(Session session) {
    /** The invented course is the same for everybody; what a seed decides is the plan. */
    private static final long SEED = 1;

    private static final String MADE_UP = "invented";

    /** Sets the course up unless it is there; answers whether it was missing. */
    public boolean ifMissing() {
        if (session.read(SetUpDemo::isThere)) {
            return false;
        }
        DemoCourse demo = new DemoCourse(SEED);
        return session.decide(Right.SURVEY, stores -> !isThere(stores) && store(stores, demo));
    }

    /** The errors of its invented points are each their own, as those of sighted points are. */
    private static GreenSurvey survey(Hole hole, List<SurveyPoint> points, Origin origin) {
        return new GreenSurvey(hole.id(), SurveyPoints.scattered(points).as(SurveyKind.LEVELLED), origin);
    }

    private static boolean isThere(Stores stores) {
        return stores.courses().ids().contains(DemoCourse.ID);
    }

    private static boolean store(Stores stores, DemoCourse demo) {
        Course course = demo.course();
        stores.courses().add(course);
        Origin origin = new Origin(course.frame().epsg(), "m", MADE_UP);
        Map<String, List<LevelReading>> readings = new HashMap<>();
        for (Hole hole : course.holes()) {
            List<SurveyPoint> points = demo.survey(hole.id());
            if (!points.isEmpty()) {
                stores.surveys().add(course.id(), survey(hole, points, origin));
            }
            List<LevelReading> read = demo.levelReadings(hole.id());
            if (!read.isEmpty()) {
                readings.put(hole.id(), read);
            }
        }
        stores.surveys().addLevels(course.id(), new LevelSpots(readings));
        new DemoSeason(demo).facts().forEach(stores.facts()::add);
        return true;
    }
}
