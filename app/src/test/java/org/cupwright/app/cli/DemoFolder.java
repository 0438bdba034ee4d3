package org.cupwright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
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
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;

/** A data folder that holds the invented course of eighteen holes, with what was measured on it and no day. */
public final class DemoFolder {
    private static final long SEED = 1;

    private DemoFolder() {}

    /** Puts a copy of it into a folder that is not there yet. */
    public static void copyTo(Path data) throws IOException {
        MadeOnce.copy(MadeOnce.folder("demo", DemoFolder::fill), data);
    }

    /**
     * With what measuring its greens came to, which takes many times as long as a copy; of the plan by which they are
     * measured nothing stays.
     */
    private static void fill(Path data) throws IOException {
        fill(data, new DemoCourse(SEED));
        Path planned = data.resolveSibling(data.getFileName() + ".planned");
        MadeOnce.remove(planned);
        MadeOnce.copy(data, planned);
        InProcess.Result plan = new InProcess(planned).run("plan");
        if (plan.status() != 0) {
            throw new IllegalStateException(plan.err());
        }
        Files.move(planned.resolve("cache"), data.resolve("cache"));
        MadeOnce.remove(planned);
    }

    static void fill(Path data, DemoCourse demo) {
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
                GreenSurvey survey = new GreenSurvey(
                        hole.id(), SurveyPoints.scattered(points).as(SurveyKind.LEVELLED), origin);
                stores.surveys().add(DemoCourse.ID, survey);
            }
            readings.put(hole.id(), demo.levelReadings(hole.id()));
        }
        readings.values().removeIf(List::isEmpty);
        stores.surveys().addLevels(DemoCourse.ID, new LevelSpots(readings));
    }
}
