package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Invented tables of weather that look wrong as a whole are asked about (the course's today is 2026-06-20). */
class WeatherQuestionsIT {
    @TempDir
    private Path files;

    private TableDesk desk;
    private InProcess cupwright;

    @BeforeEach
    void aCourse() throws IOException {
        desk = new TableDesk(files, 1);
        cupwright = desk.cupwright();
    }

    private Result read(String text, Object... more) throws IOException {
        return desk.read("weather", text, more);
    }

    private String list() {
        return desk.list();
    }

    private static String days(String from, int count, String rest) {
        LocalDate first = LocalDate.parse(from);
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < count; i++) {
            lines.append(first.plusDays(i)).append(',').append(rest).append('\n');
        }
        return lines.toString();
    }

    private static String head(String lines) {
        String[] names = {"date", "tmax", "tmin", "rain", "wind", "sunshine", "radiation"};
        int fields = lines.lines().findFirst().orElseThrow().split(",", -1).length;
        return String.join(",", Arrays.copyOf(names, Math.max(6, fields))) + "\n";
    }

    /** More than any day has is no question: every line is refused with what its unit may be. */
    @Test
    void wattsReadAsMegajoulesAreRefusedWithTheirUnit() throws IOException {
        String watts = days("2026-05-01", 12, "18,8,210");
        Result refused = read("date,tmax,tmin,radiation\n" + watts, "--yes");
        assertThat(refused.out().replaceAll("\\s+", " "))
                .contains("no day reads")
                .contains("\"210\"", "--unit radiation=W/m2");
        assertThat(read("date,tmax,tmin,vapourpressure\n2026-05-01,18,8,12.4\n")
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("\"12.4\"", "--unit vapourpressure=hPa");
        assertThat(read("date,tmax,tmin,radiation\n" + watts, "--unit", "radiation=W/m2")
                        .out())
                .contains("12 days read");
    }

    /** What is asked of a table as a whole: what it has, the word that accepts it, and what the question says. */
    @Test
    void tablesThatLookWrongAreNotKeptUntilSomebodySaysTheyAreRight() throws IOException {
        String winter = days("2026-01-01", 40, "24,14,0,4,300");
        String summer = days("2025-07-01", 40, "9,1,0,4,300");
        Map<String, List<String>> wrong = new LinkedHashMap<>();
        wrong.put("2026-05-01,58,41,0,4,300\n", List.of("tmax", "58.0 °C", "--unit tmax=F"));
        wrong.put(days("2026-05-01", 12, "46,33,0,4,300"), List.of("tmax", "39.5 °C", "no place"));
        wrong.put(days("2026-05-01", 12, "18,8,0.4,4,300"), List.of("rain", "0.40 mm", "inches"));
        wrong.put("2026-05-01,18,8,340,4,300\n", List.of("rain", "340 mm", "--unit rain=mm"));
        wrong.put(days("2026-05-01", 12, "18,8,0,14,300"), List.of("wind", "14.0 m/s", "km/h or mph"));
        wrong.put("2026-05-01,18,8,0,33,300\n", List.of("wind", "33.0 m/s", "--accept wind"));
        wrong.put(days("2026-05-01", 12, "18,8,0,4,11"), List.of("sunshine", "11 min", "--unit sunshine=h"));
        wrong.put("2026-05-01,18,8,0,4,300,45\n", List.of("radiation", "45 MJ/m²", "--accept radiation"));
        wrong.put(days("2026-05-01", 12, "18,8,0,4,300,5.2"), List.of("radiation", "5.2 MJ/m²", "kWh/m²"));
        wrong.put(winter + summer, List.of("seasons", "5.0 °C", "19.0 °C", "39.8° north", "--accept seasons"));
        for (Map.Entry<String, List<String>> table : wrong.entrySet()) {
            String text = head(table.getKey()) + table.getKey();
            String about = table.getValue().get(0);
            Result dry = read(text);
            assertThat(dry.out().replaceAll("\\s+", " ")).contains(table.getValue());
            assertThat(dry.out().replaceAll("\\s+", " "))
                    .contains("To be answered before anything is kept")
                    .contains("--accept " + about);
            Result refused = read(text, "--yes");
            assertThat(refused.status()).isEqualTo(1);
            assertThat(refused.err().replaceAll("\\s+", " ")).contains(table.getValue());
            assertThat(list()).contains("No entries");
            assertThat(read(text, "--accept", about).out()).doesNotContain("To be answered");
        }
        assertThat(read("date,tmax,tmin\n" + winter.replace(",0,4,300", "") + summer.replace(",0,4,300", ""), "--yes")
                        .status())
                .isEqualTo(1);
        assertThat(read("date,tmax,tmin\n2026-05-01,52,40\n", "--accept", "tmax", "--yes")
                        .out())
                .contains("Kept: 1 new");
        assertThat(read("date,tmax,tmin\n", "--accept", "heat").err())
                .contains("tmax, rain, wind, sunshine, radiation, seasons, days");
    }

    @Test
    void aNorthernYearIsAskedAboutOnACourseInTheSouth() throws IOException {
        Path map = MadeCourse.outlines(files, 1);
        Files.writeString(map, Files.readString(map).replace("EPSG:32626", "EPSG:32726"));
        assertThat(cupwright
                        .run("import", "--course", "south", "--outlines", map)
                        .status())
                .isZero();
        String northern = "date,tmax,tmin\n" + days("2025-07-01", 30, "24,14") + days("2026-01-01", 30, "9,1");
        assertThat(read(northern, "--course", "made").out()).doesNotContain("To be answered");
        assertThat(read(northern, "--course", "south").out().replaceAll("\\s+", " "))
                .contains("warm from June to August (19.0 °C in the mean) and cool from December to February (5.0 °C)")
                .contains("the course lies 50.6° south, where it is the other way round");
        assertThat(read(northern, "--course", "south", "--yes").status()).isEqualTo(1);
        assertThat(read(northern, "--course", "south", "--yes", "--accept", "seasons")
                        .out())
                .contains("Kept: 60 new");
    }
}
