package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.democourse.DemoCourse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** When holes are changed, as it is set, planned and told. */
class SchemesIT {
    private static final Set<DayOfWeek> THREE = EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY);

    @TempDir
    Path files;

    private static JsonNode json(InProcess cupwright, Object... options) {
        Result said = cupwright.run(options);
        assertThat(said.status()).as(said.err()).isZero();
        return JsonMapper.shared().readTree(said.out());
    }

    private static void sets(InProcess cupwright, String... settings) {
        for (String setting : settings) {
            Result said = cupwright.run("policy", setting);
            assertThat(said.status()).as(said.err()).isZero();
        }
    }

    /** A club of flat square greens. */
    private InProcess club(int greens) throws IOException {
        InProcess club = new InProcess(files.resolve("club"));
        assertThat(club.run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, greens))
                        .status())
                .isZero();
        return club;
    }

    /** Two months of 5 °C, as the weeks after are taken to be: nothing grows, and ground rests longest. */
    private static Path cold(Path folder) throws IOException {
        StringBuilder table = new StringBuilder("date,tmax,tmin,rain\n");
        for (int day = 60; day > 0; day--) {
            table.append(DemoCourse.TODAY.minusDays(day)).append(",7,3,2\n");
        }
        return Files.writeString(folder.resolve("cold.csv"), table);
    }

    @Test
    void inTheColdThreeChangesAWeekGiveAPlanForEveryDay() throws IOException {
        LocalDate monday = DemoCourse.TODAY.plusDays(2);
        assertThat(monday.getDayOfWeek()).isEqualTo(DayOfWeek.MONDAY);
        Path data = files.resolve("winter");
        DemoFolder.copyTo(data);
        InProcess winter = new InProcess(data);
        assertThat(winter.run("weather", "import", cold(files), "--yes").out()).contains("60 new");
        // So far ahead the weather is taken to be as usual again; the course's own rest is the winter's.
        sets(winter, "rotation.changeDays=mon wed fri", "turf.wearRestDays=28");
        JsonNode plan = json(winter, "plan", "--days", "56", "--date", monday, "--json");
        assertThat(plan.path("days").size()).isEqualTo(56);
        assertThat(new WeeksChecker(28).faults(plan)).isEmpty();
        for (JsonNode day : plan.path("days")) {
            LocalDate date = LocalDate.parse(day.path("date").asString());
            assertThat(day.path("holes").size()).as("%s", date).isEqualTo(18);
            for (JsonNode hole : day.path("holes")) {
                assertThat(hole.path("staysSince").isNull())
                        .as("%s on %s", hole.path("hole"), date)
                        .isEqualTo(THREE.contains(date.getDayOfWeek()));
            }
        }
        Result paper = winter.run("sheets", "--days", "28", "--date", monday, "--out", files.resolve("paper"));
        assertThat(paper.status()).as(paper.err()).isZero();
    }

    @Test
    void aDayWithoutChangeKeepsTheHole_andSaysSo() throws IOException {
        InProcess club = club(3);
        sets(club, "rotation.changeDays=monday,wednesday,friday");
        JsonNode friday = json(club, "plan", "--date", "2026-06-26", "--json")
                .path("days")
                .path(0);
        Result told = club.run("plan", "--date", "2026-06-27");
        assertThat(told.out().replaceAll("\\s+", " "))
                .contains("It stays where it was cut on")
                .contains("no change-day");
        JsonNode saturday = json(club, "plan", "--date", "2026-06-27", "--json")
                .path("days")
                .path(0);
        for (int hole = 0; hole < 3; hole++) {
            JsonNode stays = saturday.path("holes").path(hole);
            for (String part : new String[] {"east", "north"}) {
                assertThat(stays.path("position").path(part))
                        .isEqualTo(
                                friday.path("holes").path(hole).path("position").path(part));
            }
            assertThat(stays.path("staysSince").asString()).isEqualTo("2026-06-26");
        }
        JsonNode monday = json(club, "plan", "--date", "2026-06-29", "--json")
                .path("days")
                .path(0);
        assertThat(monday.path("holes").path(0).path("staysSince").isNull()).isTrue();
        Result card = club.run("explain", "--hole", "2", "--date", "2026-06-27");
        assertThat(card.out()).contains("stays where it was cut");
    }

    /** As entered on Friday: nothing is cut on Saturday, so there is nothing to enter, and the plug is Monday's. */
    @Test
    void whatStaysIsNotEnteredAsCut_andRestsFromWhenItIsLeft() throws IOException {
        InProcess club = club(2);
        sets(club, "rotation.changeDays=mon wed fri");
        json(club, "plan", "--date", "2026-06-19", "--json");
        assertThat(club.run("cut", "--date", "2026-06-19", "--yes").status()).isZero();
        json(club, "plan", "--date", "2026-06-20", "--json");
        assertThat(club.run("cut", "--date", "2026-06-20", "--yes").err())
                .contains("No hole is changed on Sat 20 Jun 2026");
    }

    @Test
    void aPersonOrClosedGroundOrAgeChangesAHoleOnAnyDay() throws IOException {
        InProcess club = club(4);
        sets(club, "rotation.changeDays=mon", "rotation.changeDaysOfGreens=4=mon tue wed thu fri sat sun");
        json(club, "plan", "--date", "2026-06-22", "--json");
        assertThat(club.run(
                                "log",
                                "add",
                                "ground-marked",
                                "--hole",
                                "1",
                                "--on",
                                "11",
                                "--side",
                                "L11",
                                "--radius",
                                "13",
                                "--set",
                                "use=closed",
                                "--set",
                                "reason=wear",
                                "--date",
                                "2026-06-20")
                        .status())
                .isZero();
        JsonNode asked =
                json(club, "plan", "--date", "2026-06-23", "--hole", "2", "--on", "12", "--side", "L9", "--json");
        Set<String> changed = new TreeSet<>();
        for (JsonNode hole : asked.path("days").path(0).path("holes")) {
            if (hole.path("staysSince").isNull()) {
                changed.add(hole.path("hole").asString());
            }
        }
        assertThat(changed).containsExactly("1", "2", "4");
    }

    @Test
    void daysOfTheWeekAreRefusedWhereTheyAreNone() throws IOException {
        InProcess club = club(1);
        for (String wrong : new String[] {
            "rotation.changeDays=",
            "rotation.changeDays=mo",
            "rotation.changeDays=mon mon",
            "rotation.changeDaysOfGreens=1=",
            "rotation.changeDaysOfGreens=1"
        }) {
            Result refused = club.run("policy", wrong);
            assertThat(refused.status()).as(wrong).isEqualTo(1);
            assertThat(refused.err()).contains("mon tue wed");
        }
    }
}
