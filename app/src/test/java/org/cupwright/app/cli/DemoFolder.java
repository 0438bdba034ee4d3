package org.cupwright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
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

/** A data folder that holds the invented course of eighteen holes, with what was measured on it and nothing else. */
public final class DemoFolder {
    private static final long SEED = 1;

    /** Filled once in a process, with what measuring its greens came to: that takes many times as long as a copy. */
    private static Path filled;

    private DemoFolder() {}

    /** Puts a copy of it into a folder that is not there yet. */
    public static synchronized void copyTo(Path data) throws IOException {
        if (filled == null) {
            Path made = Files.createTempDirectory("cupwright-demo");
            made.toFile().deleteOnExit();
            filled = made.resolve("data");
            fill(filled, new DemoCourse(SEED));
            new InProcess(filled).run("findings");
            leaveNothing(filled);
        }
        copy(filled, data);
    }

    static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : (Iterable<Path>) all::iterator) {
                Files.copy(each, to.resolve(from.relativize(each).toString()));
            }
        }
    }

    /** Files are removed before the folders they are in: the last that is named goes first. */
    private static void leaveNothing(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            all.forEach(path -> path.toFile().deleteOnExit());
        }
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
