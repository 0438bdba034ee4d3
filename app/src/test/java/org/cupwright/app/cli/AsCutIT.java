package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the plan to what was cut, on an invented morning of three holes (2026-06-20, 05:00 by the course's clock). */
class AsCutIT {
    @TempDir
    private Path files;

    private InProcess cupwright;

    @BeforeEach
    void aPlannedCourse() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        kept("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 3));
        kept("plan");
    }

    private String kept(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result.out();
    }

    private String sheet() throws IOException {
        kept("sheets", "--out", files.resolve("paper"));
        byte[] pdf = Files.readAllBytes(files.resolve("paper").resolve("hole-locations.pdf"));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static String row(String sheet, String hole) {
        return sheet.lines()
                .filter(line -> line.startsWith(hole + " "))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSheetTurnsFromPlannedToAsCutHoleByHole() throws IOException {
        String planned = sheet();
        assertThat(planned).contains("Planned");

        kept("log", "add", "cup-changed", "--hole", "2", "--on", "12", "--side", "R11", "--person", "Ash");
        String partly = sheet();
        assertThat(partly).contains("Cut by 05:00: 2; the others as planned");
        assertThat(row(partly, "2")).contains("12").contains("11").isNotEqualTo(row(planned, "2"));
        assertThat(row(partly, "1")).isEqualTo(row(planned, "1"));
        assertThat(kept("publish")).doesNotContain("have been cut");

        kept("log", "add", "cup-changed", "--hole", "all", "--as-planned", "--person", "Ash");
        String cut = sheet();
        assertThat(cut).contains("As cut at 05:00").doesNotContain("Planned");
        assertThat(row(cut, "3")).isEqualTo(row(planned, "3"));
        assertThat(kept("sheets", "--out", files, "--json"))
                .contains("\"state\" : \"done\"")
                .contains("\"asCutAt\" : \"05:00\"");
    }

    @Test
    void aPlanWhoseHolesAreAllCutIsDoneUntilAnEntryIsTakenBack() {
        kept("log", "add", "cup-changed", "--hole", "2", "--as-planned");
        String last = kept("log", "add", "cup-changed", "--hole", "all", "--as-planned");
        Result withdrawn = cupwright.run("publish", "--withdraw");
        assertThat(withdrawn.status()).isEqualTo(1);
        assertThat(withdrawn.err()).contains("have been cut");

        Matcher id = Pattern.compile(" ([0-9a-f]{8})  ").matcher(last);
        assertThat(id.find()).isTrue();
        kept("log", "withdraw", id.group(1));
        kept("publish");
        kept("publish", "--withdraw");
    }

    @Test
    void explainSaysWhoCutItAndHowFarFromThePlan() {
        assertThat(kept("explain", "--hole", "1")).contains("The logbook says nothing of its cutting that day.");
        kept("log", "add", "cup-changed", "--hole", "1", "--as-planned", "--person", "Ash");
        kept("log", "add", "cup-changed", "--hole", "2", "--on", "12", "--side", "R11", "--person", "Ash");
        kept("log", "add", "left", "--hole", "3", "--person", "Birch");
        assertThat(kept("explain", "--hole", "1"))
                .contains("cup changed · as planned")
                .contains("(Ash)")
                .contains("That is where it was planned.")
                .contains("Weather of the 28 days")
                .doesNotContain("asked now");
        assertThat(kept("explain", "--hole", "2"))
                .containsPattern("That is [0-9½]+ paces from where it was planned.")
                .contains("The rules, asked now, of where it was that day:");
        assertThat(kept("explain", "--hole", "3")).contains("left in yesterday's hole (Birch)");
        assertThat(kept("explain", "--hole", "1", "--json")).contains("\"person\" : \"Ash\"");
    }

    @Test
    void explainSaysWhatIsKnownOfADayWithoutAPlan() {
        String day = "2026-06-10";
        Result none = cupwright.run("explain", "--hole", "1", "--date", day);
        assertThat(none.status()).isEqualTo(1);
        assertThat(none.err()).contains("no plan").contains("try:");
        kept(
                "log",
                "add",
                "cup-changed",
                "--hole",
                "1",
                "--on",
                "12",
                "--side",
                "R11",
                "--person",
                "Ash",
                "--date",
                day);
        assertThat(kept("explain", "--hole", "1", "--date", day))
                .contains("Where hole 1 was")
                .contains("No plan of that day is kept")
                .contains("(Ash)")
                .contains("The rules, asked now, of where it was that day:");
        assertThat(kept("explain", "--hole", "1", "--date", "2026-06-12"))
                .contains("put last before that day")
                .contains("2026-06-10")
                .contains("The rules, asked now");
        String json = kept("explain", "--hole", "1", "--date", day, "--json");
        assertThat(json)
                .contains("\"state\" : null")
                .contains("\"weatherBasis\"")
                .contains("\"really\" : {");
    }
}
