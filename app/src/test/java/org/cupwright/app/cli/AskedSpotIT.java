package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

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

/** A hole that a person wants elsewhere than the plan; three square greens, played northwards, not surveyed. */
class AskedSpotIT {
    private static final double PACE_METRES = 0.914;

    @TempDir
    private Path files;

    private InProcess cupwright;

    @BeforeEach
    void importThreeGreens() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 3));
        run("plan");
    }

    private Result run(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    private JsonNode plan(Object... options) {
        List<Object> arguments = new ArrayList<>(List.of("plan", "--json"));
        arguments.addAll(List.of(options));
        return JsonMapper.shared()
                .readTree(run(arguments.toArray()).out())
                .path("days")
                .path(0);
    }

    private static JsonNode hole(JsonNode day, int hole) {
        return day.path("holes").path(hole - 1);
    }

    private static double east(JsonNode day, int hole) {
        return hole(day, hole).path("position").path("east").asDouble();
    }

    private static double north(JsonNode day, int hole) {
        return hole(day, hole).path("position").path("north").asDouble();
    }

    private static void assertAt(JsonNode day, int hole, double onPaces, double leftPaces) {
        assertThat(north(day, hole)).isCloseTo(MadeCourse.SOUTH + onPaces * PACE_METRES, within(0.01));
        double west = MadeCourse.WEST + 100 * (hole - 1);
        assertThat(east(day, hole)).isCloseTo(west + leftPaces * PACE_METRES, within(0.01));
    }

    private static org.assertj.core.data.Offset<Double> within(double metres) {
        return org.assertj.core.data.Offset.offset(metres);
    }

    @Test
    void oneHoleGoesWhereSomebodyWantsItAndTheOthersStay() {
        JsonNode before = plan();
        JsonNode after = plan("--hole", "2", "--on", "12", "--side", "L9", "--person", "Ash");
        assertAt(after, 2, 12, 9);
        assertThat(hole(after, 2).path("askedBy").asString()).isEqualTo("Ash");
        for (int other : List.of(1, 3)) {
            assertThat(hole(after, other)).isEqualTo(hole(before, other));
        }
        String said = run("plan", "--hole", "2", "--on", "12", "--side", "L9", "--person", "Ash")
                .out();
        assertThat(said)
                .contains("Ash asked for this spot.")
                .contains("Hole 2 as it was asked for")
                .contains("from the edge");
    }

    @Test
    void itStaysThroughLaterPlansUntilItIsFreed() {
        JsonNode chosen = plan();
        run("plan", "--hole", "2", "--on", "5", "--side", "L9", "--person", "Ash");
        assertAt(plan(), 2, 5, 9);
        assertThat(run("explain", "--hole", "2").out()).contains("Ash asked for this spot.");
        JsonNode freed = plan("--hole", "2", "--free");
        assertThat(hole(freed, 2).path("askedBy").isNull()).isTrue();
        assertThat(hole(plan(), 2)).isEqualTo(hole(chosen, 2));
    }

    @Test
    void aSpotAgainstTheRulesIsTakenWithTheRuleAndWhoAsked() {
        JsonNode day = plan("--hole", "3", "--on", "1.5", "--side", "L9", "--person", "Ash");
        assertAt(day, 3, 1.5, 9);
        assertThat(hole(day, 3).path("verdict").asString()).isEqualTo("fail");
        assertThat(day.path("findings").toString())
                .contains("3: Ash asked for this spot.")
                .contains("Against the rules");
        assertThat(run("plan").out()).contains("3: Ash asked for this spot. Against the rules: ");
    }

    @Test
    void groundThatIsRuledOutIsKeptOff() {
        JsonNode before = plan();
        String at = east(before, 1) + "," + north(before, 1);
        JsonNode after = plan("--hole", "1", "--forbid", "--at", at, "--radius", "4", "--person", "Ash");
        for (JsonNode day : List.of(after, plan())) {
            double east = east(day, 1) - east(before, 1);
            double north = north(day, 1) - north(before, 1);
            assertThat(Math.hypot(east, north)).isGreaterThan(4);
        }
        assertThat(hole(after, 2)).isEqualTo(hole(before, 2));
    }

    @Test
    void aDotThatIsPaintedForTheDayIsWhereTheHoleGoes() {
        run(
                "log",
                "add",
                "dot-painted",
                "--hole",
                "2",
                "--on",
                "14",
                "--side",
                "R8",
                "--set",
                "forDay=2026-06-20",
                "--person",
                "Ash");
        JsonNode day = plan();
        assertAt(day, 2, 14, MadeCourse.SIDE / PACE_METRES - 8);
        assertThat(hole(day, 2).path("askedBy").asString()).isEqualTo("Ash");
        JsonNode tomorrow = plan("--date", "2026-06-21");
        assertThat(hole(tomorrow, 2).path("askedBy").isNull()).isTrue();
    }

    @Test
    void aDotThatCameAfterTheDraftMovesNoHoleThatIsLeftAsItIs() {
        JsonNode before = plan();
        run(
                "log",
                "add",
                "dot-painted",
                "--hole",
                "3",
                "--on",
                "14",
                "--side",
                "R8",
                "--set",
                "forDay=2026-06-20",
                "--person",
                "Ash");
        JsonNode after = plan("--hole", "2", "--on", "12", "--side", "L9", "--person", "Ida");
        assertThat(hole(after, 3)).isEqualTo(hole(before, 3));
        assertAt(plan(), 3, 14, MadeCourse.SIDE / PACE_METRES - 8);
    }

    @Test
    void groundThatIsRuledOutGoesBeforeADot() {
        run(
                "log",
                "add",
                "dot-painted",
                "--hole",
                "2",
                "--on",
                "14",
                "--side",
                "R8",
                "--set",
                "forDay=2026-06-20",
                "--person",
                "Ash");
        JsonNode day =
                plan("--hole", "2", "--forbid", "--on", "14", "--side", "R8", "--radius", "3", "--person", "Ida");
        double east = MadeCourse.WEST + 100 + MadeCourse.SIDE - 8 * PACE_METRES;
        double north = MadeCourse.SOUTH + 14 * PACE_METRES;
        assertThat(Math.hypot(east(day, 2) - east, north(day, 2) - north)).isGreaterThan(3);
    }

    @Test
    void savedGroundIsLeftAlone() {
        JsonNode before = plan();
        String at = east(before, 1) + "," + north(before, 1);
        run(
                "log",
                "add",
                "ground-marked",
                "--hole",
                "1",
                "--at",
                at,
                "--radius",
                "3",
                "--set",
                "use=saved",
                "--set",
                "reason=event",
                "--person",
                "Ash");
        JsonNode after = plan();
        assertThat(Math.hypot(east(after, 1) - east(before, 1), north(after, 1) - north(before, 1)))
                .isGreaterThan(3);
    }

    @Test
    void whatCannotBeMeantIsRefused() {
        refused("Say for which hole", "plan", "--on", "12", "--side", "L9");
        refused("--forbid and --radius go together", "plan", "--hole", "2", "--forbid", "--on", "12", "--side", "L9");
        refused("stands alone", "plan", "--hole", "2", "--free", "--on", "12", "--side", "L9");
        refused("Say where", "plan", "--hole", "2");
        refused("no hole called", "plan", "--hole", "9", "--on", "12", "--side", "L9");
        refused("not on", "plan", "--hole", "2", "--at", MadeCourse.WEST + "," + MadeCourse.SOUTH);
        run("publish");
        refused("published", "plan", "--hole", "2", "--on", "12", "--side", "L9");
    }

    private void refused(String says, Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(List.of(arguments).toString()).isNotZero();
        assertThat(result.err()).containsIgnoringCase(says);
    }
}
