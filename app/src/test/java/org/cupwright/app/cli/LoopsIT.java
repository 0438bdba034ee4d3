package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.function.IntFunction;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.cupwright.app.sheets.DayPaperFiles;
import org.cupwright.app.sheets.PaperText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented courses that are not eighteen plain greens, as the plan and the paper show them. */
class LoopsIT {
    private static final double APART = 100;

    @TempDir
    Path files;

    private Path data;
    private InProcess cupwright;

    @Test
    void threeNinesAreListedApartAndHaveACardOfTheirOwn() throws IOException {
        made(
                27,
                i -> "\"ref\":\"" + ((i - 1) % 9 + 1) + "\",\"loop\":\""
                        + (i <= 9 ? "Forest" : i <= 18 ? "Lake" : "Moor") + "\"",
                "");
        String plan = cupwright.run("plan").out();
        assertThat(plan)
                .containsSubsequence(
                        "front 9 · middle 9 · back 9",
                        "\nForest   front ",
                        "\nF1 ",
                        "\nF9 ",
                        "\nLake   front ",
                        "\nL1 ",
                        "\nL9 ",
                        "\nMoor   front ",
                        "\nM9 ");
        String sheet = paper(DayPaperFiles.SHEET, 2);
        assertThat(sheet).containsSubsequence("Forest F1 ", "F9 ", "Lake L1 ", "L9 ", "Moor M1 ", "M9 ");
        String card = paper(DayPaperFiles.CARD, 4);
        assertThat(card)
                .containsSubsequence(
                        "Flags to load",
                        "made · Forest",
                        "F1 ",
                        "made · Lake",
                        "L9 ",
                        "The hand work",
                        "Flags to load",
                        "made · Moor",
                        "M1 ",
                        "M9 ",
                        "The hand work");
    }

    @Test
    void nineGreensWithTwoHolesEachAreTwoNinesAndWithOneHoleOne() throws IOException {
        made(9, i -> "\"ref\":\"" + i + ";" + (i + 9) + "\"", "");
        assertThat(cupwright.run("plan").out()).containsSubsequence("\n1–9   ", "\n1 ", "\n9 ", "\n10–18   ", "\n18 ");
        assertThat(paper(DayPaperFiles.SHEET, 1)).containsSubsequence("1–9 1 ", "10–18 10 ", "18 ");

        made(9, i -> "\"cups\":1,\"ref\":\"" + i + ";" + (i + 9) + "\"", "");
        assertThat(cupwright.run("plan").out())
                .contains("\n9 ")
                .doesNotContain("–9")
                .doesNotContain("\n10 ");
    }

    @Test
    void aPracticeGreenIsThePersonsToChooseAndItsHolesAreEnteredInPaces() throws IOException {
        made(18, i -> "\"ref\":\"" + i + "\"", practice(3));
        String plan = cupwright.run("plan").out();
        assertThat(plan)
                .containsSubsequence("\n18 ", "\nBy the shed: 3 holes, yours to choose")
                .doesNotContain("1–18")
                .doesNotContain("\nP1");
        assertThat(cupwright
                        .run("plan", "--hole", "P2", "--on", "10", "--side", "L5")
                        .err())
                .contains("Hole P2 is on a practice green")
                .contains("cupwright cut P2 12 R4");
        assertThat(paper(DayPaperFiles.SHEET, 1))
                .containsSubsequence("18 ", "By the shed P1 chosen on the day", "P3 chosen on the day");
        assertThat(paper(DayPaperFiles.CARD, 2))
                .containsSubsequence(
                        "The hand work", "By the shed: 3 holes, yours to choose; no old hole is on record.");

        assertThat(cupwright.run("cut", "--yes").out()).contains("18").doesNotContain("P1");
        assertThat(cupwright.run("cut", "P1", "14", "L4").status()).isZero();
        assertThat(cupwright.run("cut", "P2", "8", "R6").status()).isZero();
        assertThat(cupwright
                        .run("log", "add", "cut-somewhere", "--hole", "P3", "--set", "depth=back")
                        .status())
                .isZero();
        assertThat(paper(DayPaperFiles.SHEET, 1))
                .containsSubsequence(
                        "P1 ", "14 on · 4 from left", "P2 ", "8 on · 6 from right", "P3 chosen on the day");
        assertThat(paper(DayPaperFiles.CARD, 2)).contains("P1 14 on · 4 from left; P2 8 on · 6 from right");

        cupwright = new InProcess(data).daysLater(1);
        cupwright.run("plan");
        assertThat(paper(DayPaperFiles.CARD, 2))
                .contains("away from the plugs: P1 14 on · 4 from left; P2 8 on · 6 from right; P3 back");
        assertThat(cupwright.run("cut", "P1", "10", "R5").status()).isZero();

        cupwright = new InProcess(data).daysLater(2);
        assertThat(cupwright.run("turf", "--all").out().replaceAll(" +", " "))
                .contains("P1 middle left · 14 on · 4 from");
        assertThat(cupwright
                        .run("assess", "--hole", "P3", "--on", "14", "--side", "L4", "--json")
                        .out())
                .contains("\"verdict\" : \"fail\"");
    }

    @Test
    void onASmallCourseThePracticeGreenHasAQuarterWithAllThatRestsOnIt() throws IOException {
        made(9, i -> "\"ref\":\"" + i + "\"", practice(2));
        cupwright.run("cut", "P1", "14", "L4");
        cupwright.run("cut", "P2", "8", "R6");
        cupwright = cupwright.daysLater(1);
        cupwright.run("plan");
        assertThat(paper(DayPaperFiles.CARD, 2))
                .containsSubsequence(
                        "9 ",
                        "By the shed: 2 holes, yours to choose",
                        "Keep away from the old holes: ",
                        "14 on · 4 from left",
                        "P1 on, from side",
                        "P2 on, from side",
                        "The hand work");
    }

    /** A course of so many square greens with lines of play, each with its properties, and whatever else. */
    private void made(int greens, IntFunction<String> properties, String more) throws IOException {
        StringJoiner features = new StringJoiner(",");
        for (int i = 1; i <= greens; i++) {
            double west = MadeCourse.WEST + APART * i;
            double middle = west + MadeCourse.SIDE / 2;
            features.add(feature("green", properties.apply(i), "Polygon", "[" + square(west) + "]"));
            String[] refs = properties
                    .apply(i)
                    .replaceAll(".*\"ref\":\"([^\"]*)\".*", "$1")
                    .split(";", -1);
            for (String ref : refs) {
                String own = properties.apply(i).replaceAll("\"ref\":\"[^\"]*\"", "\"ref\":\"" + ref + "\"");
                String line = "[" + at(middle, MadeCourse.SOUTH - 300) + "," + at(middle, MadeCourse.SOUTH + 11) + "]";
                features.add(feature("hole", own, "LineString", line));
            }
        }
        if (!more.isEmpty()) {
            features.add(more);
        }
        Path map = MadeCourse.write(files.resolve("map.geojson"), MadeCourse.collection(features.toString()));
        data = Files.createTempDirectory(files, "data");
        cupwright = new InProcess(data);
        List<Object> line = new ArrayList<>(List.of("import", "--course", "made", "--outlines", map));
        if (!more.isEmpty()) {
            line.addAll(List.of("--towards", "P=0"));
        }
        assertThat(cupwright.run(line.toArray()).status()).isZero();
    }

    private static String practice(int cups) {
        String tags = "\"practice\":\"yes\",\"ref\":\"P\",\"name\":\"By the shed\",\"cups\":" + cups;
        return feature("green", tags, "Polygon", "[" + square(MadeCourse.WEST - APART) + "]");
    }

    private static String feature(String golf, String properties, String type, String coordinates) {
        return "{\"type\":\"Feature\",\"properties\":{\"golf\":\"" + golf + "\"," + properties
                + "},\"geometry\":{\"type\":\"" + type + "\",\"coordinates\":" + coordinates + "}}";
    }

    private static String square(double west) {
        double east = west + MadeCourse.SIDE;
        double south = MadeCourse.SOUTH;
        double north = south + MadeCourse.SIDE;
        return "["
                + String.join(",", at(west, south), at(east, south), at(east, north), at(west, north), at(west, south))
                + "]";
    }

    private static String at(double east, double north) {
        return String.format(Locale.ROOT, "[%.3f,%.3f]", east, north);
    }

    /** The words of a paper, which has so many pages. */
    private String paper(String file, int pages) throws IOException {
        Path folder = files.resolve("paper");
        assertThat(cupwright.run("sheets", "--out", folder).status()).isZero();
        byte[] pdf = Files.readAllBytes(folder.resolve(file));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(pages);
        }
        return PaperText.words(pdf);
    }
}
