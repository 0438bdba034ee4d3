package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.cupwright.app.cli.DemoFolder;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.democourse.DemoCourse;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C while longer work goes on: the real program, told to stop as a terminal tells it. */
@Tag("long")
class InterruptIT {
    private static final int GREENS = 24;
    private static final int POINTS_EACH = 12_000;
    private static final long LONGEST_SECONDS = 120;

    @TempDir
    private Path path;

    private static ProcessBuilder program(Object... arguments) {
        List<String> line = RealProcess.program(List.of());
        Stream.of(arguments).map(Object::toString).forEach(line::add);
        return new ProcessBuilder(line);
    }

    @Test
    void anImportThatIsStoppedSaysSoAndKeepsNothing() throws IOException, InterruptedException {
        Path data = path.resolve("data");
        Path outlines = MadeCourse.outlines(path, GREENS);
        Path points = MadeCourse.survey(path, GREENS, POINTS_EACH, 1);
        Process process = program(
                        "import",
                        "--course",
                        "made",
                        "--outlines",
                        outlines,
                        "--elevation",
                        points,
                        "--crs",
                        "EPSG:32626",
                        "--data",
                        data)
                .start();
        try (BufferedReader said = process.errorReader(StandardCharsets.UTF_8)) {
            assertThat(said.readLine()).as("the first word of progress").contains("of " + GREENS + " greens");
            CtrlC.press(process);
            List<String> rest = said.lines().toList();
            assertThat(process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)).isTrue();
            assertThat(String.join("\n", rest)).contains("Stopped before it was done");
            assertThat(process.exitValue()).isNotZero();
        } finally {
            process.destroyForcibly();
        }
        assertThat(Files.exists(data.resolve("cupwright.db"))).isFalse();
    }

    /** A search has something to show at any time: whoever stops it has that. */
    @Test
    void weeksThatAreStoppedAreKeptAsTheyStand() throws IOException, InterruptedException {
        Path data = path.resolve("weeks");
        Path out = path.resolve("said.txt");
        DemoFolder.copyTo(data);
        Process process = program("plan", "--days", 84, "--date", DemoCourse.TODAY, "--data", data)
                .redirectOutput(out.toFile())
                .start();
        try (BufferedReader said = process.errorReader(StandardCharsets.UTF_8)) {
            String line = said.readLine();
            while (line != null && !line.contains("parts of the search done")) {
                line = said.readLine();
            }
            assertThat(line).as("the first word of the search").isNotNull();
            CtrlC.press(process);
            assertThat(process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        assertThat(Files.readString(out)).contains("84 days together, kept as drafts", "The search was stopped");
    }
}
