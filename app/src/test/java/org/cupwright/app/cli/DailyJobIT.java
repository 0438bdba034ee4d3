package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.app.sheets.PaperText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The daily job on three invented greens, and how much has to be typed for it. */
class DailyJobIT {
    /** As it is typed in a copy of the source. */
    private static final String PROGRAM = "./cupwright ";

    /** The answer and its line's end. */
    private static final int YES = 2;

    @TempDir
    private Path files;

    private InProcess cupwright;
    private int typed;

    @BeforeEach
    void importThreeGreens() throws IOException {
        cupwright = new InProcess(files.resolve("data")).answering(true);
        Result result = cupwright.run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 3));
        assertThat(result.status()).as(result.err()).isZero();
    }

    /** Types a line; where the paper goes is told besides, as the test must not write into its own folder. */
    private Result type(String line) {
        typed += (PROGRAM + line).length() + 1;
        List<Object> arguments = new ArrayList<>(Arrays.asList((Object[]) line.split(" ", -1)));
        if (line.startsWith("morning")) {
            arguments.addAll(List.of("--out", files.resolve("paper")));
        }
        Result result = cupwright.run(arguments.toArray());
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    @Test
    void theEveningBeforeAndTheRoundTakeSixtyKeys() {
        Result evening = type("morning --date tomorrow");
        typed += YES;
        assertThat(evening.out()).contains("Sun 21 Jun 2026").contains("changers-card.pdf");
        assertThat(files.resolve("paper/changers-card.pdf")).exists();
        InProcess nextDay = cupwright.daysLater(1).answering(true);
        cupwright = nextDay;
        Result cut = type("cut");
        typed += YES;
        assertThat(cut.out()).contains("1").contains("2").contains("3");
        System.out.println("keys of the daily job: " + typed);
        assertThat(typed).isLessThanOrEqualTo(60);
        assertThat(cupwright.run("log", "list").out()).contains("cup changed");
        assertThat(cupwright.run("plan").err()).contains("What was cut stays");
    }

    @Test
    void aFolderThatTakesNoPaperIsToldBeforeThePlanIsPublished() {
        Result morning = cupwright.run("morning", "--out", files.resolve("data/paper"));
        assertThat(morning.status()).isEqualTo(1);
        assertThat(cupwright.run("plan", "--json").out()).contains("\"draft\"").doesNotContain("\"published\"");
    }

    @Test
    void aHoleThatWasCutElsewhereTakesThirtyFive() {
        type("morning");
        typed = 0;
        type("cut 2 12 R9");
        System.out.println("keys of one exception: " + typed);
        assertThat(typed).isLessThanOrEqualTo(35);
        type("cut");
        String log = cupwright.run("log", "list").out();
        assertThat(log).contains("12 on · 9 from right");
        assertThat(cupwright.run("explain", "--hole", "2").out()).contains("12 on · 9 from right");
    }

    @Test
    void aNoLeavesThePlanADraftAndTheLogbookEmpty() {
        cupwright.answering(false);
        Result morning = cupwright.run("morning", "--out", files.resolve("paper"));
        assertThat(morning.out()).contains("left as a draft");
        assertThat(files.resolve("paper")).doesNotExist();
        assertThat(cupwright.run("plan").status()).isZero();
        assertThat(cupwright.run("cut").out()).contains("Nothing was kept");
        assertThat(cupwright.run("log", "list").out()).doesNotContain("cup changed");
    }

    @Test
    void aHoleThatWasLeftAfterAllCorrectsWhatWasEnteredForAll() throws IOException {
        type("morning");
        type("cut");
        InProcess script = new InProcess(files.resolve("data"));
        Result asked = script.run("log", "add", "left-in-old-hole", "--hole", "2", "--person", "Ash");
        assertThat(asked.status()).isEqualTo(1);
        assertThat(asked.err())
                .contains("Was it left in the old hole after all?")
                .contains("--yes");
        Result kept = script.run("log", "add", "left-in-old-hole", "--hole", "2", "--person", "Ash", "--yes");
        assertThat(kept.status()).as(kept.err()).isZero();
        assertThat(kept.out()).contains("left in yesterday's hole").contains("that entry is corrected");
        String log = script.run("log", "list", "--hole", "2").out();
        assertThat(log).contains("left in yesterday's hole").doesNotContain("cup changed");
        Path whole = files.resolve("log.jsonl");
        script.run("log", "export", whole);
        assertThat(Files.readAllLines(whole).stream().filter(entry -> entry.contains("\"hole\":\"2\"")))
                .as("the old entry stays, beside its correction")
                .hasSize(2)
                .anyMatch(entry -> entry.contains("\"kind\":\"cupChanged\""))
                .anyMatch(entry -> entry.contains("\"kind\":\"correction\"") && entry.contains("leftInOldHole"));
        assertThat(script.run("log", "list", "--hole", "1").out()).contains("cup changed");
        assertThat(script.run("turf", "--all").out().lines().filter(line -> line.startsWith("2 ")))
                .as("nothing was cut, so nothing rests")
                .isEmpty();
    }

    @Test
    void whereNobodySitsNothingIsDoneWithoutAYes() {
        InProcess script = new InProcess(files.resolve("data"));
        Result morning = script.run("morning", "--out", files.resolve("paper"));
        assertThat(morning.status()).isEqualTo(1);
        assertThat(morning.err())
                .contains("Publish the plan of Sat 20 Jun 2026")
                .contains("--yes");
        assertThat(files.resolve("paper")).doesNotExist();
        Result cut = script.run("cut");
        assertThat(cut.status()).isEqualTo(1);
        assertThat(cut.err()).contains("3 holes: 1, 2, 3").contains("--yes");
        assertThat(script.run("cut", "--yes").status()).isZero();
        assertThat(script.run("cut", "2", "12").err()).contains("cut 7 12 R4");
        for (String none : List.of("far", "1e1", "0x1p3", "NaN", "Infinity", "12d", "1½5", "½½", "")) {
            assertThat(script.run("cut", "2", none, "R4").err()).contains("not '" + none + "'");
        }
        assertThat(script.run("cut", "2", "9½", "R4½", "--yes").status()).isZero();
        assertThat(script.run("log", "list").out()).contains("9½ on · 4½ from right");
        assertThat(script.run("assess", "--hole", "1", "--on", "1e1", "--side", "L5")
                        .err())
                .contains("'1e1' is not a number");
        assertThat(script.run("assess", "--hole", "1", "--on", "10½", "--side", "½L")
                        .out())
                .contains("10½ on · ½ from left");
    }

    @Test
    void aMorningThatIsAskedForAgainPrintsWhatWasPublished() {
        type("morning");
        Result again = type("morning");
        assertThat(again.out()).contains("published").contains("changers-card.pdf");
    }

    @Test
    void holesNearEachOtherOnOneGreenAreAskedAboutBeforeTheyArePublished() throws IOException {
        Path data = files.resolve("double");
        InProcess sits = new InProcess(data).answering(false);
        String map = MadeCourse.collection(MadeCourse.green("1;2", MadeCourse.WEST));
        Path outline = Files.writeString(files.resolve("double.geojson"), map);
        assertThat(sits.run("import", "--course", "double", "--outlines", outline)
                        .status())
                .isZero();
        assertThat(sits.run("policy", "rotation.sharedGreenLeastMetres=30").status())
                .isZero();
        assertThat(sits.run("plan").out()).contains("apart on their double green");
        assertThat(sits.run("publish").out()).contains("left as a draft").doesNotContain("published");
        Result script = new InProcess(data).run("publish");
        assertThat(script.status()).isEqualTo(1);
        assertThat(script.err()).contains("apart on their double green").contains("--yes");
        assertThat(sits.answering(true).run("publish").out()).contains("published");
        assertThat(sits.answering(false).run("publish").out()).contains("was published already");
        assertThat(sits.run("sheets", "--out", files.resolve("double-paper")).status())
                .isZero();
        String card = PaperText.words(Files.readAllBytes(files.resolve("double-paper/changers-card.pdf")));
        assertThat(card)
                .containsPattern("Hole 2 is on this green too, only [0-9½]+ paces away; [0-9½]+ paces are wanted")
                .contains("Hole 1 is on this green too");
    }

    @Test
    void daysAreSaidAsPeopleSayThem() {
        assertThat(cupwright.run("plan", "--date", "today").out()).contains("Sat 20 Jun 2026");
        assertThat(cupwright.run("plan", "--date", "Tomorrow").out()).contains("Sun 21 Jun 2026");
        assertThat(cupwright.run("turf", "--date", "yesterday").out()).contains("Fri 19 Jun 2026");
        Result unknown = cupwright.run("plan", "--date", "someday");
        assertThat(unknown.status()).isEqualTo(2);
        assertThat(unknown.err()).contains("2026-05-31, yesterday, today or tomorrow");
        for (String group : List.of("log", "weather")) {
            assertThat(cupwright.run(group, "list", "--to", "2026-02-30").err())
                    .contains("'--to'", "no such day", "yesterday, today or tomorrow");
        }
        assertThat(cupwright.run("cut", "--date", "yesterday", "--yes").status())
                .isEqualTo(1);
        assertThat(cupwright.run("cut", "--yes").status()).isZero();
        assertThat(cupwright
                        .run("log", "list", "--from", "today", "--to", "tomorrow")
                        .out())
                .contains("cup changed");
        assertThat(cupwright.run("log", "list", "--to", "yesterday").out()).doesNotContain("cup changed");
        assertThat(cupwright
                        .run("weather", "list", "--from", "yesterday", "--to", "today")
                        .out())
                .contains("Fri 19 Jun 2026", "Sat 20 Jun 2026")
                .doesNotContain("Thu 18 Jun", "Sun 21 Jun");
    }
}
