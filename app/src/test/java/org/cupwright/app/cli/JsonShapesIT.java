package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What {@code --json} writes keeps to the published schemas, and says what the course is. */
class JsonShapesIT {
    @TempDir
    static Path files;

    private static InProcess cupwright;
    private static Result imported;

    @BeforeAll
    static void importACourse() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        imported = cupwright.run(
                "import",
                "--course",
                "made",
                "--outlines",
                MadeCourse.outlines(files, 3),
                "--elevation",
                MadeCourse.survey(files, 1, 1),
                "--crs",
                "EPSG:32626",
                "--json");
    }

    private static JsonNode checked(String schemaName, Result result) throws IOException {
        return PublishedShapes.checked(schemaName, result);
    }

    @Test
    void importKeepsItsShape() throws IOException {
        JsonNode node = checked("import", imported);
        assertThat(imported.status()).isZero();
        assertThat(node.path("crs").asString()).isEqualTo("EPSG:32626");
        assertThat(node.path("points").path("read").asInt()).isEqualTo(3000);
        assertThat(node.path("holes").path(0).path("restsOn").asString()).isEqualTo("survey");
        assertThat(node.path("holes").path(1).path("restsOn").asString()).isEqualTo("outline");
        assertThat(node.path("holes").path(0).path("areaSquareMetres").asDouble())
                .isEqualTo(484);
    }

    @Test
    void assessOfAPositionKeepsItsShape() throws IOException {
        Result result = cupwright.run("assess", "--hole", "1", "--on", "12", "--side", "L11", "--json");
        JsonNode node = checked("assess-position", result);
        assertThat(result.status()).isZero();
        assertThat(node.path("position").path("onPaces").asDouble()).isEqualTo(12);
        assertThat(node.path("position").path("side").asString()).isEqualTo("L");
        JsonNode level = node.path("rules").path(0);
        assertThat(level.path("value").asDouble()).isBetween(0.9, 1.6);
        assertThat(level.path("outcome").asString()).isEqualTo("pass");
    }

    @Test
    void assessOfAGreenKeepsItsShape() throws IOException {
        for (String hole : List.of("1", "2")) {
            Result result = cupwright.run("--json", "assess", "--hole", hole);
            JsonNode shares = checked("assess-green", result).path("shares");
            double sum = 0;
            for (JsonNode share : shares) {
                sum += share.asDouble();
            }
            assertThat(sum).isCloseTo(1, org.assertj.core.data.Offset.offset(2e-4));
        }
    }

    @Test
    void rollKeepsItsShape() throws IOException {
        Result result = cupwright.run(
                "roll", "--hole", "1", "--from", "500011,4400011", "--heading", "0", "--launch", "1.5", "--json");
        JsonNode node = checked("roll", result);
        assertThat(node.path("end").asString()).isEqualTo("rest");
        assertThat(node.path("stop").path("north").asDouble()).isGreaterThan(4_400_011);
    }

    @Test
    void severalDaysHaveTheShapeOfOne() throws IOException {
        JsonNode node = checked("plan", cupwright.run("plan", "--days", "3", "--date", "2026-09-01", "--json"));
        assertThat(node.path("days").size()).isEqualTo(3);
    }

    @Test
    void changedPlansKeepTheirShape() throws IOException {
        assertThat(cupwright.run("plan", "--days", "2", "--date", "2026-11-01").status())
                .isZero();
        JsonNode nothing = checked("change", cupwright.run("change", "--date", "2026-11-01", "--json"));
        assertThat(nothing.path("days").size()).isZero();
        assertThat(nothing.path("before").isNull()).isTrue();
        JsonNode node =
                checked("change", cupwright.run("change", "--date", "2026-11-01", "--lock", "2=9,L9", "--json"));
        assertThat(node.path("changes").path(0).path("cause").asString()).isEqualTo("asked");
        assertThat(node.path("changes").path(0).path("to").path("onPaces").asDouble())
                .isEqualTo(9);
        JsonNode undone = checked("change", cupwright.run("change", "--undo", "--json"));
        assertThat(undone.path("changes").path(0).path("to"))
                .isEqualTo(node.path("changes").path(0).path("from"));
    }

    @Test
    void planAndExplainKeepTheirShapes() throws IOException {
        Result plan = cupwright.run("plan", "--json");
        JsonNode node = checked("plan", plan);
        assertThat(plan.status()).isZero();
        assertThat(node.path("days").path(0).path("holes").size()).isEqualTo(3);
        assertThat(node.path("days")
                        .path(0)
                        .path("weatherBasis")
                        .path("assumed")
                        .asInt())
                .isEqualTo(28);
        cupwright.run("log", "add", "cup", "--hole", "2", "--on", "9", "--side", "L9", "--date", "2026-04-09");
        JsonNode past = checked("explain", cupwright.run("explain", "--hole", "2", "--date", "2026-04-09", "--json"));
        assertThat(past.path("position").isNull()).isTrue();
        assertThat(past.path("really").path("rules").size()).isEqualTo(11);
        Result explained = cupwright.run("explain", "--hole", "2", "--json");
        JsonNode why = checked("explain", explained);
        assertThat(why.path("position"))
                .isEqualTo(node.path("days").path(0).path("holes").path(1).path("position"));
    }

    @Test
    void sheetsKeepTheirShape() throws IOException {
        assertThat(cupwright.run("plan", "--date", "2026-06-22").status()).isZero();
        Path out = files.resolve("paper");
        JsonNode node = checked("sheets", cupwright.run("sheets", "--date", "2026-06-22", "--out", out, "--json"));
        assertThat(node.path("state").asString()).isEqualTo("draft");
        assertThat(Path.of(node.path("files").path(1).asString())).isRegularFile();
    }

    @Test
    void sheetsOfSeveralDaysKeepTheirShape() throws IOException {
        assertThat(cupwright.run("plan", "--days", "2", "--date", "2026-09-22").status())
                .isZero();
        Path out = files.resolve("weeks");
        JsonNode node = checked(
                "sheets-days", cupwright.run("sheets", "--days", "2", "--date", "2026-09-22", "--out", out, "--json"));
        assertThat(node.path("days").path(1).path("date").asString()).isEqualTo("2026-09-23");
        assertThat(Path.of(node.path("files").path(0).asString())).isRegularFile();
    }

    @Test
    void theDailyJobHasTheShapesOfWhatItDoes() throws IOException {
        Path out = files.resolve("morning");
        JsonNode morning =
                checked("sheets", cupwright.run("morning", "--date", "2026-06-24", "--out", out, "--yes", "--json"));
        assertThat(morning.path("state").asString()).isEqualTo("published");
        JsonNode cut = checked("log-add", cupwright.run("cut", "--date", "2026-06-24", "--yes", "--json"));
        assertThat(cut.path("kept").size()).isPositive();
    }

    @Test
    void publishAndTurfKeepTheirShapes() throws IOException {
        cupwright.run("plan", "--date", "2026-05-01");
        JsonNode published = checked("publish", cupwright.run("publish", "--date", "2026-05-01", "--json"));
        assertThat(published.path("state").asString()).isEqualTo("published");
        JsonNode turf = checked("turf", cupwright.run("turf", "--date", "2026-05-02", "--json"));
        assertThat(turf.path("weather").asString()).isEqualTo("assumed");
        assertThat(turf.path("wearRest").size()).isZero();
        assertThat(turf.path("water").path("deficitMillimetres").isNull()).isTrue();
        cupwright.run("plan", "--date", "2026-05-02");
        JsonNode later = checked("turf", cupwright.run("turf", "--date", "2026-05-03", "--json"));
        assertThat(later.path("wearRest").size()).isEqualTo(3);
        assertThat(later.path("watering").path(0).path("reason").asString()).isEqualTo("waterUnknown");
    }

    @Test
    void cutterStopKeepsItsShape() throws IOException {
        JsonNode node = checked("cutter-stop", cupwright.run("cutter-stop", "4in", "--json"));
        assertThat(node.path("depthMillimetres").asDouble()).isEqualTo(127);
    }

    @Test
    void policyKeepsItsShape() throws IOException {
        JsonNode node = checked("policy", cupwright.run("policy", "--json"));
        assertThat(node.path("settings").size()).isGreaterThan(40);
    }

    @Test
    void upkeepKeepsItsShapes() throws IOException {
        Path backup = files.resolve("backup.db");
        JsonNode done = checked("backup", cupwright.run("backup", backup, "--json"));
        assertThat(done.path("holds").path("courses").asInt()).isEqualTo(1);
        InProcess other = new InProcess(files.resolve("other"));
        assertThat(checked("check", other.run("check", "--json")).path("exists").asBoolean())
                .isFalse();
        assertThat(checked("restore", other.run("restore", backup, "--json"))
                        .path("before")
                        .isNull())
                .isTrue();
        assertThat(checked("restore", other.run("restore", backup, "--json"))
                        .path("before")
                        .isString())
                .isTrue();
        JsonNode check = checked("check", other.run("check", "--json"));
        assertThat(check.path("sound").asBoolean()).isTrue();
        Files.write(files.resolve("other/cupwright.db"), new byte[5000]);
        Result damaged = other.run("check", "--json");
        assertThat(damaged.status()).isEqualTo(1);
        assertThat(checked("check", damaged).path("damages").size()).isEqualTo(1);
    }

    @Test
    void theLevelKeepsItsShapes() throws IOException {
        JsonNode round = checked("level-round", cupwright.run("level", "round", "--hole", "1,2", "--json"));
        assertThat(round.path("greens").path(0).path("restsOn").asString()).isEqualTo("survey");
        assertThat(round.path("greens").path(1).path("spots").size()).isEqualTo(6);
        Result added = cupwright.run(
                "level", "add", "--hole", "2", "--on", "9", "--side", "L9", "--falls", "front=2", "--json");
        JsonNode kept = checked("level-add", added);
        assertThat(kept.path("reading").path("downhillDegrees").asDouble()).isEqualTo(180);
        assertThat(kept.path("before").isNull()).isTrue();
        assertThat(kept.path("now").path("slopePercent").asDouble()).isEqualTo(2);
        JsonNode list = checked("level-list", cupwright.run("level", "list", "--json"));
        assertThat(list.path("readings").path(0).path("number").asInt()).isEqualTo(1);
        String id = list.path("readings").path(0).path("id").asString();
        assertThat(id).isEqualTo(kept.path("id").asString());
        checked("level-remove", cupwright.run("level", "remove", "--id", id, "--json"));
        JsonNode overruled = checked(
                "level-add",
                cupwright.run("level", "add", "--hole", "1", "--at", "500011,4400011", "--falls", "180=3.5", "--json"));
        assertThat(overruled.path("before").path("slopePercent").asDouble()).isBetween(1.0, 1.4);
        assertThat(overruled.path("now").path("slopePercent").asDouble()).isEqualTo(3.5);
        String other = overruled.path("id").asString();
        checked("level-remove", cupwright.run("level", "remove", "--hole", "1", "--id", other, "--json"));
        JsonNode none = checked("level-list", cupwright.run("level", "list", "--json"));
        assertThat(none.path("readings").size()).isZero();
    }

    @Test
    void drawnGroundKeepsItsShapes() throws IOException {
        Result added = cupwright.run(
                "drawn",
                "add",
                "--hole",
                "3",
                "--kind",
                "good",
                "--on",
                "9",
                "--side",
                "L9",
                "--radius",
                "2",
                "--json");
        assertThat(checked("drawn-add", added).path("id").asString()).isEqualTo("3-good-1");
        Result list = cupwright.run("drawn", "list", "--json");
        assertThat(checked("drawn-list", list)
                        .path("drawn")
                        .path(0)
                        .path("holes")
                        .path(0)
                        .asString())
                .isEqualTo("3");
        Path map = files.resolve("drawn-green.geojson");
        Result assessed = cupwright.run("assess", "--hole", "3", "--geojson", map, "--json");
        assertThat(checked("assess-green", assessed)
                        .path("best")
                        .path(0)
                        .path("word")
                        .path("kind")
                        .asString())
                .isEqualTo("good");
        Result written = new Result(0, Files.readString(map), "");
        assertThat(checked("assess-green-geojson", written).findValuesAsString("word"))
                .containsExactly("good");
        checked("drawn-remove", cupwright.run("drawn", "remove", "--id", "3-good-1", "--json"));
    }

    @Test
    void findingsAndSurveysKeepTheirShapes() throws IOException {
        Path map = files.resolve("findings.geojson");
        Result found = cupwright.run("findings", "--geojson", map, "--json");
        JsonNode findings = checked("findings", found);
        assertThat(findings.path("greens").size()).isEqualTo(3);
        assertThat(findings.path("greens")
                        .path(1)
                        .path("findings")
                        .path(0)
                        .path("kind")
                        .asString())
                .isEqualTo("noSurvey");
        JsonNode document = checked("findings-geojson", new Result(0, Files.readString(map), ""));
        assertThat(document.path("features").size()).isGreaterThan(1);
        JsonNode list = checked("survey-list", cupwright.run("survey", "list", "--json"));
        assertThat(list.path("greens").path(0).path("surveys").size()).isEqualTo(1);
        InProcess twice = new InProcess(files.resolve("twice"));
        for (int seed : new int[] {1, 2}) {
            twice.run(
                    "import",
                    "--course",
                    "made",
                    "--outlines",
                    MadeCourse.outlines(files, 2),
                    "--elevation",
                    MadeCourse.survey(files, 1, 2500 + seed, 1),
                    "--crs",
                    "EPSG:32626");
        }
        JsonNode compared = checked("survey-compare", twice.run("survey", "compare", "--json"));
        assertThat(compared.path("greens").path(0).path("now").path("version").asInt())
                .isEqualTo(2);
        assertThat(compared.path("notCompared").path(0).path("why").asString()).isEqualTo("noSurvey");
    }

    @Test
    void problemsKeepTheirShape() throws IOException {
        Result unknownHole = cupwright.run("assess", "--hole", "77", "--json");
        assertThat(unknownHole.status()).isEqualTo(1);
        JsonNode node = checked("error", unknownHole);
        assertThat(node.path("value").asString()).isEqualTo("77");
        Result wrongUsage = cupwright.run("assess", "--nonsense", "--json");
        assertThat(wrongUsage.status()).isEqualTo(2);
        checked("error", wrongUsage);
    }

    @Test
    void roundKeepsItsShape() throws IOException {
        JsonNode usual = checked("round", cupwright.run("round", "--json", "--date", "2026-07-01"));
        assertThat(usual.path("start").path("usual").asBoolean()).isTrue();
        assertThat(usual.path("people").isEmpty()).isTrue();
        Result said = cupwright.run(
                "round",
                "--json",
                "--date",
                "2026-07-01",
                "--start",
                "twoTees",
                "--first",
                "7:00",
                "--give",
                "1,3=Ash",
                "--person",
                "Robin");
        JsonNode round = checked("round", said);
        assertThat(said.status()).isZero();
        assertThat(round.path("saidBy").asString()).isEqualTo("Robin");
        assertThat(round.path("holes").path(1).path("hole").asString()).isEqualTo("3");
        assertThat(round.path("holes").path(1).path("cutBy").asString()).isEqualTo("06:50");
        assertThat(round.path("nobody").path(0).asString()).isEqualTo("2");
        checked("round", cupwright.run("round", "--json", "--date", "2026-07-01", "--usual", "--person", "Robin"));
        for (String wrong : List.of("--give=1-9", "--give==Ash", "--start=sideways")) {
            Result refused = cupwright.run("round", "--json", wrong);
            assertThat(refused.status()).isEqualTo(2);
            checked("error", refused);
        }
        Result none = cupwright.run("round", "--json", "--give", "7=Ash", "--person", "Robin");
        assertThat(none.status()).isEqualTo(1);
        checked("error", none);
    }
}
