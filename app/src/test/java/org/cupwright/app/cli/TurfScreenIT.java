package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
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
    static void anInventedSeason() {
        cupwright = new InProcess(files.resolve("data"));
        assertThat(cupwright.run("demo", "--out", files.resolve("paper")).status())
                .isZero();
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
        assertThat(page).contains("Cutter B: plugs high", "Wet patch front left", "more greens", "turf --all");
        assertThat(page).doesNotContain("Ground resting");
        assertThat(told("turf", "--all"))
                .contains("Know first", "Cutter B: plugs high", "Wet patch front left", "Ground resting", "Measured");
    }

    @Test
    void itFitsWhenMuchHasToBeKnown() {
        InProcess later = cupwright.daysLater(1);
        for (Object[] entry : new Object[][] {
            {"sprayed", "--hole", "3,4", "--set", "product=invented", "--set", "reentryFrom=2026-06-21T09:30"},
            {"frost", "--set", "onGreens=yes"},
            {"something-odd", "--hole", "8", "--set", "severity=now", "--set", "text=invented leak"},
            {"something-odd", "--hole", "9", "--set", "severity=soon", "--set", "text=invented ring"},
            {"note-to-next", "--set", "text=Key of the shed hangs at the pump"}
        }) {
            Object[] line = new Object[entry.length + 4];
            System.arraycopy(new Object[] {"log", "add"}, 0, line, 0, 2);
            System.arraycopy(entry, 0, line, 2, entry.length);
            System.arraycopy(new Object[] {"--person", "Ash"}, 0, line, entry.length + 2, 2);
            InProcess.Result kept = later.run(line);
            assertThat(kept.status()).as(kept.err()).isZero();
        }
        String page = later.run("turf").out();
        fitsAScreen(page);
        assertThat(page.indexOf("Keep off 3, 4 until")).isPositive().isLessThan(page.indexOf("Frost"));
        assertThat(page.indexOf("Urgent, green 8: invented leak")).isPositive().isLessThan(page.indexOf("Odd things"));
        assertThat(page).contains("more greens").contains("soon: invented ring");
    }
}
