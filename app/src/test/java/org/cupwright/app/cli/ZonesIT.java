package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.app.sheets.DayPaperFiles;
import org.cupwright.app.sheets.PaperText;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A whole day's work on an invented course, by the commands that people type, on days of 23 and 25 hours, near the line
 * where the day begins, and on the day that comes every four years. When clocks change and by how much is published
 * (the time zone database); moments of UTC were worked out from that by hand.
 */
class ZonesIT {
    private static final int AROUND = 3;

    @TempDir
    Path files;

    private ZoneId zone;
    private InProcess cupwright;

    /** The course at a time of a day by its own clock, which is no time that comes twice or not at all. */
    private void at(LocalDate day, String time) {
        Clock clock = Clock.fixed(day.atTime(LocalTime.parse(time)).atZone(zone).toInstant(), zone);
        cupwright = new InProcess(files.resolve("data"), clock);
    }

    private String kept(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.out() + result.err()).isZero();
        return result.out();
    }

    private static List<String> starts(String listing, int length) {
        return listing.lines()
                .filter(line -> line.matches("20[0-9]{2}-[0-9]{2}-[0-9]{2} .*"))
                .map(line -> line.substring(0, length).stripTrailing())
                .toList();
    }

    private void add(Object... more) {
        List<Object> line = new ArrayList<>(List.of("log", "add"));
        line.addAll(List.of(more));
        kept(line.toArray());
    }

    /** All of them in a full check, else one with a day that is shorter, one that is longer, and one of a leap year. */
    static List<Arguments> work() {
        return Suite.ofEach(
                "whole days' work",
                List.of(
                        List.of(
                                work("Pacific/Chatham", "2026-09-27", "2026-09-26T15:55:00Z", "2026-09-26T16:45:00Z"),
                                work("Europe/London", "2026-03-29", "2026-03-29T04:40:00Z", "2026-03-29T05:30:00Z")),
                        List.of(
                                work("Europe/London", "2026-10-25", "2026-10-25T05:40:00Z", "2026-10-25T06:30:00Z"),
                                work("Pacific/Chatham", "2026-04-05", "2026-04-04T16:55:00Z", "2026-04-04T17:45:00Z")),
                        List.of(
                                work("Europe/London", "2028-02-29", "2028-02-29T05:40:00Z", "2028-02-29T06:30:00Z"),
                                work(
                                        "Pacific/Chatham",
                                        "2028-02-29",
                                        "2028-02-28T15:55:00Z",
                                        "2028-02-28T16:45:00Z"))));
    }

    private static Arguments work(String zone, String day, String readAt, String cutAt) {
        return Arguments.of(zone, LocalDate.parse(day), readAt, cutAt);
    }

    @ParameterizedTest
    @MethodSource("work")
    void aWholeDaysWork(String zoneName, LocalDate day, String readAt, String cutAt) throws IOException {
        zone = ZoneId.of(zoneName);
        at(day, "05:00");
        kept("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 4));
        weatherUpTo(day);
        kept("plan");
        kept("publish", "--yes");
        assertThat(paper(DayPaperFiles.CARD)).contains("1", "4");
        at(day, "06:30");
        add("speed-read", "--set", "feet=10", "--when", "05:40");
        kept("cut", "--yes");

        String listing = kept("log", "list", "--from", day, "--to", day);
        assertThat(starts(listing, 19))
                .containsExactly(
                        day + " 05:40  –", day + " 06:30  1", day + " 06:30  2", day + " 06:30  3", day + " 06:30  4");
        assertThat(paper(DayPaperFiles.SHEET)).contains("As cut at 06:30");
        Path log = files.resolve("log.jsonl");
        kept("log", "export", log);
        assertThat(Files.readString(log)).containsOnlyOnce("\"happenedAt\":\"" + readAt + "\"");
        assertThat(Files.readString(log).split("\"happenedAt\":\"" + cutAt + "\"", -1))
                .hasSize(5);

        Path backup = files.resolve("backup.db");
        kept("backup", backup);
        InProcess there = cupwright;
        cupwright = new InProcess(files.resolve("other"), Clock.fixed(java.time.Instant.parse(cutAt), zone));
        kept("restore", backup);
        assertThat(kept("log", "list", "--from", day, "--to", day)).isEqualTo(listing);
        cupwright = there;
        assertThat(kept("check")).contains("whole");
    }

    /** Three days up to yesterday; a table that has today's is told that today is not over. */
    private void weatherUpTo(LocalDate day) throws IOException {
        StringBuilder table = new StringBuilder("date,tmax,tmin,rain\n");
        for (int before = AROUND; before >= 0; before--) {
            table.append(day.minusDays(before)).append(",18,8,").append(before).append('\n');
        }
        Path file = MadeCourse.write(files.resolve("weather.csv"), table.toString());
        String read = kept("weather", "import", file, "--yes");
        assertThat(read).contains("line 5").doesNotContain("line 4");
        assertThat(kept("weather", "list", "--from", day.minusDays(AROUND), "--to", day.minusDays(1))
                        .lines()
                        .filter(line -> line.contains("as entered") && !line.startsWith("Of these")))
                .hasSize(AROUND);
    }

    private String paper(String file) throws IOException {
        Path folder = files.resolve("paper");
        kept("sheets", "--out", folder);
        return PaperText.words(Files.readAllBytes(folder.resolve(file)));
    }

    static List<Arguments> weeks() {
        return Suite.ofEach(
                "weeks' listings",
                List.of(
                        List.of(week("Pacific/Chatham", "2026-09-27", 167), week("Europe/London", "2026-03-29", 167)),
                        List.of(week("Europe/London", "2026-10-25", 169), week("Pacific/Chatham", "2026-04-05", 169)),
                        List.of(week("Europe/London", "2028-02-29", 168), week("Pacific/Chatham", "2028-02-29", 168))));
    }

    private static Arguments week(String zone, String day, int hours) {
        return Arguments.of(zone, LocalDate.parse(day), hours);
    }

    /** Ten minutes after and before midnight on seven days, the fourth of which is longer or shorter. */
    @ParameterizedTest
    @MethodSource("weeks")
    void aWeeksListing(String zoneName, LocalDate day, int hours) throws IOException {
        zone = ZoneId.of(zoneName);
        LocalDate first = day.minusDays(AROUND);
        LocalDate last = day.plusDays(AROUND);
        at(last.plusDays(1), "17:00");
        kept("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 1));
        List<String> expected = new ArrayList<>();
        for (LocalDate each = first.minusDays(1); !each.isAfter(last.plusDays(1)); each = each.plusDays(1)) {
            for (String time : List.of("00:10", "16:50", "23:50")) {
                if (!each.isAfter(last) || time.equals("00:10")) {
                    add("note-to-next", "--set", "text=invented", "--when", each + "T" + time);
                }
                if (!each.isBefore(first) && !each.isAfter(last)) {
                    expected.add(each + " " + time);
                }
            }
        }
        assertThat(starts(kept("log", "list", "--from", first, "--to", last), 16))
                .containsExactlyElementsOf(expected);
        long week = java.time.Duration.between(
                        first.atStartOfDay(zone).toInstant(),
                        last.plusDays(1).atStartOfDay(zone).toInstant())
                .toHours();
        assertThat(week).isEqualTo(hours);
    }

    /** In the night of a change a time is missing, or comes twice: the first is taken, and that is said. */
    @ParameterizedTest
    @CsvSource({
        "Europe/London, 2026-03-29T01:30, ''",
        "Europe/London, 2026-10-25T01:30, 2026-10-25T00:30:00Z",
        "Pacific/Chatham, 2026-09-27T03:00, ''",
        "Pacific/Chatham, 2026-04-05T03:00, 2026-04-04T13:15:00Z"
    })
    void aTimeOfTheNightOfAChange(String zoneName, String time, String moment) throws IOException {
        zone = ZoneId.of(zoneName);
        at(LocalDate.parse(time.substring(0, 10)), "17:00");
        kept("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 1));
        Result added = cupwright.run("log", "add", "note-to-next", "--set", "text=invented", "--when", time);
        assertThat(added.status()).as(added.out() + added.err()).isEqualTo(moment.isEmpty() ? 1 : 0);
        if (moment.isEmpty()) {
            assertThat(added.err()).contains("try:");
        } else {
            assertThat(Stream.of(added.out(), added.err()).anyMatch(said -> said.contains("twice")))
                    .isTrue();
            Path log = files.resolve("log.jsonl");
            kept("log", "export", log);
            assertThat(Files.readString(log)).contains("\"happenedAt\":\"" + moment + "\"");
        }
    }
}
