package org.cupwright.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.course.Hole;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.green.LevelReading;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;

/** A data folder that holds the invented course of eighteen holes, with what was measured on it and nothing else. */
public final class DemoFolder {
    private DemoFolder() {}

    public static void fill(Path data, DemoCourse demo) {
        Writes.to(new SqliteFolder(data, InProcess.CLOCK), stores -> fill(stores, demo));
    }

    private static void fill(Stores stores, DemoCourse demo) {
        stores.courses().add(demo.course());
        Map<String, List<LevelReading>> readings = new TreeMap<>();
        int epsg = demo.course().frame().epsg();
        for (Hole hole : demo.course().holes()) {
            List<SurveyPoint> points = demo.survey(hole.id());
            if (!points.isEmpty()) {
                GreenSurvey.Origin origin = new GreenSurvey.Origin(epsg, "m", "invented");
                GreenSurvey survey = new GreenSurvey(hole.id(), SurveyPoints.scattered(points), origin);
                stores.surveys().add(DemoCourse.ID, survey);
            }
            readings.put(hole.id(), demo.levelReadings(hole.id()));
        }
        readings.values().removeIf(List::isEmpty);
        stores.surveys().addLevels(DemoCourse.ID, new LevelSpots(readings));
    }
}
