package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.democourse.DemoCourse;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Days planned together, as they are asked for and read. */
class PlanWeeksIT {
    private static final String FIRST = DemoCourse.TODAY.toString();

    /** The shortest rest there is, by the settings as they come. */
    private static final int REST_DAYS = 14;

    @TempDir
    static Path files;

    private static InProcess cupwright;

    @BeforeAll
    static void fill() throws IOException {
        Path data = files.resolve("data");
        DemoFolder.copyTo(data);
        cupwright = new InProcess(data);
    }

    private JsonNode plan(Object... options) {
        Result planned = cupwright.run(options);
        assertThat(planned.status()).as(planned.err()).isZero();
        return JsonMapper.shared().readTree(planned.out());
    }

    @Test
    void aFortnightKeepsEveryRuleByPlacesAndDatesAlone() {
        JsonNode plan = plan("plan", "--days", "14", "--date", FIRST, "--json");
        assertThat(plan.path("days").size()).isEqualTo(14);
        WeeksChecker checker = new WeeksChecker(REST_DAYS);
        assertThat(checker.faults(plan)).isEmpty();
        assertThat(checker.setAside()).isZero();
    }

    @Test
    void whatWasPublishedStays_andTheDaysAboutItKeepAwayFromItsHoles() {
        String third = DemoCourse.TODAY.plusDays(62).toString();
        String first = DemoCourse.TODAY.plusDays(60).toString();
        JsonNode alone = plan("plan", "--date", third, "--json").path("days").path(0);
        assertThat(cupwright.run("publish", "--yes", "--date", third).status()).isZero();
        JsonNode week = plan("plan", "--days", "5", "--date", first, "--json");
        JsonNode stood = week.path("days").path(2);
        assertThat(stood.path("state").asString()).isEqualTo("published");
        assertThat(stood.path("holes")).isEqualTo(alone.path("holes"));
        assertThat(week.path("days").path(1).path("state").asString()).isEqualTo("draft");
        assertThat(new WeeksChecker(REST_DAYS).faults(week)).isEmpty();
        Result told = cupwright.run("plan", "--days", "3", "--date", first);
        assertThat(told.out()).contains("One day is published and left as it is");
    }

    @Test
    void eachDayIsKeptAsADraft_andExplainSaysWhy() {
        String first = DemoCourse.TODAY.plusDays(90).toString();
        String second = DemoCourse.TODAY.plusDays(91).toString();
        JsonNode plan = plan("plan", "--days", "2", "--date", first, "--json");
        JsonNode hole = plan.path("days").path(1).path("holes").path(6);
        JsonNode why = plan("explain", "--hole", hole.path("hole").asString(), "--date", second, "--json");
        assertThat(why.path("position")).isEqualTo(hole.path("position"));
        assertThat(why.path("state").asString()).isEqualTo("draft");
        assertThat(why.path("reasons").size()).isGreaterThan(2);
    }

    /** What a person has to know stands before the table, the table in round order, what its signs mean below. */
    @Test
    void theTableIsReadFromTopToBottom() {
        String first = DemoCourse.TODAY.plusDays(120).toString();
        List<String> lines = cupwright
                .run("plan", "--days", "9", "--date", first)
                .out()
                .lines()
                .toList();
        int title = find(lines, "9 days together, kept as drafts");
        int even = find(lines, "Front, middle and back are as wanted on 9 of 9 days");
        assertThat(title).isLessThan(even);
        int firstHole = find(lines, "1     ");
        assertThat(even).isLessThan(firstHole);
        for (int hole = 1; hole <= 18; hole++) {
            assertThat(lines.get(firstHole + hole - 1)).startsWith(hole + " ");
            assertThat(lines.get(firstHole + hole - 1).split("(front|mid|back) [LCR]", -1))
                    .hasSize(8);
        }
        assertThat(find(lines, "L left, C centre, R right")).isGreaterThan(firstHole + 36);
        assertThat(lines).allMatch(line -> line.length() <= 100);
    }

    private static int find(List<String> lines, String begins) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).contains(begins)) {
                return i;
            }
        }
        throw new AssertionError("no line has '" + begins + "' in\n" + String.join("\n", lines));
    }

    @Test
    void aClubWithoutASurveyPlansWeeksToo() throws IOException {
        InProcess club = new InProcess(files.resolve("club"));
        assertThat(club.run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 9))
                        .status())
                .isZero();
        Result planned = club.run("plan", "--days", "6", "--date", FIRST, "--json");
        assertThat(planned.status()).as(planned.err()).isZero();
        JsonNode plan = JsonMapper.shared().readTree(planned.out());
        assertThat(plan.path("days").size()).isEqualTo(6);
        assertThat(new WeeksChecker(REST_DAYS).faults(plan)).isEmpty();
    }

    /** Greens of which four paces more are edge have room for few holes. */
    @Test
    void whereGroundIsShortItIsSaidWhy_andWhatWouldHelp() throws IOException {
        InProcess club = new InProcess(files.resolve("small"));
        assertThat(club.run("import", "--course", "small", "--outlines", MadeCourse.outlines(files, 2))
                        .status())
                .isZero();
        assertThat(club.run(
                                "policy",
                                "holelocation.edgePaces=8",
                                "turf.wearRestDays=28",
                                "turf.wearRestSlowDays=28",
                                "--date",
                                FIRST)
                        .status())
                .isZero();
        Result json = club.run("plan", "--days", "24", "--date", FIRST, "--json");
        JsonNode plan = JsonMapper.shared().readTree(json.out());
        JsonNode shortage = plan.path("shortages").path(0);
        assertThat(shortage.path("cause").asString()).isEqualTo("ground");
        assertThat(shortage.path("proof").asString()).isIn("counted", "solved");
        assertThat(shortage.path("wanted").asInt())
                .isGreaterThan(shortage.path("roomAtMost").asInt());
        JsonNode step = shortage.path("steps").path(0);
        assertThat(step.path("restDays").asInt())
                .as("with ground along the edge a week less helps")
                .isEqualTo(21);
        assertThat(step.path("holesSetAside").asInt())
                .isLessThan(shortage.path("holesSetAside").asInt());
        assertThat(plan.path("leastOfAll").path("holesSetAside").asInt()).isPositive();
        Result told = club.run("plan", "--days", "24", "--date", FIRST);
        List<String> lines = told.out().lines().toList();
        int why = find(lines, "Why that is, and what would help");
        assertThat(find(lines, "Hole 1 on")).isLessThan(why);
        assertThat(why).isLessThan(find(lines, "Front, middle and back"));
        assertThat(told.out().replaceAll("\\s+", " ")).contains("With at most 21 days of rest", "cannot be avoided");
        assertThat(lines).allMatch(line -> line.length() <= 100);
    }

    @Test
    void aCeilingStopsTheSearch_andIsTold() {
        String first = DemoCourse.TODAY.plusDays(150).toString();
        JsonNode plan = plan("plan", "--days", "3", "--date", first, "--budget-seconds", "0.001", "--json");
        assertThat(plan.path("stopped").asBoolean()).isTrue();
        assertThat(plan.path("ceilingSeconds").asDouble()).isEqualTo(0.001);
        assertThat(plan.path("days").size()).isEqualTo(3);
        JsonNode whole = plan("plan", "--days", "3", "--date", first, "--budget-seconds", "3600", "--json");
        assertThat(whole.path("stopped").asBoolean()).isFalse();
        assertThat(whole.path("ceilingSeconds").isNull()).isTrue();
        Result told = cupwright.run("plan", "--days", "3", "--date", first, "--budget-seconds", "0.001");
        assertThat(told.out()).contains("Stopped at the ceiling of 0.001 seconds");
        for (String wrong : List.of("0", "-1", "3601")) {
            assertThat(cupwright
                            .run("plan", "--days", "3", "--budget-seconds", wrong)
                            .err())
                    .contains("seconds above 0");
        }
        assertThat(cupwright.run("plan", "--budget-seconds", "5").err()).contains("goes with --days");
    }

    @Test
    void wrongNumbersOfDaysAreRefusedWithWhatToTry() {
        for (String days : List.of("0", "-3", "85", "1000000")) {
            Result refused = cupwright.run("plan", "--days", days);
            assertThat(refused.status()).isEqualTo(1);
            assertThat(refused.err()).contains("1 to 84", "option --days", "at most 84 days");
        }
        Result wish = cupwright.run("plan", "--days", "3", "--hole", "4", "--free");
        assertThat(wish.status()).isEqualTo(2);
        assertThat(wish.err()).contains("leave out --days");
    }
}
