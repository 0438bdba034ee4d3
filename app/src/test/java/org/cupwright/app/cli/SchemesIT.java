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
import org.cupwright.testing.Suite;
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
        int days = Suite.count("days of a winter", 56, 21);
        JsonNode plan = json(winter, "plan", "--days", days, "--date", monday, "--json");
        assertThat(plan.path("days").size()).isEqualTo(days);
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
        Result paper =
                winter.run("sheets", "--days", Math.min(days, 28), "--date", monday, "--out", files.resolve("paper"));
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
        assertThat(club.run("plan", "--date", "2026-06-23").out().replaceAll("\\s+", " "))
                .contains("as its ground is closed or saved: 1.");
        assertThat(club.run("plan", "--date", "2026-06-30").out().replaceAll("\\s+", " "))
                .contains("as the hole is 7 days old or more: 1, 2, 3.");
        Result weeks = club.run("plan", "--days", "2", "--date", "2026-06-30");
        assertThat(weeks.out().replaceAll("\\s+", " "))
                .contains("Tue 30 Jun is no change-day for holes 1, 2, 3, which are changed all the same")
                .doesNotContain("Wed 1 Jul is no change-day");
    }

    /** Four areas on each green, one in each quarter; on hole 4 three, called A, B and C. */
    private Path areas() throws IOException {
        StringBuilder table = new StringBuilder("hole,kind,on,side,radius,area\n");
        String[] places = {"7,L7", "7,R7", "17,L7", "17,R7"};
        for (int hole = 1; hole <= 4; hole++) {
            for (int area = 0; area < (hole < 4 ? 4 : 3); area++) {
                String number = hole < 4 ? Integer.toString(area + 1) : "ABC".substring(area, area + 1);
                table.append(hole + ",area," + places[area] + ",5," + number + "\n");
            }
        }
        return Files.writeString(files.resolve("areas.csv"), table);
    }

    private InProcess clubWithAreas() throws IOException {
        InProcess club = club(4);
        assertThat(club.run("import", "--course", "made", "--drawn", areas()).out())
                .contains("15 numbered areas");
        return club;
    }

    private static final String[] CYCLE = {
        "rotation.changeDays=mon wed fri",
        "rotation.changeDaysOfGreens=3=tue thu sat",
        "rotation.cycle=1 2 3 4",
        "rotation.cycleOfGreens=2=3 1 4 2; 4=A B C",
        "rotation.cycleFrom=2026-06-22",
    };

    private static Object[] policy(String[] settings, String more) {
        Object[] all = new Object[settings.length + 2];
        all[0] = "policy";
        System.arraycopy(settings, 0, all, 1, settings.length);
        all[settings.length + 1] = more;
        return all;
    }

    /** The table of the cycle's unit test, which was worked by hand, from a Monday on. */
    @Test
    void aSetCycleIsKeptToTheDay() throws IOException {
        String[] table = {"11223334411222", "33114442233111", "12233444112233", "AABBCCCAABBCCC"};
        InProcess club = clubWithAreas();
        Result set = club.run(policy(CYCLE, "rotation.scheme=setCycle"));
        assertThat(set.status()).as(set.err()).isZero();
        JsonNode plan = json(club, "plan", "--days", "14", "--date", "2026-06-22", "--json");
        for (int day = 0; day < 14; day++) {
            JsonNode today = plan.path("days").path(day);
            assertThat(today.path("scheme").asString()).isEqualTo("setCycle");
            assertThat(today.path("spotsAreSuggestions").asBoolean()).isFalse();
            for (int green = 0; green < 4; green++) {
                assertThat(today.path("holes").path(green).path("area").asString())
                        .as("green %s, day %s", green + 1, day)
                        .isEqualTo(table[green].substring(day, day + 1));
            }
        }
        Result told = club.run("plan", "--days", "7", "--date", "2026-06-22");
        assertThat(told.out())
                .contains("Set cycle")
                .containsPattern("1 +1 (front|mid|back) +1 (front|mid|back)\" +2 (front|mid|back)");
        Result one = club.run("plan", "--date", "2026-06-22");
        assertThat(one.out()).contains("Set cycle", "In area 3.");
    }

    @Test
    void areaOnlyNamesTheAreaAndSuggestsASpot() throws IOException {
        InProcess club = clubWithAreas();
        assertThat(club.run(policy(CYCLE, "rotation.scheme=areaOnly")).status()).isZero();
        JsonNode plan = PublishedShapes.checked("plan", club.run("plan", "--date", "2026-06-24", "--json"))
                .path("days")
                .path(0);
        JsonNode drawn = PublishedShapes.checked("drawn-list", club.run("drawn", "list", "--json"));
        assertThat(drawn.path("drawn").path(0).path("word").path("area").asString())
                .isEqualTo("1");
        Result kept = club.run(
                "drawn",
                "add",
                "--hole",
                "1",
                "--kind",
                "area",
                "--area",
                "1",
                "--on",
                "8",
                "--side",
                "L8",
                "--radius",
                "4",
                "--json");
        assertThat(PublishedShapes.checked("drawn-add", kept).path("id").asString())
                .isEqualTo("1-area-1"); // drawn anew, it is the same area
        assertThat(plan.path("scheme").asString()).isEqualTo("areaOnly");
        assertThat(plan.path("spotsAreSuggestions").asBoolean()).isTrue();
        assertThat(plan.path("holes").path(0).path("area").asString()).isEqualTo("2");
        assertThat(club.run("plan", "--date", "2026-06-24").out().replaceAll("\\s+", " "))
                .contains("Area only", "Area 2: whoever changes the hole picks the spot");
        assertThat(club.run("sheets", "--date", "2026-06-24", "--out", files.resolve("paper"))
                        .status())
                .isZero();
    }

    @Test
    void greensMayKeepToSomeAreasAndThirds() throws IOException {
        InProcess club = clubWithAreas();
        sets(club, "rotation.areasOfGreens=1=4; 4=A C", "rotation.thirdsOfGreens=2=back");
        JsonNode plan = json(club, "plan", "--days", "3", "--date", "2026-06-22", "--json");
        for (JsonNode day : plan.path("days")) {
            assertThat(day.path("holes").path(0).path("area").asString()).isEqualTo("4");
            assertThat(day.path("holes").path(1).path("position").path("third").asString())
                    .isEqualTo("back");
            assertThat(day.path("holes").path(1).path("area").isNull()).isTrue();
            assertThat(day.path("holes").path(3).path("area").asString()).isIn("A", "C");
        }
    }

    @Test
    void whatCannotGoTogetherIsRefusedWhereItIsSet_andNothingIsKept() throws IOException {
        InProcess club = clubWithAreas();
        String[][] refused = {
            {"rotation.weight.leftRight=-1", "below 0 would seek"},
            {"turf.wearRestDays=400", "for most of a season"},
            {"rotation.changeDays=", "Without any change-day"},
            {"rotation.areasOfGreens=1=7", "Hole 1 has no area 7"},
            {"rotation.cycleOfGreens=4=A 2", "Hole 4 has no area 2"},
            {"rotation.areasOfGreens=19=1", "19"},
            {"rotation.cycle=1 1 2", "twice running"},
            {"rotation.cycle=1 2 1", "twice running"},
            {"rotation.cycle=1 _", "numbers or letters"},
            {"rotation.cycleFrom=Monday", "a day, as"},
            {"rotation.scheme=setCycle", "no order"},
            {"rotation.scheme=teeLinked", "one of"},
        };
        String before = club.run("policy", "--all", "--json").out();
        for (String[] one : refused) {
            Result said = club.run("policy", one[0]);
            assertThat(said.status()).as(one[0]).isEqualTo(1);
            assertThat(said.err().replaceAll("\\s+", " ")).as(one[0]).contains(one[1]);
        }
        assertThat(club.run("policy", "--all", "--json").out()).isEqualTo(before);
        assertThat(club.run("drawn", "remove", "--id", "4-area-A").status()).isZero();
        assertThat(club.run("drawn", "remove", "--id", "4-area-B").status()).isZero();
        assertThat(club.run("drawn", "remove", "--id", "4-area-C").status()).isZero();
        assertThat(club.run("policy", "rotation.cycle=1 2 3 4", "rotation.scheme=setCycle")
                        .err())
                .contains("none are drawn on 4");
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
