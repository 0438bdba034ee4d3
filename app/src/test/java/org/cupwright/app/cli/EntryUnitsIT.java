package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lengths and temperatures of invented entries, typed with their unit; an inch is 25.4 mm, 68 °F are 20 °C. */
class EntryUnitsIT {
    @TempDir
    Path files;

    private TableDesk desk;

    @BeforeEach
    void aCourse() throws IOException {
        desk = new TableDesk(files, 3);
    }

    private Result spotCheck(String holeDepth, String cupDepth, String plugHeight) {
        return desk.cupwright()
                .run(
                        "log",
                        "add",
                        "spot-check",
                        "--hole",
                        "1",
                        "--set",
                        "holeDepth=" + holeDepth,
                        "--set",
                        "cupDepth=" + cupDepth,
                        "--set",
                        "plugHeight=" + plugHeight);
    }

    private static String said(Result result) {
        assertThat(result.status()).as(result.err()).isZero();
        return result.out().replaceAll("\\s+", " ");
    }

    @Test
    void lengthsTakeInchesFractionsAndCentimetres() {
        String kept = said(spotCheck("8 1/2 in", "1\"", "1/8in"));
        assertThat(kept).contains("215.9 mm deep", "25.4 mm down", "3.2 mm");
        assertThat(said(spotCheck("20.4cm", "26 mm", "-2"))).contains("204 mm deep", "26 mm down", "-2 mm");
    }

    @Test
    void aFractionWithoutItsUnitIsRefusedWithWhatToType() {
        Result refused = spotCheck("204", "26", "1/8");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("1/8", "Fractions are of inches: say so, as 3/8in");
        assertThat(spotCheck("204 furlongs", "26", "2").err()).contains("with one of:", "cm, in,");
        assertThat(desk.list()).contains("No entries");
    }

    @Test
    void temperaturesTakeFahrenheit() {
        Result kept = desk.cupwright()
                .run(
                        "log",
                        "add",
                        "weather-entered",
                        "--set",
                        "day=2026-06-18",
                        "--set",
                        "highestC=68°F",
                        "--set",
                        "lowestC=50 F");
        assertThat(kept.status()).as(kept.err()).isZero();
        assertThat(desk.cupwright()
                        .run("weather", "list", "--from", "2026-06-18", "--to", "2026-06-18")
                        .out())
                .contains("20.0", "10.0");
    }

    @Test
    void tablesOfEntriesTakeThemToo() throws IOException {
        Result read = desk.read(
                "log",
                "date;hole;holeDepthMillimetres;cupDepthMillimetres\n2026-06-18;1;8 1/2 in;1in\n",
                "--csv",
                "--kind",
                "spot-check",
                "--yes");
        assertThat(said(read)).contains("215.9 mm deep", "25.4 mm down");
    }
}
