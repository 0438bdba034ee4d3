package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.course.MapPoint;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Ground as invented people drew it on an invented course of three greens, of which the outlines alone are known. */
class DrawnCommandsIT {
    private static final String LIST = """
            hole,kind,on,side,radius,reason,person,date
            1,usual,12,L9,,,Invented Person,2026-05-31
            2,bad,8,R8,3,"wet, always",,
            3,good,15,L12,4,,Another Person,
            """;

    @TempDir
    Path files;

    private InProcess cupwright;
    private Path outlines;

    @BeforeEach
    void importACourse() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        outlines = MadeCourse.outlines(files, 3);
        run("import", "--course", "made", "--outlines", outlines);
    }

    private Result run(Object... arguments) {
        return done(cupwright, arguments);
    }

    private static Result done(InProcess folder, Object... arguments) {
        Result result = folder.run(arguments);
        assertThat(result.status()).as(result.out() + result.err()).isZero();
        return result;
    }

    private static JsonNode json(Result result) {
        return JsonMapper.shared().readTree(result.out());
    }

    private String refused(int status, Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.out() + result.err()).isEqualTo(status);
        assertThat(result.out()).isEmpty();
        return result.err();
    }

    private Path csv(String text) throws IOException {
        return MadeCourse.write(files.resolve("drawn.csv"), text);
    }

    private Path map(String... features) throws IOException {
        return MadeCourse.write(files.resolve("drawn.geojson"), MadeCourse.collection(String.join(",", features)));
    }

    /** A point so many paces on and from the left of a made green. */
    private static String point(int hole, double on, double left, String properties) {
        return String.format(
                Locale.ROOT,
                "{\"type\":\"Feature\",\"properties\":{%s},"
                        + "\"geometry\":{\"type\":\"Point\",\"coordinates\":[%.6f,%.6f]}}",
                properties,
                MadeCourse.WEST + 100 * (hole - 1) + 0.914 * left,
                MadeCourse.SOUTH + 0.914 * on);
    }

    /** An area from its corners on a made green, metres from its south-west corner. */
    private static String area(int hole, String properties, double... corners) {
        StringBuilder ring = new StringBuilder();
        for (int i = 0; i <= corners.length; i += 2) {
            int at = i % corners.length;
            ring.append(i == 0 ? "" : ",")
                    .append(String.format(
                            Locale.ROOT,
                            "[%.3f,%.3f]",
                            MadeCourse.WEST + 100 * (hole - 1) + corners[at],
                            MadeCourse.SOUTH + corners[at + 1]));
        }
        return "{\"type\":\"Feature\",\"properties\":{" + properties
                + "},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[[" + ring + "]]}}";
    }

    private void importDrawn(Path file) {
        run("import", "--course", "made", "--drawn", file);
    }

    private JsonNode planned(String hole) {
        for (JsonNode planned : json(run("plan", "--json")).path("days").path(0).path("holes")) {
            if (planned.path("hole").asString().equals(hole)) {
                return planned;
            }
        }
        throw new AssertionError("hole " + hole + " was left out");
    }

    private static MapPoint at(JsonNode position) {
        return new MapPoint(
                position.path("east").asDouble(), position.path("north").asDouble());
    }

    @Test
    void aListAndAMapSayTheSame() throws IOException {
        importDrawn(csv(LIST));
        String listed = run("drawn", "list").out();
        String plan = run("plan").out();
        InProcess other = new InProcess(files.resolve("other"));
        double fromLeft = MadeCourse.SIDE / 0.914 - 8;
        Path map = map(
                point(1, 12, 9, "\"kind\":\"usual\",\"person\":\"Invented Person\",\"date\":\"2026-05-31\""),
                point(2, 8, fromLeft, "\"kind\":\"bad\",\"radius\":3,\"reason\":\"wet, always\""),
                point(3, 15, 12, "\"kind\":\"good\",\"radiusMetres\":3.656,\"person\":\"Another Person\",\"hole\":3"));
        done(other, "import", "--course", "made", "--outlines", outlines, "--drawn", map);
        assertThat(done(other, "drawn", "list").out()).isEqualTo(listed);
        assertThat(done(other, "plan").out()).isEqualTo(plan);
        assertThat(listed).contains("1-usual-1", "2-bad-1", "3-good-1", "wet, always", "Invented Person");
    }

    @Test
    void whatIsWrittenAsAMapIsTakenInAgain() throws IOException {
        importDrawn(csv(LIST));
        Path written = files.resolve("written.geojson");
        String listed = run("drawn", "list", "--geojson", written).out();
        InProcess other = new InProcess(files.resolve("other"));
        done(other, "import", "--course", "made", "--outlines", outlines, "--drawn", written);
        assertThat(done(other, "drawn", "list").out()).isEqualTo(listed);
        importDrawn(written);
        assertThat(run("drawn", "list").out()).as("taken in twice").isEqualTo(listed);
    }

    @Test
    void thePlanGoesByWhatPeopleSay() throws IOException {
        importDrawn(map(
                point(1, 12, 8, "\"kind\":\"usual\",\"person\":\"Invented Person\""),
                area(2, "\"kind\":\"bad\",\"reason\":\"tier\"", 0, 0, 13, 0, 13, 22, 0, 22),
                area(3, "\"kind\":\"good\"", 5, 5, 12, 5, 12, 17, 5, 17)));
        JsonNode first = planned("1");
        MapPoint usual = new MapPoint(MadeCourse.WEST + 8 * 0.914, MadeCourse.SOUTH + 12 * 0.914);
        assertThat(at(first.path("position")).distanceMetres(usual)).isLessThan(0.92);
        assertThat(first.path("word").path("person").asString()).isEqualTo("Invented Person");
        assertThat(first.path("restsOn").asString()).isEqualTo("outline");
        assertThat(first.path("reasons").path(0).asString()).contains("Invented Person", "not a measurement");
        assertThat(at(planned("2").path("position")).east()).isGreaterThan(MadeCourse.WEST + 100 + 13.5);
        assertThat(planned("3").path("verdict").asString()).isEqualTo("pass");
        assertThat(at(planned("3").path("position")).east()).isBetween(MadeCourse.WEST + 205, MadeCourse.WEST + 212);
        assertThat(run("plan").out()).contains("said to be good, slope not checked");
        assertThat(run("assess", "--hole", "2", "--on", "12", "--side", "L9").out())
                .contains("do not cut", "said to be bad (tier)", "Slope not checked");
        assertThat(run("assess", "--hole", "3", "--on", "12", "--side", "R6").out())
                .contains("use with care", "Off the ground that was drawn as good.");
        assertThat(run("explain", "--hole", "1").out()).contains("said to be good", "outline only, slope not checked");
    }

    @Test
    void aNewMapOfTheGreensKeepsWhatPeopleSay() throws IOException {
        importDrawn(csv(LIST));
        String listed = run("drawn", "list").out();
        assertThat(run("import", "--course", "made", "--outlines", outlines).out())
                .doesNotContain("finding");
        assertThat(run("drawn", "list").out()).isEqualTo(listed);
        assertThat(planned("1").path("word").path("kind").asString()).isEqualTo("usual");
        Path fewer = MadeCourse.outlines(Files.createDirectory(files.resolve("fewer")), 2);
        assertThat(run("import", "--course", "made", "--outlines", fewer).out())
                .contains("Drawn ground lies on no green of this map: 3-good-1");
        assertThat(run("drawn", "list").out()).contains("3-good-1");
    }

    @Test
    void whatDoesNotReadIsRefusedWholeAndNothingIsWritten() throws IOException {
        String whole = MadeCourse.collection(area(1, "\"kind\":\"bad\"", 4, 4, 9, 4, 9, 9));
        Map<Path, String> wrong = Map.of(
                csv(LIST + "1,fine,12,L9,,,,\n"), "\"fine\" is no kind of drawn ground",
                MadeCourse.write(files.resolve("off.csv"), LIST + "1,usual,90,L9,,,,\n"), "no such place",
                MadeCourse.write(files.resolve("hole.csv"), LIST + "9,usual,12,L9,,,,\n"), "There is no hole 9",
                MadeCourse.write(files.resolve("short.csv"), LIST + "1,usual,12,L9"), "fewer than the first line",
                MadeCourse.write(files.resolve("half.geojson"), whole.substring(0, whole.length() / 2)),
                        "cannot be read",
                map(area(1, "\"kind\":\"bad\"", 4, 4, 9, 9, 9, 4, 4, 9)), "crosses itself",
                MadeCourse.write(files.resolve("away.geojson"), whole.replace("5000", "5900")), "off the green");
        byte[] before = Files.readAllBytes(files.resolve("data/cupwright.db"));
        wrong.forEach((file, says) -> assertThat(refused(1, "import", "--course", "made", "--drawn", file))
                .as(file.toString())
                .contains(says));
        assertThat(Files.readAllBytes(files.resolve("data/cupwright.db"))).isEqualTo(before);
        assertThat(run("drawn", "list").out()).contains("Nobody drew any ground yet");
    }

    @Test
    void aDryRunTellsAllThatDoesNotRead() throws IOException {
        Path file = csv(LIST + "1,fine,12,L9,,,,\n9,usual,12,L9,,,,\n");
        assertThat(refused(1, "import", "--course", "made", "--drawn", file))
                .contains("line 5", "in one more place", "--dry-run");
        assertThat(run("import", "--course", "made", "--drawn", file, "--dry-run")
                        .out())
                .contains("\"fine\" is no kind", "There is no hole 9", "line 6", "Nothing was stored");
        assertThat(run("drawn", "list").out()).contains("Nobody drew any ground yet");
    }

    @Test
    void oneSpotByCommandAndWhatIsSaidLaterCounts() {
        Object[] usual = {
            "drawn", "add", "--hole", "2", "--kind", "usual", "--on", "12", "--side", "L9", "--person", "A"
        };
        assertThat(run(usual).out()).contains("Kept as 2-usual-1");
        usual[usual.length - 1] = "B";
        assertThat(run(usual).out()).contains("2-usual-1", "in place of what was said before: A");
        assertThat(run("drawn", "add", "--hole", "2", "--kind", "bad", "--on", "5", "--side", "L9", "--radius", "2")
                        .out())
                .contains("Kept as 2-bad-1: bad ground, 13 m²");
        assertThat(run("drawn", "list").out().lines().filter(line -> line.startsWith("2-")))
                .hasSize(2);
        assertThat(run("drawn", "remove", "--id", "2-usual-1").out()).contains("Taken back: 2-usual-1");
        assertThat(run("drawn", "list", "--hole", "2").out()).doesNotContain("usual");
    }

    @Test
    void whatCannotBeSaidIsRefused() {
        Object[] spot = {"drawn", "add", "--hole", "2", "--on", "12", "--side", "L9"};
        for (List<String> more : List.of(
                List.<String>of(),
                List.of("--kind", "fine"),
                List.of("--kind", "bad"),
                List.of("--kind", "usual", "--radius", "2"),
                List.of("--kind", "good", "--radius", "-1"))) {
            List<Object> all = new java.util.ArrayList<>(List.of(spot));
            all.addAll(more);
            refused(2, all.toArray());
        }
        refused(2, "drawn", "add", "--hole", "2", "--kind", "usual");
        refused(2, "drawn");
        assertThat(refused(1, "drawn", "add", "--hole", "2", "--kind", "usual", "--at", "500000,4400100"))
                .contains("not on the green");
        assertThat(refused(1, "drawn", "add", "--hole", "9", "--kind", "usual", "--on", "1", "--side", "L1"))
                .contains("no hole");
        assertThat(refused(1, "drawn", "remove", "--id", "2-bad-7")).contains("Nothing drawn is called");
        assertThat(run("drawn", "list").out()).contains("Nobody drew any ground yet");
    }
}
