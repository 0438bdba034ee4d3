package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A survey in two strips that tell how far its points are off together: said, kept, and in every ±. */
class StripsIT {
    private static final int EACH = 4000;

    @TempDir
    Path files;

    private InProcess cupwright;

    @BeforeEach
    void aCourse() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 1));
    }

    private Result run(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    private String imported(Path points, Object... more) {
        List<Object> all = new ArrayList<>(List.of("import", "--course", "made", "--elevation", points));
        all.addAll(List.of("--crs", "EPSG:32626", "--kind", "drone"));
        all.addAll(List.of(more));
        return run(all.toArray()).out().replaceAll("\\s+", " ");
    }

    /**
     * Invented points of one green in two strips, a slope of 1.2 % to the south, 5 mm of noise.
     *
     * @param header what the fourth column is called
     * @param strips the two texts of the fourth column
     * @param wave how far a strip waves up and down, m
     */
    private Path points(String header, List<String> strips, double wave) throws IOException {
        Random random = new Random(7);
        StringBuilder text = new StringBuilder("x,y,z," + header + "\n");
        for (int i = 0; i < 2 * EACH; i++) {
            double east = -1 + (MadeCourse.SIDE + 2) * random.nextDouble();
            double north = -1 + (MadeCourse.SIDE + 2) * random.nextDouble();
            double off = wave * Math.sin(east / 3 + 2 * (i / EACH)) * Math.cos(north / 3 - i / EACH);
            double height = 20 + 0.012 * north + off + 0.005 * random.nextGaussian();
            text.append(String.format(
                    Locale.ROOT,
                    "%.3f,%.3f,%.4f,%s%n",
                    MadeCourse.WEST + east,
                    MadeCourse.SOUTH + north,
                    height,
                    strips.get(i / EACH)));
        }
        return Files.writeString(files.resolve("points.csv"), text.toString());
    }

    private JsonNode json(String schema, Object... arguments) throws IOException {
        List<Object> all = new ArrayList<>(List.of(arguments));
        all.add("--json");
        return PublishedShapes.checked(schema, run(all.toArray()));
    }

    private JsonNode slopeError() throws IOException {
        return json("assess-position", "assess", "--hole", "1", "--on", "11", "--side", "L11")
                .path("slopeError");
    }

    @Test
    void whatStripsTellIsSaidKeptAndInTheError() throws IOException {
        Path points = points("strip", List.of("west", "east"), 0);
        String bare = Files.readString(points).replaceAll(",(west|east)\\b", "");
        imported(Files.writeString(files.resolve("bare.csv"), bare));
        JsonNode asSet = slopeError();
        assertThat(asSet.path("shared").path("knownBy").asString()).isEqualTo("setting");
        assertThat(imported(points))
                .contains("Strips of the survey overlap on one green: neighbouring points are off together by")
                .contains("instead of what is set for the kind of survey");
        JsonNode measured = slopeError();
        JsonNode shared = measured.path("shared");
        assertThat(shared.path("knownBy").asString()).isEqualTo("strips");
        assertThat(shared.path("millimetres").asDouble()).isBetween(0.1, 3.0);
        assertThat(shared.path("standardErrorMillimetres").asDouble()).isBetween(0.05, 1.5);
        assertThat(shared.path("setMillimetres").asDouble()).isEqualTo(8);
        assertThat(measured.path("standardErrorPercent").asDouble())
                .isLessThan(0.8 * asSet.path("standardErrorPercent").asDouble());
        run("plan");
        assertThat(run("explain", "--hole", "1").out().replaceAll("\\s+", " "))
                .contains("as strips or surveys of the same ground show; 8.0 mm are set");
        assertThat(run("explain", "--hole", "1", "--lang", "es").out().replaceAll("\\s+", " "))
                .contains("las pasadas o los levantamientos del mismo terreno");
    }

    @Test
    void theSameFileAgainIsKnownAndOneWithStripsIsASurveyOfItsOwn() throws IOException {
        Path points = points("flightline", List.of("3", "4"), 0.008);
        assertThat(imported(points)).doesNotContain("known already");
        assertThat(imported(points)).contains("known already");
        JsonNode surveys = JsonMapper.shared()
                .readTree(run("survey", "list", "--hole", "1", "--json").out())
                .path("greens")
                .path(0)
                .path("surveys");
        assertThat(surveys.size()).isEqualTo(1);
    }

    @Test
    void theTimeTellsStripsToo() throws IOException {
        assertThat(imported(points("gps_time", List.of("100.5", "400.5"), 0.008), "--dry-run"))
                .contains("Strips of the survey overlap on one green");
    }

    @Test
    void aColumnThatTellsNothingIsSaidToTellNothing() throws IOException {
        assertThat(imported(points("strip", List.of("1", "1"), 0)))
                .contains("on one green they do not show how far points are off together")
                .contains("all points are of one strip");
        assertThat(slopeError().path("shared").path("knownBy").asString()).isEqualTo("setting");
    }

    /** The two strips in files of their own, as surveys of two days. */
    @Test
    void anEarlierSurveyOfUnchangedGroundTellsItToo() throws IOException {
        List<String> rows = Files.readAllLines(points("day", List.of("1", "2"), 0.008));
        Path first = day(rows, 1);
        Path second = day(rows, 2);
        assertThat(imported(first, "--unchanged")).contains("On one green no earlier survey shows", "there is none");
        assertThat(imported(second, "--dry-run")).doesNotContain("were compared");
        assertThat(imported(second, "--unchanged")).contains("This survey and the one before were compared on one");
        JsonNode shared = slopeError().path("shared");
        assertThat(shared.path("knownBy").asString()).isEqualTo("strips");
        assertThat(shared.path("millimetres").asDouble()).isBetween(2.0, 8.0); // a product of waves has half its size
        assertThat(imported(second, "--unchanged")).contains("known already");
        assertThat(imported(second, "--unchanged", "--dry-run")).contains("were compared"); // not with itself
    }

    @Test
    void whatAnEarlierSurveyCannotTellIsSaid() throws IOException {
        List<String> rows = Files.readAllLines(points("day", List.of("1", "2"), 0.008));
        imported(day(rows, 1));
        List<String> rounded = Files.readAllLines(day(rows, 1)).stream()
                .map(row -> row.replaceAll("([0-9]\\.[0-9]{3})[0-9]$", "$1"))
                .toList();
        Path again = Files.write(files.resolve("again.csv"), rounded);
        assertThat(imported(again, "--unchanged")).contains("it has mostly the very same points");
        assertThat(run("import", "--course", "made", "--elevation", day(rows, 2), "--kind", "scan", "--unchanged")
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("it was of another kind");
        assertThat(slopeError().path("shared").path("knownBy").asString()).isEqualTo("setting");
    }

    private Path day(List<String> rows, int day) throws IOException {
        List<String> of = new ArrayList<>(List.of("x,y,z"));
        rows.stream()
                .filter(row -> row.endsWith("," + day))
                .map(row -> row.substring(0, row.lastIndexOf(',')))
                .forEach(of::add);
        return Files.write(files.resolve("day-" + day + ".csv"), of);
    }

    @Test
    void readingsRefineWhatStripsTold() throws IOException {
        imported(points("strip", List.of("1", "2"), 0.008));
        double error =
                slopeError().path("shared").path("standardErrorMillimetres").asDouble();
        JsonNode last = null;
        for (String spot : List.of("6 L6", "6 R6", "16 R6", "16 L6", "11 L11")) {
            String[] parts = spot.split(" ", -1);
            last = json(
                    "level-add",
                    "level",
                    "add",
                    "--hole",
                    "1",
                    "--on",
                    parts[0],
                    "--side",
                    parts[1],
                    "--falls",
                    "front=1.2",
                    "--falls",
                    "left=0");
        }
        JsonNode shared = last.path("bought").path("shared");
        assertThat(shared.path("knownBy").asString()).isEqualTo("stripsAndReadings");
        assertThat(shared.path("standardErrorMillimetres").asDouble()).isLessThan(1.05 * error);
        assertThat(run("level", "list").out().replaceAll("\\s+", " "))
                .contains("as strips or surveys of the same ground and the level readings show");
    }
}
