package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The turf of the invented course after its invented season, on a screen of 24 lines of 100 columns. */
class TurfScreenIT {
    private static final int LINES = 24;
    private static final int COLUMNS = 100;

    @TempDir
    private static Path files;

    private static InProcess cupwright;

    @BeforeAll
    static void anInventedSeason() throws IOException {
        MadeMorning.copyTo(files.resolve("data"));
        cupwright = new InProcess(files.resolve("data"));
    }

    private String told(Object... line) {
        InProcess.Result result = cupwright.run(line);
        assertThat(result.status()).as(result.err()).isZero();
        return result.out();
    }

    private static void fitsAScreen(String page) {
        List<String> lines = page.lines().toList();
        assertThat(lines)
                .hasSizeLessThanOrEqualTo(LINES)
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(COLUMNS));
    }

    @Test
    void itFitsAndBeginsWithWhatHasToBeKnownFirst() {
        String page = told("turf");
        fitsAScreen(page);
        assertThat(page.lines().skip(1).findFirst()).contains("Know first");
        assertThat(page).contains("Cutter B: plugs high", "Wet patch front left", "look first", "turf --all");
        assertThat(page).containsPattern("18 [0-9½]+ on [LR]").doesNotContain("Ground resting");
        assertThat(told("turf", "--all"))
                .contains("Know first", "Cutter B: plugs high", "Wet patch front left", "Ground resting", "Measured");
    }

    @Test
    void itFitsWhenMuchHasToBeKnown() throws IOException {
        InProcess day = copy("much");
        kept(day, "sprayed", "--hole", "3,4", "--set", "product=invented", "--set", "reentryFrom=2026-06-21T09:30");
        kept(day, "frost", "--set", "onGreens=yes");
        kept(day, "something-odd", "--hole", "8", "--set", "severity=now", "--set", "text=invented leak");
        kept(day, "something-odd", "--hole", "9", "--set", "severity=soon", "--set", "text=invented ring");
        kept(day, "note-to-next", "--set", "text=Key of the shed hangs at the pump");
        String page = day.run("turf").out();
        fitsAScreen(page);
        assertThat(page.indexOf("Keep off 3, 4 until")).isPositive().isLessThan(page.indexOf("Frost"));
        assertThat(page.indexOf("Urgent, green 8: invented leak")).isPositive().isLessThan(page.indexOf("Odd things"));
        assertThat(page).contains("more greens").contains("soon: invented ring");
    }

    /** The same season in a folder of its own. */
    private static InProcess copy(String name) throws IOException {
        Path folder = Files.createDirectory(files.resolve(name));
        try (Stream<Path> all = Files.list(files.resolve("data"))) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        return new InProcess(folder);
    }

    private static void kept(InProcess day, Object... entry) {
        List<Object> line = new ArrayList<>(List.of("log", "add"));
        line.addAll(List.of(entry));
        line.addAll(List.of("--person", "Ash"));
        InProcess.Result kept = day.run(line.toArray());
        assertThat(kept.status()).as(kept.err()).isZero();
    }

    /** Of everything more than a screen has room for: what has to be known first stays whole. */
    @Test
    void itFitsHoweverMuchThereIs() throws IOException {
        InProcess day = copy("all");
        for (int green = 1; green <= 6; green++) {
            String hole = Integer.toString(green);
            kept(day, "cup-changed", "--hole", hole, "--on", "12", "--side", "R8", "--yes");
            kept(day, "plug-seen", "--hole", hole, "--on", "9", "--side", "L7", "--set", "look=low");
            kept(day, "something-odd", "--hole", hole, "--set", "severity=soon", "--set", "text=invented ring " + hole);
            kept(day, "note-to-next", "--set", "text=invented note " + hole);
        }
        String page = day.run("turf").out();
        fitsAScreen(page);
        assertThat(page)
                .contains("invented note 1", "invented note 6", "Thunder")
                .containsPattern("Odd things .*: 7")
                .contains("Plugs that are not level: 6")
                .contains("Water this morning: plugs of the last 3 days on 1, 2, 3, 4, 5, 6.")
                .contains("turf --all");
        assertThat(page.indexOf("invented note 6")).isLessThan(page.indexOf("Odd things"));
    }

    @Test
    void plugsThatAreNotLevelAreNamedWithTheirPlaces() throws IOException {
        InProcess day = copy("plugs");
        kept(day, "plug-seen", "--hole", "11", "--on", "9", "--side", "L7", "--set", "look=high");
        kept(day, "plug-seen", "--hole", "12", "--on", "10.5", "--side", "R8", "--set", "look=damaged");
        String page = day.run("turf").out();
        fitsAScreen(page);
        assertThat(page.lines().map(line -> line.replaceAll(" +", " ")))
                .anyMatch(line -> line.startsWith("11 ") && line.contains("9 on · 7 from left high"))
                .anyMatch(line -> line.startsWith("12 ") && line.contains("10½ on · 8 from right damaged"));
    }

    /** Where no line of play is known no words lead to a place. */
    @Test
    void plugsOfGreensWithoutALineOfPlayAreCounted() throws IOException {
        InProcess made = new InProcess(files.resolve("bare"));
        String map = MadeCourse.collection(MadeCourse.green("1", MadeCourse.WEST));
        Path outline = Files.writeString(files.resolve("bare.geojson"), map);
        assertThat(made.run("import", "--course", "bare", "--outlines", outline).status())
                .isZero();
        int day = 0;
        for (String at : List.of("500008,4400011", "500014,4400011", "500011,4400014")) {
            kept(made.daysLater(day++), "cup-changed", "--hole", "1", "--at", at);
        }
        String page = made.daysLater(16).run("turf").out();
        fitsAScreen(page);
        assertThat(page.lines().map(String::strip)).contains("1  2 plugs");
    }
}
