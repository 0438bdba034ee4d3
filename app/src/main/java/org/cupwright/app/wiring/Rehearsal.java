package org.cupwright.app.wiring;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.store.sqlite.SqliteLibrary;
import org.cupwright.course.Course;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.green.SurveyPoints;

/**
 * Runs a morning's commands on the invented course, in a folder for the moment, while the Java machine notes which
 * classes they load: an archive of those lets every later start be quicker. The launcher does so once after each build.
 *
 * <p>It also puts the database's own library, which is otherwise unpacked and compared at every start, into the folder
 * that the launcher names.
 */
public final class Rehearsal {
    private static final List<List<String>> MORNING = List.of(
            List.of("log", "add", "cup-changed", "--hole", "7", "--on", "12", "--side", "R4", "--yes"),
            List.of("log", "list"),
            List.of("weather", "list"),
            List.of("turf", "--json"),
            List.of("turf"),
            List.of("plan", "--date", "2026-06-21"),
            List.of("plan", "--date", "2026-06-21", "--json"),
            List.of("explain", "--hole", "7"));

    /** A green whose survey is fitted once, so that the classes for that are noted too. */
    private static final String SURVEYED = "2";

    private final Path folder;

    private Rehearsal(Path folder) {
        this.folder = folder;
    }

    /** The one argument is the folder for the database's library. */
    public static void main(String[] arguments) throws IOException {
        Path library = Path.of(arguments[0]);
        SqliteLibrary.putInto(library);
        System.setProperty(SqliteLibrary.FOLDER_PROPERTY, library.toString());
        Path folder = Files.createTempDirectory("cupwright-rehearsal");
        try {
            new Rehearsal(folder).morning();
        } finally {
            remove(folder);
        }
    }

    private void morning() {
        DemoCourse demo = new DemoCourse(1);
        Course course = demo.course();
        GreenSurvey survey = new GreenSurvey(
                SURVEYED,
                SurveyPoints.scattered(demo.survey(SURVEYED)),
                new Origin(course.frame().epsg(), "m", "made"));
        try (SqliteFolder data = new SqliteFolder(folder, Clock.systemUTC())) {
            data.write(stores -> {
                stores.courses().add(course);
                stores.surveys().add(course.id(), survey);
                return course;
            });
        }
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        for (List<String> command : MORNING) {
            int status = Main.run(nowhere, System.err, with(command));
            if (status != 0) {
                throw new IllegalStateException(command + " ended with " + status);
            }
        }
    }

    private String[] with(List<String> command) {
        return Stream.concat(command.stream(), Stream.of("--data", folder.toString()))
                .toArray(String[]::new);
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
