package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.democourse.DemoCourse;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Plans of coming days changed, as it is asked for and read; the course is invented, of three greens. */
class ChangeIT {
    private static final int DAYS = 6;
    private static final String FIRST = DemoCourse.TODAY.plusDays(1).toString();
    private static final String THIRD = DemoCourse.TODAY.plusDays(3).toString();
    private static final String FOURTH = DemoCourse.TODAY.plusDays(4).toString();

    @TempDir
    Path files;

    private static Path planned;

    private InProcess cupwright;

    /** Planned once; each test has a copy of its own. */
    @BeforeAll
    static void sixDays(@TempDir Path folder) throws IOException {
        planned = folder.resolve("data");
        InProcess made = new InProcess(planned);
        done(made, "import", "--course", "made", "--outlines", MadeCourse.outlines(folder, 3));
        done(made, "plan", "--days", Integer.toString(DAYS), "--date", FIRST);
    }

    @BeforeEach
    void ofItsOwn() throws IOException {
        MadeOnce.copy(planned, files.resolve("data"));
        cupwright = new InProcess(files.resolve("data"));
    }

    private String done(Object... arguments) {
        return done(cupwright, arguments);
    }

    private static String done(InProcess program, Object... arguments) {
        Result result = program.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result.out();
    }

    private JsonNode json(Object... arguments) {
        return JsonMapper.shared().readTree(done(arguments));
    }

    private JsonNode change(Object... wishes) {
        List<Object> all = new ArrayList<>(List.of("change", "--date", FIRST, "--person", "Ash", "--json"));
        all.addAll(List.of(wishes));
        return json(all.toArray());
    }

    private static String day(int day) {
        return DemoCourse.TODAY.plusDays(1L + day).toString();
    }

    /** By day and hole, where the plans have it. */
    private Map<String, JsonNode> plans() {
        Map<String, JsonNode> plans = new HashMap<>();
        for (int day = 0; day < DAYS; day++) {
            for (String hole : List.of("1", "2", "3")) {
                JsonNode why = json("explain", "--hole", hole, "--date", day(day), "--json");
                plans.put(day(day) + " " + hole, why.path("position"));
            }
        }
        return plans;
    }

    private static Map<String, JsonNode> after(Map<String, JsonNode> before, JsonNode changed) {
        Map<String, JsonNode> after = new HashMap<>(before);
        changed.path("changes")
                .forEach(one -> after.put(
                        one.path("date").asString() + " " + one.path("hole").asString(), one.path("to")));
        return after;
    }

    private static JsonNode of(String date, String hole, JsonNode changed) {
        for (JsonNode one : changed.path("changes")) {
            if (one.path("date").asString().equals(date)
                    && one.path("hole").asString().equals(hole)) {
                return one;
            }
        }
        throw new AssertionError("hole " + hole + " is not elsewhere on " + date + ": " + changed);
    }

    /** A hole that stays over days without change is moved on all of them, and on no other. */
    @Test
    void aHoleThatStaysIsMovedForAsLongAsItStays() {
        done("policy", "rotation.changeDays=mon wed fri", "--date", FIRST);
        done("plan", "--days", Integer.toString(DAYS), "--date", FIRST);
        Map<String, JsonNode> planned = plans();
        Map<String, String> before = places(planned);
        String wednesday = day(3);
        String thursday = day(4);
        assertThat(before.get(thursday + " 2")).isEqualTo(before.get(wednesday + " 2"));
        JsonNode changed = change("--spoiled", wednesday + ":2");
        assertThat(of(wednesday, "2", changed).path("cause").asString()).isEqualTo("spoiled");
        assertThat(of(thursday, "2", changed).path("cause").asString()).isEqualTo("stays");
        Map<String, String> now = places(plans());
        assertThat(now).isEqualTo(places(after(planned, changed)));
        assertThat(now.get(thursday + " 2"))
                .isEqualTo(now.get(wednesday + " 2"))
                .isNotEqualTo(before.get(wednesday + " 2"));
        assertThat(now.get(day(5) + " 2")).isEqualTo(before.get(day(5) + " 2"));
        assertThat(done("change", "--undo")).contains("is taken back");
        assertThat(places(plans())).isEqualTo(before);
    }

    private static Map<String, String> places(Map<String, JsonNode> plans) {
        Map<String, String> places = new HashMap<>();
        plans.forEach((key, at) -> places.put(key, at.path("east") + " " + at.path("north")));
        return places;
    }

    @Test
    void nothingToChangeIsSaid_andNothingIsKept() {
        Map<String, JsonNode> before = plans();
        assertThat(done("change", "--date", FIRST)).contains("Nothing is to be changed");
        assertThat(change().path("days").size()).isZero();
        assertThat(plans()).isEqualTo(before);
        assertThat(cupwright.run("change", "--undo").err()).contains("No plan of a coming day was changed");
    }

    @Test
    void aHoleIsFixed_theOthersStay_andItIsTakenBackAsAWhole() {
        Map<String, JsonNode> before = plans();
        JsonNode changed = change("--lock", THIRD + ":2=9,L9");
        JsonNode first = of(THIRD, "2", changed);
        assertThat(first.path("cause").asString()).isEqualTo("asked");
        assertThat(first.path("why").asString()).isEqualTo("Ash asked for this spot.");
        assertThat(first.path("to").path("onPaces").asDouble()).isEqualTo(9);
        assertThat(first.path("from")).isEqualTo(before.get(THIRD + " 2"));
        assertThat(changed.path("changes"))
                .allSatisfy(one -> assertThat(one.path("cause").asString()).isIn("asked", "follows"));
        assertThat(plans()).isEqualTo(after(before, changed));
        assertThat(done("explain", "--hole", "2", "--date", THIRD)).contains("Ash asked for this spot");
        assertThat(done("change", "--undo")).contains("The last change, by Ash, is taken back");
        assertThat(plans()).isEqualTo(before);
    }

    @Test
    void aSpoiledSpotIsLeftOnEveryDay_andStaysSoWithTheNextChange() {
        Map<String, JsonNode> before = plans();
        JsonNode changed = change("--spoiled", "1");
        assertThat(changed.path("changes").path(0).path("cause").asString()).isEqualTo("spoiled");
        assertThat(changed.path("changes").path(0).path("date").asString()).isEqualTo(FIRST);
        JsonNode spoiled = before.get(FIRST + " 1");
        for (int day = 0; day < DAYS; day++) {
            JsonNode now = plans().get(day(day) + " 1");
            double apart = Math.hypot(
                    now.path("east").asDouble() - spoiled.path("east").asDouble(),
                    now.path("north").asDouble() - spoiled.path("north").asDouble());
            assertThat(apart).isGreaterThan(1);
        }
        assertThat(change().path("changes").size()).isZero();
    }

    @Test
    void twoDaysOfAHoleAreSwapped() {
        Map<String, JsonNode> before = plans();
        change("--swap", THIRD + ":3," + FOURTH + ":3");
        assertThat(plans().get(THIRD + " 3").path("east"))
                .isEqualTo(before.get(FOURTH + " 3").path("east"));
        assertThat(plans().get(FOURTH + " 3").path("north"))
                .isEqualTo(before.get(THIRD + " 3").path("north"));
    }

    @Test
    void groundOfAFileIsClosed_andWhatMayNotChangeStays() throws IOException {
        Map<String, JsonNode> before = plans();
        Path closed = MadeCourse.closedWestHalf(files);
        JsonNode first = change("--close", closed, "--days", "1");
        assertThat(first.path("changes"))
                .allMatch(one -> one.path("date").asString().equals(FIRST));
        Map<String, JsonNode> between = plans();
        assertThat(between).isEqualTo(after(before, first));
        JsonNode all = change("--close", closed);
        assertThat(all.path("changes").size()).isPositive();
        assertThat(all.path("changes"))
                .anyMatch(one -> one.path("cause").asString().equals("closedGround")
                        && one.path("why").asString().contains("out of use"));
        assertThat(plans()).isEqualTo(after(between, all));
    }

    @Test
    void whatIsPublishedStays_andWhatIsAskedOfItIsRefused() {
        done("publish", "--yes", "--date", THIRD);
        Map<String, JsonNode> before = plans();
        Result refused = cupwright.run("change", "--date", FIRST, "--lock", THIRD + ":2=9,L9");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("is published", "cupwright publish --withdraw");
        JsonNode changed = change("--lock", FOURTH + ":2=9,L9");
        assertThat(changed.path("standing").path(0).asString()).isEqualTo(THIRD);
        assertThat(plans().get(THIRD + " 2")).isEqualTo(before.get(THIRD + " 2"));
    }

    @Test
    void aChangeOfWhichMoreBecameIsNotTakenBack_andItIsSaidWhichDays() {
        change("--forbid", "1=9,L9,1");
        done("publish", "--yes", "--date", THIRD);
        done("plan", "--date", FOURTH);
        Map<String, JsonNode> before = plans();
        Result refused = cupwright.run("change", "--undo");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err().replaceAll("\\s+", " "))
                .contains("2026: published", "2026: planned anew since", "Nothing was changed");
        assertThat(plans()).isEqualTo(before);
    }

    /** The day of the change itself: what was left in its old hole rests about it no longer as planned. */
    @Test
    void whatTheLogbookSaysIsKeptTo() {
        String today = DemoCourse.TODAY.toString();
        done("plan", "--days", Integer.toString(DAYS), "--date", today);
        done("cut", "1", "9", "L9", "--date", today);
        JsonNode changed = json("change", "--json");
        assertThat(changed.path("changes"))
                .noneMatch(one -> one.path("date").asString().equals(today)
                        && one.path("hole").asString().equals("1"));
        Result refused = cupwright.run("change", "--lock", "today:1=12,L9");
        assertThat(refused.err()).contains("Hole 1 is cut");
    }

    /** Before it and since, as the round goes on while somebody changes his mind about a hole that is still to come. */
    @Test
    void aChangeIsTakenBackThoughOtherHolesAreCut() {
        String today = DemoCourse.TODAY.toString();
        done("plan", "--days", Integer.toString(DAYS), "--date", today);
        JsonNode planned = first(today);
        done("log", "add", "cup-changed", "--hole", "2", "--as-planned", "--date", today);
        json("change", "--lock", "today:1=12,L9", "--json");
        assertThat(first(today)).isNotEqualTo(planned);
        done("log", "add", "cup-changed", "--hole", "3", "--as-planned", "--date", today);
        done("change", "--undo");
        assertThat(first(today)).isEqualTo(planned);
    }

    @Test
    void aChangeOfAHoleThatIsCutSinceIsNotTakenBack() {
        String today = DemoCourse.TODAY.toString();
        done("plan", "--days", Integer.toString(DAYS), "--date", today);
        json("change", "--lock", "today:1=12,L9", "--json");
        done("log", "add", "cup-changed", "--hole", "1", "--as-planned", "--date", today);
        Result refused = cupwright.run("change", "--undo");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err().replaceAll("\\s+", " ")).contains("hole 1 is cut, or left, since");
    }

    /** Where the first hole is planned. */
    private JsonNode first(String date) {
        return json("explain", "--hole", "1", "--date", date, "--json").path("position");
    }

    @Test
    void wrongWordsAreRefusedWithAnExample() {
        Map<List<String>, String> wrong = Map.of(
                List.of("--lock", "7"), "--lock 7=12,L5",
                List.of("--lock", "1=twelve,L5"), "not a number",
                List.of("--lock", "someday:1=12,L5"), "give a day as",
                List.of("--forbid", "1=12,L5"), "--forbid 7=12,L5,3",
                List.of("--forbid", "1=12,L5,90"), "at most 30",
                List.of("--swap", "today:1,today:1"), "--swap takes two days",
                List.of("--undo", "--free", "1"), "stands alone");
        wrong.forEach((words, says) -> {
            List<Object> all = new ArrayList<>(List.of("change"));
            all.addAll(words);
            Result refused = cupwright.run(all.toArray());
            assertThat(refused.status()).as(words.toString()).isEqualTo(2);
            assertThat(refused.err()).contains(says);
        });
        assertThat(cupwright.run("change", "--date", "2026-01-05").err()).contains("is past");
        assertThat(cupwright.run("change", "--lock", "99=12,L5").status()).isEqualTo(1);
    }
}
