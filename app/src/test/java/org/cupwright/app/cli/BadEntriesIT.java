package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Wrong entries of the logbook, on an invented noon (2026-10-25 in Berlin, the day on which clocks were put back). */
class BadEntriesIT {
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-10-25T11:00:00Z"), ZoneId.of("Europe/Berlin"));

    @TempDir
    static Path files;

    private static InProcess cupwright;

    @BeforeAll
    static void aCourse() throws IOException {
        cupwright = new InProcess(files.resolve("data"), NOON);
        assertThat(cupwright
                        .run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 1))
                        .status())
                .isZero();
    }

    private static Result add(String entry, String... more) {
        List<Object> line = new ArrayList<>(List.of("log", "add"));
        line.addAll(Arrays.asList(entry.split(" ")));
        line.addAll(Arrays.asList(more));
        return cupwright.run(line.toArray());
    }

    private static String list() {
        return cupwright
                .run("log", "list", "--from", "1900-01-01", "--to", "2099-01-01")
                .out();
    }

    /** Refused for good, or asked about: kept with --yes; by the words of the answer. */
    private static void wrong(boolean asked, String entry, String... words) {
        String before = list();
        Result result = add(entry);
        assertThat(result.status()).as(entry + result.out()).isBetween(1, 2);
        assertThat(result.err().replaceAll("\\s+", " "))
                .as(entry)
                .contains(words)
                .contains("try:");
        assertThat(list()).as(entry).isEqualTo(before);
        assertThat(add(entry, "--yes").status() == 0).as(entry + " --yes").isEqualTo(asked);
    }

    @Test
    void daysThatDoNotExistAreRefused() {
        wrong(false, "rounds --set rounds=90 --date 2026-06-31", "'--date': there is no such day", "2026-06-31");
        wrong(false, "rounds --set rounds=90 --date someday", "give a day as 2026-05-31");
        wrong(
                false,
                "rounds --set rounds=90 --set day=2026-02-29",
                "There is no day 2026-02-29: that month has 28 days.");
        wrong(false, "rounds --set rounds=90 --set day=31/05/2026", "\"31/05/2026\" is not a day.", "31.5.2025");
        wrong(false, "frost --set on=yes --when 2026-06-31T05:00", "is not a time");
    }

    @Test
    void whatHasNotComeYetIsAskedAbout() {
        wrong(true, "speed-read --set feet=10 --when 23:00", "That moment has not come yet.", "clock");
        wrong(true, "speed-read --set feet=10 --date 2026-10-26", "That moment has not come yet.");
        wrong(true, "rounds --set rounds=90 --set day=2026-10-27", "Tue 27 Oct 2026 had not come yet");
        wrong(true, "weather-entered --set day=2027-10-24 --set highestC=9 --set lowestC=4", "had not come yet");
        wrong(true, "weather-forecast --set day=2026-10-23 --set highestC=9 --set lowestC=4", "was over already");
    }

    @Test
    void timesOfTheNightsOfChangedClocksAreToldApart() {
        wrong(
                false,
                "frost --set on=yes --date 2026-03-29 --when 02:30",
                "There was no 02:30 on Sun 29 Mar 2026: the clocks went from 02:00 to 03:00.",
                "2026-03-29T03:30");
        Result twice = add("frost --set on=yes --when 02:30");
        assertThat(twice.out().replaceAll("\\s+", " "))
                .contains("02:30 came twice on Sun 25 Oct 2026, since the clocks went from 03:00 back to 02:00")
                .contains("the first was taken")
                .contains("give 2026-10-25T01:30:00Z");
        assertThat(add("frost --set on=no --when 2026-10-25T01:30:00Z --json").out())
                .contains("\"remarks\" : [ ]")
                .contains("2026-10-25T01:30:00Z");
    }

    @Test
    void placesOffTheGreenAreAskedAbout() {
        wrong(true, "ball-mark --hole 1 --at 500060,4400011", "41½ paces off the green of hole 1");
        wrong(false, "ball-mark --hole 1 --on 90 --side L9", "No place on the green");
        wrong(false, "ball-mark --hole 1 --at 500011", "--at");
    }

    @Test
    void otherUnitsAreAskedAbout() {
        wrong(true, "spot-check --hole 1 --set cup=1", "depth of the cup's rim: 1 mm? Did you mean 1 in?", "25 mm");
        wrong(true, "spot-check --hole 1 --set hole=8", "depth of the hole: 8 mm? Did you mean 8 in?", "203 mm");
        wrong(true, "spot-check --hole 1 --set hole=4.25", "4.25 mm? Did you mean 4.25 in? That would be 108 mm.");
        wrong(true, "spot-check --hole 1 --set hole=900", "depth of the hole: 900 mm? That is unlikely.");
        wrong(true, "weather-entered --set day=2026-10-24 --set highestC=58 --set lowestC=41", "58 °C?", "°F", "14 °C");
        wrong(
                true,
                "weather-entered --set day=2026-10-24 --set highestC=14 --set lowestC=5 --set wind=24",
                "24 m/s over a whole day");
    }

    @Test
    void whatCannotBeIsRefusedInPlainNumbers() {
        wrong(
                false,
                "weather-entered --set day=2026-10-24 --set highestC=7 --set lowestC=18",
                "the lowest temperature, 18 °C, is above the highest, 7 °C");
        wrong(
                false,
                "weather-entered --set day=2026-10-24 --set highestC=9 --set lowestC=4 --set rainMillimetres=-3",
                "rain of -3 mm is outside 0 to 2000 mm");
        wrong(false, "weather-forecast --set day=2026-10-26 --set highestC=82 --set lowestC=61", "82 °C is outside");
        wrong(false, "rounds --set rounds=2.5", "whole number");
        wrong(false, "weather-entered --set highest=9", "More than one part", "highestCelsius, highestHumidityPercent");
    }
}
