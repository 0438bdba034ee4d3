package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where to lay the level, and keeping what it read, on an invented course of three drawn greens. */
class LevelCommandsIT {
    @TempDir
    Path files;

    private InProcess cupwright;

    @BeforeEach
    void importACourse() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 3));
    }

    private Result run(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.out() + result.err()).isZero();
        return result;
    }

    private String refused(int status, Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.out() + result.err()).isEqualTo(status);
        assertThat(result.out()).isEmpty();
        return result.err();
    }

    private Result add(String... falls) {
        return run(adding(falls));
    }

    private static Object[] adding(String... falls) {
        List<Object> all =
                new java.util.ArrayList<>(List.of("level", "add", "--hole", "2", "--on", "9", "--side", "L9"));
        for (String fall : falls) {
            all.add("--falls");
            all.add(fall);
        }
        return all.toArray();
    }

    private static List<String> linesWith(String text, String page) {
        return page.lines().filter(line -> line.contains(text)).toList();
    }

    @Test
    void aGreenWithoutSurveyIsReadInEveryThird() {
        String page = run("level", "round", "--hole", "2").out();
        assertThat(page).contains("2 · outline only", "front", "middle", "back", "begin here", "then ");
        assertThat(linesWith("______", page)).hasSize(6);
    }

    @Test
    void aReadingKeepsWhoReadItAndWhen() {
        run("level", "add", "--hole", "2", "--on", "12", "--side", "R9", "--falls", "front=1", "--person", "Ash");
        assertThat(run("level", "list").out()).contains("(Ash, Sat 20 Jun 2026)");
    }

    @Test
    void whatIsReadIsNotNamedAgain() {
        add("front=1.4");
        String page = run("level", "round", "--hole", "2", "--spots", "8").out();
        assertThat(page).contains("2 · level spots").doesNotContain("9 on · 9 from left");
        assertThat(linesWith("______", page)).hasSize(8);
    }

    @Test
    void theListGoesOnPaperToTheSameBytes() throws IOException {
        Path pdf = files.resolve("round.pdf");
        run("level", "round", "--hole", "all", "--spots", "5", "--pdf", pdf);
        byte[] first = Files.readAllBytes(pdf);
        try (PDDocument document = Loader.loadPDF(first)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("Spots to read with the level", "hole 1", "hole 3", "begin here");
            assertThat(linesWith("from", text)).hasSizeGreaterThanOrEqualTo(15);
        }
        run("level", "round", "--hole", "all", "--spots", "5", "--pdf", pdf, "--replace");
        assertThat(Files.readAllBytes(pdf)).isEqualTo(first);
    }

    @Test
    void aReadingCountsAtItsSpot() {
        assertThat(add("front=1.4", "left=0.6").out()).contains("1.5 % to the front left", "was not known");
        assertThat(run("assess", "--hole", "2", "--on", "9", "--side", "L9").out())
                .contains("1.5 %");
        assertThat(run("level", "list").out()).contains("hole 2", "1.5 %");
    }

    @Test
    void aLaterReadingAtTheSpotTakesThePlaceOfTheEarlier() {
        add("front=1.4");
        assertThat(add("front=2.1").out()).contains("in place of the earlier reading there, 1.4 %");
        assertThat(run("level", "list").out()).contains("2.1 %").doesNotContain("1.4 %");
        run("level", "remove", "--id", ids().get(0));
        assertThat(run("level", "list").out()).contains("No readings yet");
    }

    /** The ids that the list shows, in its order. */
    private List<String> ids() {
        return linesWith(" on · ", run("level", "list").out()).stream()
                .map(line -> line.strip().split(" ")[0])
                .toList();
    }

    @Test
    void whatOneTakesBackLeavesAnothersIdMeaningTheSameReading() {
        run("level", "add", "--hole", "2", "--on", "9", "--side", "L9", "--falls", "front=1", "--person", "Ash");
        run("level", "add", "--hole", "2", "--on", "12", "--side", "R9", "--falls", "front=2", "--person", "Ida");
        run("level", "add", "--hole", "2", "--on", "14", "--side", "R7", "--falls", "front=3", "--person", "Ash");
        List<String> seenByIda = ids();
        assertThat(seenByIda).hasSize(3).doesNotHaveDuplicates().allMatch(id -> id.matches("[0-9a-f]{8}"));
        run("level", "remove", "--id", seenByIda.get(0));
        run("level", "remove", "--id", seenByIda.get(1), "--hole", "2");
        assertThat(run("level", "list").out()).contains("3.0 %").doesNotContain("1.0 %", "2.0 %");
        assertThat(ids()).containsExactly(seenByIda.get(2));
        assertThat(refused(1, "level", "remove", "--id", seenByIda.get(1))).contains("No level reading");
        assertThat(refused(1, "level", "remove", "--id", seenByIda.get(2), "--hole", "1"))
                .contains("No level reading");
    }

    @Test
    void theBeginningOfAnIdWillDoWhereNoOtherBeginsSo() {
        for (int on = 6; on <= 22; on++) {
            run("level", "add", "--hole", "2", "--on", on, "--side", "L9", "--falls", "front=1");
        }
        List<String> ids = ids();
        String shared = ids.stream()
                .map(id -> id.substring(0, 1))
                .filter(start -> ids.stream().filter(id -> id.startsWith(start)).count() > 1)
                .findFirst()
                .orElseThrow(() -> new AssertionError("seventeen ids begin with sixteen letters"));
        String[] several = ids.stream().filter(id -> id.startsWith(shared)).toArray(String[]::new);
        assertThat(refused(1, "level", "remove", "--id", shared))
                .contains("More than one level reading")
                .contains(several);
        run("level", "remove", "--id", several[0].substring(0, 7).toUpperCase(Locale.ROOT));
        assertThat(ids()).hasSize(16).doesNotContain(several[0]);
    }

    @Test
    void aFileAddsToWhatIsThereAndMayBeReadTwice() throws IOException {
        add("front=1.4");
        Path file = MadeCourse.write(
                files.resolve("levels.csv"), "hole,on,side,heading,fall\n2,12,L9,play,0.8\n3,9,R9,play,-1\n");
        run("import", "--course", "made", "--levels", file);
        run("import", "--course", "made", "--levels", file);
        assertThat(linesWith(" on · ", run("level", "list").out())).hasSize(3);
    }

    @Test
    void whatCannotBeAReadingIsRefusedAndNotKept() {
        for (String falls : List.of("front", "=2", "front=two", "front=4000")) {
            refused(2, adding(falls));
        }
        assertThat(refused(1, adding("up=2"))).contains("no direction");
        assertThat(refused(1, adding("front=41"))).contains("so much");
        assertThat(refused(1, adding("front=1", "back=1"))).contains("across");
        refused(2, "level", "add", "--hole", "2", "--falls", "front=1");
        assertThat(refused(1, "level", "remove", "--id", "0000"))
                .contains("No level reading", "option --id", "level list");
        refused(2, "level", "remove", "--hole", "2");
        refused(2, "level", "round", "--spots", "9");
        refused(1, "level", "round", "--hole", "77");
        assertThat(run("level", "list").out()).contains("No readings yet");
    }
}
