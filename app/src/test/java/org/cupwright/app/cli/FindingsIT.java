package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.app.cli.command.Layout;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What is doubtful, and what changed, on an invented course with a tilted survey, a gap, a blunder and a second survey.
 */
class FindingsIT {
    @TempDir
    static Path files;

    private static InProcess cupwright;
    private static InProcess later;

    @BeforeAll
    static void surveyTwice() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        later = cupwright.daysLater(10);
        String imported = run(
                        cupwright,
                        "import",
                        "--course",
                        "made",
                        "--outlines",
                        MadeCourse.outlines(files, 4),
                        "--elevation",
                        MadeFaults.first(files),
                        "--crs",
                        "EPSG:32626",
                        "--kind",
                        "levelled")
                .out();
        assertThat(imported).contains("Not surveyed: ", "far off the ground", "findings lists all");
        for (String spot : List.of("6 L6", "6 R6", "16 R6", "11 L11")) {
            read("1", spot, "front=1.2", "left=0");
        }
        read("3", "11 L11", "front=4", "right=1");
        run(
                later,
                "import",
                "--course",
                "made",
                "--elevation",
                MadeFaults.second(files),
                "--crs",
                "EPSG:32626",
                "--kind",
                "levelled");
    }

    private static void read(String hole, String spot, String... falls) {
        List<Object> all = new ArrayList<>(List.of("level", "add", "--hole", hole));
        String[] parts = spot.split(" ", -1);
        all.addAll(List.of("--on", parts[0], "--side", parts[1]));
        for (String fall : falls) {
            all.addAll(List.of("--falls", fall));
        }
        run(cupwright, all.toArray());
    }

    private static Result run(InProcess when, Object... arguments) {
        Result result = when.run(arguments);
        assertThat(result.status()).as(result.out() + result.err()).isZero();
        return result;
    }

    private static List<JsonNode> findings(String hole, String kind) {
        JsonNode document = JsonMapper.shared()
                .readTree(run(later, "findings", "--hole", hole, "--json").out());
        List<JsonNode> found = new ArrayList<>();
        for (JsonNode finding : document.path("greens").path(0).path("findings")) {
            if (finding.path("kind").asString().equals(kind)) {
                found.add(finding);
            }
        }
        return found;
    }

    private static double number(JsonNode node, String... path) {
        JsonNode at = node;
        for (String name : path) {
            at = at.path(name);
        }
        assertThat(at.isNumber()).as(String.join(".", path)).isTrue();
        return at.asDouble();
    }

    @Test
    void aTiltedSurveyIsTheWorstOfItsGreen() {
        JsonNode tilted = findings("1", "surveyTilted").get(0);
        assertThat(number(tilted, "number")).isEqualTo(1);
        assertThat(number(tilted, "amount")).isCloseTo(1, within(0.2));
        assertThat(tilted.path("unit").asString()).isEqualTo("points");
        assertThat(tilted.path("says").asString()).contains("more towards right");
    }

    @Test
    void aGapAndABlunderStandWhereTheyAre() {
        JsonNode gap = findings("2", "partNotSurveyed").get(0);
        assertThat(number(gap, "position", "east")).isCloseTo(MadeCourse.WEST + 106, within(1.5));
        assertThat(number(gap, "position", "north")).isCloseTo(MadeCourse.SOUTH + 15, within(1.5));
        assertThat(number(gap, "areaSquareMetres")).isBetween(8.0, 20.0);
        JsonNode off = findings("2", "pointLeftOut").get(0);
        assertThat(number(off, "position", "east")).isEqualTo(MadeCourse.WEST + 117);
        assertThat(number(off, "position", "north")).isEqualTo(MadeCourse.SOUTH + 9);
        assertThat(number(off, "amount")).isCloseTo(0.25, within(0.02));
        assertThat(off.path("says").asString()).contains("above");
    }

    @Test
    void aReadingThatOverrulesTheSurveySaysBothValues() {
        JsonNode overrules = findings("1", "readingOverrules").get(0);
        assertThat(number(overrules, "amount")).isCloseTo(1.2, within(0.01));
        assertThat(overrules.path("says").asString()).contains("1.2 %", "the survey says", "down towards front");
    }

    @Test
    void theListSaysWhatToDoAndWhatNoSurveyShows() {
        String page = run(later, "findings").out();
        assertThat(page)
                .contains("hole 1 · survey · 4 level readings", "hole 4 · outline only", "Nobody has measured")
                .contains("Have it surveyed", "Hole 2, 3: fewer than three level readings");
        assertThat(page.lines()).allMatch(line -> line.length() <= Layout.WIDTH);
    }

    @Test
    void thePictureMarksThem() throws IOException {
        Path svg = files.resolve("two.svg");
        run(later, "assess", "--hole", "2", "--svg", svg);
        assertThat(Files.readString(svg))
                .contains("class=\"finding\"", "class=\"finding-area\"", "framed number", "Not surveyed: ");
        Path without = files.resolve("four.svg");
        run(later, "assess", "--hole", "4", "--svg", without);
        assertThat(Files.readString(without))
                .doesNotContain("class=\"finding\"")
                .contains("Nobody has measured");
    }

    @Test
    void theSecondSurveyStandsBesideTheFirst() {
        String list = run(later, "survey", "list").out();
        assertThat(list).contains("1  Sat 20 Jun 2026", "first.csv", "2  Tue 30 Jun 2026", "second.csv");
        assertThat(list).contains("Never surveyed: 4.");
    }

    @Test
    void whatWasMovedIsFound() {
        JsonNode document = JsonMapper.shared()
                .readTree(
                        run(later, "survey", "compare", "--hole", "3", "--json").out());
        JsonNode green = document.path("greens").path(0);
        double mound = 2 * Math.PI * 0.12 * 2 * 2;
        assertThat(number(green, "heights", "fill", "cubicMetres")).isBetween(0.85 * mound, 1.1 * mound);
        assertThat(number(green, "heights", "net", "standardErrorCubicMetres")).isBetween(0.001, 0.2);
        assertThat(number(green, "heights", "greatestRise", "metres")).isCloseTo(0.12, within(0.015));
        assertThat(number(green, "heights", "greatestRise", "position", "east"))
                .isCloseTo(MadeCourse.WEST + 211, within(1.0));
        assertThat(number(green, "heights", "greatestFall", "position", "north"))
                .isCloseTo(MadeCourse.SOUTH + 5, within(1.0));
        assertThat(number(green, "goodGround", "lost", "squareMetres")).isGreaterThan(5);
        assertThat(number(green, "comparedSquareMetres")).isBetween(470.0, 484.0);
        assertThat(green.path("levelsMayDiffer").asBoolean()).isFalse();
        assertThat(green.path("olderReadings").size()).isEqualTo(1);
    }

    @Test
    void theEarlierSurveyIsChosenByNumberOrDay() {
        assertThat(run(later, "survey", "compare", "--hole", "3", "--since", "1")
                        .out())
                .isEqualTo(run(later, "survey", "compare", "--hole", "3", "--since", "2026-06-20")
                        .out())
                .contains("Came up most", "older than the newest survey");
        for (String nowhere : List.of("2026-06-19", "9", "2")) {
            Result refused = later.run("survey", "compare", "--since", nowhere);
            assertThat(refused.status()).as(nowhere).isEqualTo(1);
            assertThat(refused.err())
                    .contains("No green asked about", nowhere.substring(nowhere.length() - 1), "survey list");
        }
        assertThat(later.run("survey", "compare", "--since", "soon").status()).isEqualTo(2);
        assertThat(later.run("survey", "compare", "--hole", "77").status()).isEqualTo(1);
        assertThat(later.run("survey").status()).isEqualTo(2);
    }

    @Test
    void aSurveyThatIsReadAgainAddsNothing() throws IOException {
        String before = run(later, "survey", "list").out();
        Result again = run(
                later, "import", "--course", "made", "--elevation", MadeFaults.second(files), "--crs", "EPSG:32626");
        assertThat(again.out()).contains("known already").contains("nothing was added for the greens 3");
        assertThat(run(later, "survey", "list").out()).isEqualTo(before);
    }
}
