package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.wiring.RealProcess.Result;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people at once on one folder: what one of them was told stands, whatever the other does. */
class RacesIT {
    private static final String COURSE = "made";
    private static final int ENOUGH_FOR_BOTH_ORDERS = 20;

    /** Each step is twice the one before: a minute. */
    private static final int STEPS_TO_A_SLOW_MACHINES_PACE = 5;

    private static final LocalDate DAY = LocalDate.of(2026, 6, 20);

    @TempDir
    Path files;

    /** A command with the moments, by the clock of this process, at which it began and ended. */
    private record Run(Result result, long beganNanos, long endedNanos) {
        boolean overlaps(Run other) {
            return beganNanos < other.endedNanos && other.beganNanos < endedNanos;
        }

        int status() {
            return result.status();
        }
    }

    private static CompletableFuture<Run> later(int milliseconds, Path data, Object... arguments) {
        List<Object> line = new ArrayList<>(List.of(arguments));
        line.addAll(List.of("--data", data));
        return CompletableFuture.supplyAsync(() -> run(milliseconds, line), task -> new Thread(task).start());
    }

    private static Run run(int milliseconds, List<Object> line) {
        try {
            Thread.sleep(milliseconds);
            long began = System.nanoTime();
            Result result = RealProcess.cupwright(line.toArray());
            return new Run(result, began, System.nanoTime());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }

    /** While nobody else is at work. */
    private static Result now(Path data, Object... arguments) throws IOException, InterruptedException {
        List<Object> line = new ArrayList<>(List.of(arguments));
        line.addAll(List.of("--data", data));
        return RealProcess.typed(line.toArray());
    }

    private static void kept(Path data, Object... arguments) throws IOException, InterruptedException {
        Result result = now(data, arguments);
        assertThat(result.status()).as(result.err()).isZero();
    }

    /** A folder with a course of so many greens, to be copied for every round. */
    private Path made(int greens) throws IOException, InterruptedException {
        Path data = files.resolve("made");
        kept(data, "import", "--course", COURSE, "--outlines", MadeCourse.outlines(files, greens));
        return data;
    }

    private Path copy(Path data, int round) throws IOException {
        Path copy = Files.createDirectory(files.resolve("round-" + round));
        try (Stream<Path> all = Files.list(data)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        return copy;
    }

    private static State state(Path data) {
        try (SqliteFolder folder = new SqliteFolder(data, Clock.systemUTC())) {
            return folder.read(
                    stores -> stores.plans().find(COURSE, DAY).orElseThrow().state());
        }
    }

    /**
     * How much later publishing begins follows the orders of the rounds before, so that they close in on the moment at
     * which the plan is kept: the step doubles until the order turns, and is halved whenever it does. A slow
     * machine, on which that takes longer, has further rounds.
     */
    @Test
    void aPublishedPlanStandsThoughItIsPlannedMeanwhile() throws IOException, InterruptedException {
        int rounds = Suite.count("plan against publish", 50, 4);
        int most = rounds + STEPS_TO_A_SLOW_MACHINES_PACE;
        Random random = new Random(Suite.seed());
        Path made = made(1);
        kept(made, "plan", "--date", DAY);
        int delay = 400;
        int step = 400;
        boolean before = false;
        int plannedFirst = 0;
        int refused = 0;
        int overlapping = 0;
        for (int round = 0; round < rounds || round < most && (plannedFirst == 0 || refused == 0); round++) {
            Path data = copy(made, round);
            int early = Math.max(0, -delay);
            int late = Math.max(0, delay);
            CompletableFuture<Run> planning = later(early, data, "plan", "--date", DAY);
            CompletableFuture<Run> publishing = later(late, data, "publish", "--date", DAY);
            Run plan = planning.join();
            Run publish = publishing.join();
            String told = "round " + round + " of seed " + Suite.seed() + ", publish " + delay + " ms after plan: "
                    + plan.result().err();
            assertThat(publish.status()).as(told + publish.result().err()).isZero();
            assertThat(state(data)).as(told).isEqualTo(State.PUBLISHED);
            assertThat(plan.status()).as(told).isIn(0, 1);
            if (plan.status() == 1) {
                assertThat(plan.result().err()).as(told).contains("is published", "Withdraw it first");
            }
            boolean first = plan.status() == 0;
            plannedFirst += first ? 1 : 0;
            refused += first ? 0 : 1;
            overlapping += plan.overlaps(publish) ? 1 : 0;
            step = first == before ? 2 * step : Math.max(50, step / 2);
            delay += (first ? -1 : 1) * step + random.nextInt(101) - 50;
            before = first;
        }
        System.out.println("plan against publish: planned first " + plannedFirst + ", refused " + refused
                + ", overlapping " + overlapping);
        assertThat(plannedFirst).isPositive();
        assertThat(refused).isPositive();
        assertThat(overlapping).isGreaterThanOrEqualTo(rounds / 2);
    }

    @Test
    void ofTwoEntriesAsPlannedAtOnceOneIsKeptAndTheOtherAsks() throws IOException, InterruptedException {
        int rounds = Suite.count("two entries as planned at once", 50, 2);
        Random random = new Random(Suite.seed());
        Path made = made(2);
        kept(made, "plan");
        Path inTurn = copy(made, rounds);
        kept(inTurn, entry("Ash"));
        String asked = question(now(inTurn, entry("Oak")), "Ash");
        int overlapping = 0;
        int oak = 0;
        for (int round = 0; round < rounds; round++) {
            Path data = copy(made, round);
            int lead = (round % 2 == 0 ? 1 : -1) * random.nextInt(150);
            CompletableFuture<Run> one = later(Math.max(0, lead), data, entry("Ash"));
            CompletableFuture<Run> two = later(Math.max(0, -lead), data, entry("Oak"));
            Run ash = one.join();
            Run other = two.join();
            String told = "round " + round + " of seed " + Suite.seed() + ": "
                    + ash.result().err() + other.result().err();
            assertThat(List.of(ash.status(), other.status())).as(told).containsExactlyInAnyOrder(0, 1);
            boolean ashKept = ash.status() == 0;
            Run refused = ashKept ? other : ash;
            assertThat(question(refused.result(), ashKept ? "Ash" : "Oak"))
                    .as(told)
                    .isEqualTo(asked);
            assertThat(entries(now(data, "log", "list", "--json"))).as(told).isEqualTo(1);
            oak += ashKept ? 0 : 1;
            overlapping += ash.overlaps(other) ? 1 : 0;
        }
        System.out.println("two entries as planned: Oak first " + oak + ", overlapping " + overlapping);
        assertThat(overlapping).isGreaterThan(rounds / 2);
        if (rounds >= ENOUGH_FOR_BOTH_ORDERS) {
            assertThat(oak).isBetween(1, rounds - 1);
        }
    }

    private static Object[] entry(String person) {
        return new Object[] {"log", "add", "cup-changed", "--hole", "2", "--as-planned", "--person", person};
    }

    /** What was asked, without the name and the id of the entry that was first. */
    private static String question(Result refused, String first) {
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("Hole 2 has a change on record that day already, by " + first + ".");
        return refused.err().replace("by " + first, "by NAME").replaceAll("correct [0-9a-f]{8}", "correct ID");
    }

    private static long entries(Result listed) {
        return Pattern.compile("\"payload\" :").matcher(listed.out()).results().count();
    }

    /** Every command sets two settings to one value: a reading that saw them otherwise saw half a command. */
    @Test
    void aReadingDuringAPolicyChangeIsOfOneMoment() throws IOException, InterruptedException {
        int rounds = Suite.count("policy changes during readings", 50, 2);
        Path data = made(1);
        Path said = files.resolve("said");
        Process reader = PolicyReader.start(data, COURSE, Suite.seed(), said);
        try {
            for (int round = 0; round < rounds; round++) {
                int value = 2 + round % 19; // both may be 2 to 20
                kept(data, "policy", "turf.stopDiffersMillimetres=" + value, "holelocation.edgePaces=" + value);
            }
        } finally {
            reader.destroyForcibly();
            reader.waitFor();
        }
        List<int[]> readings = Files.readAllLines(said).stream()
                .filter(line -> line.matches("\\d+ \\d+ \\d+ [01]")) // the last may be cut short
                .map(line ->
                        Stream.of(line.split(" ")).mapToInt(Integer::parseInt).toArray())
                .toList();
        int during = 0;
        for (int[] reading : readings) {
            assertThat(reading[0]).isEqualTo(reading[1]).isEven();
            assertThat(reading[2]).isGreaterThanOrEqualTo(reading[0]).isEven();
            assertThat(reading[3]).isEqualTo(1);
            during += reading[2] > reading[0] ? 1 : 0;
        }
        System.out.println("policy changes: " + readings.size() + " readings, written to during " + during);
        assertThat(during).isGreaterThanOrEqualTo(rounds / 4);
    }
}
