package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** How a green was surveyed: said, assumed, kept, and said later. */
class SurveyKindIT {
    @TempDir
    Path files;

    private InProcess cupwright;
    private Path points;

    @BeforeEach
    void aCourse() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        points = MadeCourse.survey(files, 1, 1);
        run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 1));
    }

    private Result run(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    private Result imported(Object... more) {
        List<Object> all =
                new ArrayList<>(List.of("import", "--course", "made", "--elevation", points, "--crs", "EPSG:32626"));
        all.addAll(List.of(more));
        return run(all.toArray());
    }

    private JsonNode surveys() {
        return JsonMapper.shared()
                .readTree(run("survey", "list", "--hole", "1", "--json").out())
                .path("greens")
                .path(0)
                .path("surveys");
    }

    @Test
    void whatIsAssumedIsSaidWithHowToSayIt() {
        String said = imported().out().replaceAll("\\s+", " ");
        assertThat(said).contains("Nobody said how this green was surveyed", "a laser survey from an aircraft");
        assertThat(said).contains("--kind lidar, drone, rtk, scan or levelled");
        assertThat(surveys().path(0).path("kind").isNull()).isTrue();
    }

    @Test
    void whatIsSaidIsKeptWithTheSurvey() {
        assertThat(imported("--kind", "drone").out()).doesNotContain("Nobody said");
        assertThat(surveys().path(0).path("kind").asString()).isEqualTo("drone");
        assertThat(run("survey", "list").out()).contains("a model from a drone's photographs");
    }

    @Test
    void theSameFileBroughtInWithItsKindIsASurveyOfItsOwn() {
        imported();
        imported("--kind", "scan");
        assertThat(surveys().size()).isEqualTo(2);
        assertThat(surveys().path(1).path("kind").asString()).isEqualTo("scan");
        assertThat(imported("--kind", "scan").out()).contains("known already");
        assertThat(imported().out()).contains("known already");
        assertThat(surveys().size()).isEqualTo(2);
    }

    @Test
    void anotherWordIsRefused() {
        Result refused = cupwright.run("import", "--course", "made", "--elevation", points, "--kind", "laser");
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("lidar, drone, rtk, scan or levelled", "laser");
        assertThat(surveys().size()).isZero();
    }

    private JsonNode json(Object... arguments) {
        List<Object> all = new ArrayList<>(List.of(arguments));
        all.add("--json");
        return JsonMapper.shared().readTree(run(all.toArray()).out());
    }

    private JsonNode slopeError() {
        return json("assess", "--hole", "1", "--on", "11", "--side", "L11").path("slopeError");
    }

    @Test
    void theErrorOfASlopeHasTwoParts() {
        imported("--kind", "levelled");
        double own = slopeError().path("ownPercent").asDouble();
        assertThat(slopeError().path("sharedPercent").asDouble()).isZero();
        assertThat(slopeError().path("standardErrorPercent").asDouble()).isEqualTo(own);
        imported("--kind", "drone");
        JsonNode drone = slopeError();
        double shared = drone.path("sharedPercent").asDouble();
        assertThat(drone.path("ownPercent").asDouble()).isCloseTo(own, within(1e-3));
        assertThat(shared).isBetween(0.01, 0.8 / 3); // on a plane the fit smooths patches away
        assertThat(drone.path("standardErrorPercent").asDouble()).isCloseTo(Math.hypot(own, shared), within(1e-3));
        assertThat(drone.path("shared").path("millimetres").asDouble()).isCloseTo(8, within(1e-3));
        assertThat(drone.path("shared").path("standardErrorMillimetres").isNull())
                .isTrue();
        run("plan");
        assertThat(run("explain", "--hole", "1").out().replaceAll("\\s+", " "))
                .contains("from what each point of the survey is off by itself", "off together by 8.0 mm");
    }

    @Test
    void fiveReadingsMeasureWhatPointsShareAndSayWhatTheyBought() {
        imported("--kind", "drone");
        JsonNode last = null;
        for (String spot : List.of("6 L6", "6 R6", "16 R6", "16 L6", "11 L11")) {
            String[] parts = spot.split(" ", -1);
            last = json(
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
        JsonNode bought = last.path("bought");
        assertThat(bought.path("readings").asInt()).isEqualTo(5);
        assertThat(bought.path("withPoints").asDouble())
                .isPositive()
                .isLessThan(bought.path("withoutPoints").asDouble());
        assertThat(bought.path("shared").path("millimetres").asDouble()).isBetween(0.5, 8.5);
        assertThat(bought.path("shared").path("standardErrorMillimetres").asDouble())
                .isBetween(0.3, 5.0);
        assertThat(run("level", "list").out().replaceAll("\\s+", " "))
                .contains("With 5 readings slopes on half of this green", "as the level readings show");
    }
}
