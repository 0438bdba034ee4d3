package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.app.sheets.DayPaperFiles;
import org.cupwright.app.sheets.PaperText;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Days as the course's clock has them, on an invented course: days of 23 and of 25 hours, days that begin on another
 * day of UTC, and the day that comes every four years. That the clocks change on these days is published (the time zone
 * database).
 */
class DaysIT {
    @TempDir
    Path files;

    private InProcess cupwright;

    /** The course, at five in the afternoon of a day by its own clock. */
    private InProcess afternoon(LocalDate day, String zone) {
        ZoneId at = ZoneId.of(zone);
        return new InProcess(
                files.resolve("data"), Clock.fixed(day.atTime(17, 0).atZone(at).toInstant(), at));
    }

    private void made(LocalDate day, String zone) throws IOException {
        cupwright = afternoon(day, zone);
        kept("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 4));
    }

    private String kept(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result.out();
    }

    private static final DateTimeFormatter SAID = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

    /** Days by what is unlike about them: shorter than others, longer, far from UTC, and the day of leap years. */
    private static final List<List<Arguments>> DAYS = List.of(
            List.of(
                    day("Europe/Berlin", "2026-03-29"),
                    day("America/New_York", "2026-03-08"),
                    day("Pacific/Chatham", "2026-09-27"),
                    day("Australia/Lord_Howe", "2026-10-04")),
            List.of(
                    day("Europe/Berlin", "2026-10-25"),
                    day("America/New_York", "2026-11-01"),
                    day("Pacific/Chatham", "2026-04-05")),
            List.of(day("Pacific/Chatham", "2026-01-15"), day("UTC", "2026-06-20")),
            List.of(day("Europe/Berlin", "2028-02-29"), day("Pacific/Chatham", "2028-02-29")));

    private static Arguments day(String zone, String day) {
        return Arguments.of(zone, LocalDate.parse(day));
    }

    /** All of them in a full check, else one of each kind. */
    static List<Arguments> days() {
        return Suite.ofEach("days of the course's clock", DAYS);
    }

    @ParameterizedTest
    @MethodSource("days")
    void aListingHasWhatHappenedOnItsDaysAndNothingElse(String zone, LocalDate day) throws IOException {
        made(day.plusDays(2), zone);
        cut(1, day.minusDays(1), "23:30");
        cut(2, day, "00:30");
        cut(3, day, "23:30");
        cut(4, day.plusDays(1), "00:30");

        assertThat(rows(day, day)).containsExactly(day + " 00:30  2", day + " 23:30  3");
        assertThat(rows(day.minusDays(1), day))
                .as("the last day of a listing")
                .containsExactly(day.minusDays(1) + " 23:30  1", day + " 00:30  2", day + " 23:30  3");
        assertThat(rows(day.plusDays(1), day.plusDays(1))).containsExactly(day.plusDays(1) + " 00:30  4");
        assertThat(rows(day.minusDays(1), day.minusDays(1))).containsExactly(day.minusDays(1) + " 23:30  1");
    }

    private void cut(int hole, LocalDate day, String time) {
        kept("log", "add", "cup-changed", "--hole", hole, "--on", 12, "--side", "L9", "--when", day + "T" + time);
    }

    /** When and at which hole, of a listing. */
    private List<String> rows(LocalDate from, LocalDate to) {
        return kept("log", "list", "--from", from, "--to", to)
                .lines()
                .filter(line -> line.contains("cup changed"))
                .map(line -> line.substring(0, 19))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("days")
    void theWeatherOfADayIsOfThatDay(String zone, LocalDate day) throws IOException {
        made(day.plusDays(2), zone);
        Path table = MadeCourse.write(
                files.resolve("weather.csv"),
                "date,tmax,tmin,rain\n" + day.minusDays(1) + ",18,8,1\n" + day + ",19,9,2\n" + day.plusDays(1)
                        + ",20,10,3\n");
        kept("weather", "import", table, "--yes");

        assertThat(weather(day, day)).containsExactly("19.0 9.0 2.0");
        assertThat(weather(day.minusDays(1), day)).containsExactly("18.0 8.0 1.0", "19.0 9.0 2.0");
        assertThat(weather(day.plusDays(1), day.plusDays(1))).containsExactly("20.0 10.0 3.0");
    }

    private List<String> weather(LocalDate from, LocalDate to) {
        return kept("weather", "list", "--from", from, "--to", to)
                .lines()
                .filter(line -> line.contains("as entered") && line.contains(" 20"))
                .filter(line -> !line.startsWith("Of these"))
                .map(line -> line.strip().split(" +", -1))
                .map(cells -> String.join(" ", List.of(cells).subList(4, 7)))
                .toList();
    }

    /** The card has the hole where it was cut and the time by the course's clock; the next day's has its plug there. */
    @ParameterizedTest
    @MethodSource("days")
    void aHoleThatWasCutByNightIsOfItsDay(String zone, LocalDate day) throws IOException {
        made(day, zone);
        kept("plan");
        kept("publish");
        for (int hole = 1; hole <= 3; hole++) {
            kept("log", "add", "cup-changed", "--hole", hole, "--on", 8, "--side", "R6", "--when", day + "T00:30");
        }
        kept("log", "add", "cup-changed", "--hole", 4, "--on", 16, "--side", "L6", "--when", day + "T00:45");
        assertThat(paper(DayPaperFiles.SHEET))
                .contains("As cut at 00:45")
                .containsPattern("\\b1 front right 8 on · 6 from right")
                .containsPattern("\\b4 (middle|back) left 16 on · 6 from left");

        cupwright = afternoon(day.plusDays(1), zone);
        kept("plan");
        String card = paper(DayPaperFiles.CARD);
        assertThat(card.split("Plug: front right · 8 on · 6 from right", -1)).hasSize(4);
        assertThat(card.split("Plug: (middle|back) left · 16 on · 6 from left", -1))
                .hasSize(2);
    }

    private String paper(String file) throws IOException {
        Path folder = files.resolve("paper");
        kept("sheets", "--out", folder);
        return PaperText.words(Files.readAllBytes(folder.resolve(file)));
    }

    /**
     * Half past eleven in the evening is the same day: the plug is set on it. Whatever the hour, the hole counts as
     * played to up to the day before, three days ago two days later; the one in use was played to yesterday.
     */
    @ParameterizedTest
    @MethodSource("days")
    void anOldHolesAgeCountsFromTheLastDayItWasPlayedTo(String zone, LocalDate day) throws IOException {
        made(day.plusDays(2), zone);
        cut(1, day.minusDays(3), "23:30");
        kept("log", "add", "cup-changed", "--hole", 1, "--on", 16, "--side", "R6", "--when", day + "T23:30");
        assertThat(kept("turf", "--all").replaceAll(" +", " "))
                .contains("1 middle · 12 on · 9 from left set " + SAID.format(day) + " ");
        Path drawing = files.resolve("green.svg");
        kept("assess", "--hole", 1, "--svg", drawing);
        String ages = Files.readString(drawing).replaceAll("(?s).*class=\"age\"(.*?</text></g>).*", "$1");
        assertThat(ages.replaceAll("<[^>]*>", " ")
                        .replaceAll("[^>]*>", " ")
                        .strip()
                        .split(" +"))
                .containsExactlyInAnyOrder("1", "3");
    }

    @Test
    void timesAreShownByTheCoursesClock() throws IOException {
        made(LocalDate.of(2026, 1, 15), "Pacific/Chatham");
        kept("log", "add", "sprayed", "--set", "product=made", "--set", "reentryFrom=2026-01-16T06:30");
        cupwright = afternoon(LocalDate.of(2026, 1, 16), "Pacific/Chatham");
        kept("plan");
        assertThat(paper(DayPaperFiles.CARD)).contains("06:30");
        assertThat(kept("log", "list")).contains("2026-01-15 17:00").contains("2026-01-16 06:30");
    }
}
