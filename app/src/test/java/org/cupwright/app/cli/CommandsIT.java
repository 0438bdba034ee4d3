package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsIT {
    @TempDir
    Path files;

    private InProcess cupwright;
    private Path data;

    @BeforeEach
    void emptyFolder() {
        data = files.resolve("data");
        cupwright = new InProcess(data);
    }

    private void importThreeGreens() throws IOException {
        Result result = cupwright.run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 3));
        assertThat(result.status()).as(result.err()).isZero();
        assertThat(result.out())
                .contains("3 greens")
                .contains("outline only, slope not checked")
                .contains("Stored.");
    }

    @Test
    void lookingIntoAnEmptyFolderMakesNoFile() {
        assertThat(cupwright.run("policy").status()).isZero();
        assertThat(cupwright.run("assess", "--hole", "1").status()).isEqualTo(1);
        assertThat(cupwright.run("plan").err()).contains("no course").contains("cupwright import");
        assertThat(data).doesNotExist();
    }

    @Test
    void aDryRunStoresNothing() throws IOException {
        Result result =
                cupwright.run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 1), "--dry-run");
        assertThat(result.out()).contains("Nothing was stored");
        assertThat(data).doesNotExist();
    }

    @Test
    void aPlanSaysWhereEveryHoleGoesAndIsKept() throws IOException {
        importThreeGreens();
        Result plan = cupwright.run("plan", "--speed", "11");
        assertThat(plan.status()).as(plan.err()).isZero();
        assertThat(plan.out())
                .contains("Sat 20 Jun 2026 · draft", "green speed 11 ft: as asked for")
                .contains("front 1 · middle 1 · back 1")
                .contains("good, slope not checked");
        assertThat(plan.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(100);
        Result why = cupwright.run("explain", "--hole", "3");
        assertThat(why.out())
                .contains("Why hole 3 was here")
                .contains("green speed 11 ft")
                .contains("seed 1");
    }

    @Test
    void tomorrowsPlanKnowsTodaysHoles() throws IOException {
        importThreeGreens();
        assertThat(cupwright.run("plan").status()).isZero();
        Result next = cupwright.run("plan", "--date", "2026-06-21");
        assertThat(next.out()).contains("from yesterday's hole");
        Result assessed = cupwright.run("explain", "--date", "2026-06-21", "--hole", "1");
        assertThat(assessed.out()).contains("from the nearest old hole");
    }

    @Test
    void equalSeedsGiveEqualPlans() throws IOException {
        importThreeGreens();
        String first = cupwright.run("plan", "--seed", "5", "--json").out();
        assertThat(cupwright.run("plan", "--json", "--seed", "5").out()).isEqualTo(first);
    }

    @Test
    void closedGroundIsNotUsed() throws IOException {
        importThreeGreens();
        Result result = cupwright.run(
                "assess", "--hole", "1", "--ground", MadeCourse.closedWestHalf(files), "--at", "500006,4400011");
        assertThat(result.status()).as(result.err()).isZero();
        assertThat(result.out()).contains("do not cut").contains("On or beside ground out of use.");
    }

    @Test
    void aGroundFileThatIsNotUnderstoodIsRefused() throws IOException {
        importThreeGreens();
        Path wrong = MadeCourse.write(
                files.resolve("wrong.geojson"),
                Files.readString(MadeCourse.closedWestHalf(files)).replace("outOfUse", "outofuse"));
        Result result = cupwright.run("plan", "--ground", wrong);
        assertThat(result.status()).isEqualTo(1);
        assertThat(result.err()).contains("outofuse").contains("feature 1");
    }

    @Test
    void aSettingCountsFromItsDayOn() throws IOException {
        importThreeGreens();
        Result set = cupwright.run("policy", "holelocation.edgePaces=5", "--date", "2026-06-25");
        assertThat(set.status()).as(set.err()).isZero();
        assertThat(cupwright
                        .run("policy", "holelocation.edgePaces", "--date", "2026-06-24")
                        .out())
                .contains("4 paces");
        assertThat(cupwright
                        .run("policy", "holelocation.edgePaces", "--date", "2026-06-26")
                        .out())
                .contains("5 paces")
                .contains("came as 4 paces");
    }

    @Test
    void aSettingTakesNumbersAsTheyStandOnTheCardAndNoPowersOfTen() throws IOException {
        importThreeGreens();
        for (String none : List.of("1e1", "0x1p3", "5d", "5f", "NaN", "Infinity")) {
            Result result = cupwright.run("policy", "holelocation.edgePaces=" + none);
            assertThat(result.status()).as(none).isEqualTo(1);
            assertThat(result.err()).contains("\"" + none + "\"", "0 to 20 paces");
        }
        assertThat(cupwright.run("policy", "holelocation.edgePaces=4½").out()).contains("4.5 paces");
    }

    @Test
    void whatACourseDecidesFirstFitsAScreenAndTheRestIsThereToo() throws IOException {
        importThreeGreens();
        assertThat(cupwright.run("policy", "turf.stopDiffersMillimetres=2").status())
                .isZero();
        String first = cupwright.run("policy").out();
        assertThat(first.lines())
                .hasSizeLessThanOrEqualTo(24)
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(first.replaceAll("\\s+", " "))
                .contains("4 paces How far a hole keeps from the edge. (holelocation.edgePaces; published)")
                .contains("2 mm ", "(turf.stopDiffersMillimetres; set by the course; came as 1 mm)")
                .contains("policy --all");
        assertThat(first).doesNotContain("rotation.weight").contains("policy KEY");
        assertThat(first.replaceAll("\\s+", " "))
                .contains("(rotation.scheme; ", "(paper.ring; our choice)")
                .doesNotContain("of them set");
        assertThat(cupwright.run("policy", "--all").out()).contains("rotation.weight.care", "holelocation.edgePaces");
    }

    @Test
    void howeverMuchACourseHasSetItIsOneScreen() throws IOException {
        importThreeGreens();
        List<Object> set = new ArrayList<>(List.of("policy"));
        for (String line : cupwright.run("policy", "--all").out().lines().toList()) {
            Matcher weight =
                    Pattern.compile("(rotation[.]weight[.][A-Za-z]+) .*").matcher(line);
            if (weight.matches()) {
                set.add(weight.group(1) + "=1");
            }
        }
        assertThat(set).hasSizeGreaterThan(8);
        assertThat(cupwright.run(set.toArray()).status()).isZero();
        String first = cupwright.run("policy").out();
        assertThat(first.lines()).hasSizeBetween(20, 24);
        assertThat(first).contains("(paper.ring; ", "rotation.weight.", "of them set by the course");
    }

    @Test
    void anUnknownSettingIsAnsweredWithThoseLikeIt() {
        Result result = cupwright.run("policy", "holelocation.edge");
        assertThat(result.status()).isEqualTo(1);
        assertThat(result.err()).contains("holelocation.edgePaces");
    }

    @Test
    void optionsStandBeforeOrAfterTheCommand() throws IOException {
        importThreeGreens();
        String before = cupwright
                .run("--units", "imperial", "assess", "--hole", "1", "--on", "12", "--side", "R11")
                .out();
        String after = cupwright
                .run("assess", "--hole", "1", "--on", "12", "--side", "R11", "--units", "imperial")
                .out();
        assertThat(after).isEqualTo(before).contains(" ft from the edge");
    }

    @Test
    void wrongUsageGivesTwo() {
        assertThat(cupwright.run("assess").status()).isEqualTo(2);
        assertThat(cupwright.run("plan", "--days", "three").status()).isEqualTo(2);
        assertThat(cupwright.run("policy", "--lang", "xx").status()).isEqualTo(2);
        assertThat(cupwright.run("assess", "--hole", "1", "--at", "1;2").status())
                .isEqualTo(2);
    }

    @Test
    void rollingWithoutASurveyIsAProblem() throws IOException {
        importThreeGreens();
        Result result =
                cupwright.run("roll", "--hole", "1", "--from", "500011,4400011", "--heading", "0", "--launch", "1");
        assertThat(result.status()).isEqualTo(1);
        assertThat(result.err()).contains("no survey").contains("--elevation");
    }
}
