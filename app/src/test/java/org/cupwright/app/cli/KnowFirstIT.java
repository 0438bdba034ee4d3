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
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.democourse.DemoCourse;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is entered in the morning stands on the screen and on the card, before everything else or at its hole. */
class KnowFirstIT {
    @TempDir
    static Path files;

    private static InProcess cupwright;
    private static String plan;
    private static String card;

    @BeforeAll
    static void planADayWithMuchToKnow() throws IOException {
        Path data = files.resolve("data");
        Writes.to(
                new SqliteFolder(data, InProcess.CLOCK),
                stores -> stores.courses().add(new DemoCourse(1).course()));
        cupwright = new InProcess(data);
        log("sprayed --hole 3,4 --set product=invented --set reentryFrom=2026-06-20T23:30");
        log("frost --set onGreens=yes");
        log("something-odd --hole 8 --set severity=now --set text=burst");
        log("note-to-next --set text=pump");
        log("ground-marked --hole 12 --on 8 --side L5 --radius 2 --set use=closed --set reason=disease");
        log("plug-seen --hole 2 --on 12 --side L8 --set look=high");
        log("plug-seen --hole 6 --on 12 --side L8 --set look=damaged");
        log("plug-seen --hole 7 --on 12 --side L8 --set look=low");
        log("cut-somewhere --hole 9 --set depth=back --set across=centre --date 2026-06-19");
        log("temporary-green --hole 5 --set inPlay=yes");
        run("plan");
        run("plan --hole 13 --on 13 --side L4.4");
        plan = run("plan --hole 11 --on 12 --side L2");
        run("sheets --out " + files.resolve("paper"));
        card = PaperText.words(Files.readAllBytes(files.resolve("paper").resolve("changers-card.pdf")));
    }

    private static void log(String entry) {
        run("log add " + entry + " --person Ash");
    }

    private static String run(String line) {
        List<Object> words = new ArrayList<>(Arrays.asList(line.split(" ", -1)));
        Result result = cupwright.run(words.toArray());
        assertThat(result.status()).as(line + result.err()).isZero();
        return result.out().replaceAll("\\s+", " ");
    }

    @Test
    void whatConcernsTheRoundStandsBeforeEverythingElse() {
        for (String text : List.of(plan, card)) {
            int first = text.indexOf("Know first");
            assertThat(text.substring(first))
                    .containsSubsequence(
                            "Know first",
                            "Keep off 3, 4 until Sat 20 Jun 2026 23:30",
                            "Frost: nobody walks on frosted greens",
                            "Urgent, green 8: burst (Ash",
                            "Diseased ground on 12: change these holes last",
                            "pump (Ash",
                            "Thunder: stop, take shelter");
        }
        assertThat(plan).startsWith("Know first");
    }

    @Test
    void whatConcernsOneHoleStandsAtIt() {
        for (String text : List.of(plan, card)) {
            assertThat(text)
                    .contains("Closed (disease): ")
                    .contains("High plug: soil out, never stamp: ")
                    .contains("Low plug: soil in: ")
                    .contains("Damaged plug: ")
                    .containsPattern("Use with care: [^!]*from the edge")
                    .containsPattern("Against a rule: [^!]*from the edge")
                    .contains("Played to the temporary green");
        }
        assertThat(card).contains("5 temporary green").contains("old hole filled");
        assertThat(card).containsOnlyOnce("Plug: back centre (roughly)");
        assertThat(run("explain --hole 9")).contains("back centre (roughly)");
        assertThat(card.indexOf("Use with care: ")).isBetween(card.indexOf(" 13 middle"), card.indexOf(" 14 back"));
    }

    @Test
    void frostEndsWithItsDay() {
        assertThat(run("plan --date 2026-06-21")).contains("Know first").doesNotContain("Frost:");
    }
}
