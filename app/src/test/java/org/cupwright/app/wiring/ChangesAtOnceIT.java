package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.wiring.RealProcess.Result;
import org.cupwright.course.MapPoint;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans of weeks changed by two people at once, and changes that are stopped: by the real program. */
@Tag("long")
class ChangesAtOnceIT {
    private static final String COURSE = "made";
    /** Rounds more, where the machine grew so much faster or slower meanwhile that none was hit on its way. */
    private static final int FURTHER = 6;

    private static final int GREENS = 4;
    private static final int DAYS = 7;
    private static final long LONGEST_SECONDS = 300;

    /** Days to come by the clock of the machine, as the program itself has it. */
    private static final LocalDate FIRST = LocalDate.now(ZoneOffset.UTC).plusDays(3);

    @TempDir
    Path files;

    private Path made;

    @BeforeEach
    void aWeek() throws IOException, InterruptedException {
        made = files.resolve("made");
        kept(made, "import", "--course", COURSE, "--outlines", MadeCourse.outlines(files, GREENS));
        kept(made, "plan", "--days", DAYS, "--date", FIRST);
    }

    private static List<Object> line(Path data, Object... arguments) {
        List<Object> line = new ArrayList<>(List.of(arguments));
        line.addAll(List.of("--data", data));
        return line;
    }

    private static void kept(Path data, Object... arguments) throws IOException, InterruptedException {
        Result result = RealProcess.cupwright(line(data, arguments).toArray());
        assertThat(result.status()).as(result.err()).isZero();
    }

    private Path copy(int round) throws IOException {
        Path copy = Files.createDirectory(files.resolve("round-" + round));
        try (Stream<Path> all = Files.list(made)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        return copy;
    }

    /** By day and hole, where the plans have it. */
    private static Map<String, MapPoint> places(Path data) {
        try (SqliteFolder folder = new SqliteFolder(data, Clock.systemUTC())) {
            List<StoredPlan> plans =
                    folder.read(stores -> stores.plans().between(COURSE, FIRST, FIRST.plusDays(DAYS - 1L)));
            Map<String, MapPoint> places = new TreeMap<>();
            plans.forEach(plan -> plan.holes()
                    .forEach(hole -> places.put(
                            plan.date() + " " + hole.hole(),
                            hole.position().judgement().position())));
            return places;
        }
    }

    /** What of a later state differs from an earlier one. */
    private static Map<String, MapPoint> differing(Map<String, MapPoint> earlier, Map<String, MapPoint> later) {
        Map<String, MapPoint> differing = new TreeMap<>(later);
        differing.entrySet().removeIf(one -> one.getValue().equals(earlier.get(one.getKey())));
        return differing;
    }

    private static CompletableFuture<Result> later(int milliseconds, Path data, Object... arguments) {
        return CompletableFuture.supplyAsync(
                () -> {
                    try {
                        Thread.sleep(milliseconds);
                        return RealProcess.cupwright(line(data, arguments).toArray());
                    } catch (IOException unreadable) {
                        throw new UncheckedIOException(unreadable);
                    } catch (InterruptedException ended) {
                        throw new IllegalStateException(ended);
                    }
                },
                task -> new Thread(task).start());
    }

    private static Object[] spoiled(String person, String hole) {
        return new Object[] {"change", "--date", FIRST, "--spoiled", FIRST + ":" + hole, "--person", person};
    }

    /** Ash's spot of hole 1 is spoiled and Oak's of hole 2: none moves a hole of the other's green. */
    @Test
    void ofTwoChangesAtOnceBothAreKept_orOneIsToldWhatTheOtherMoved() throws IOException, InterruptedException {
        int rounds = Suite.count("two changes at once", 30, 3);
        Random random = new Random(Suite.seed());
        Map<String, MapPoint> before = places(made);
        int refused = 0;
        for (int round = 0; round < rounds; round++) {
            Path data = copy(round);
            int lead = random.nextInt(301) - 150;
            CompletableFuture<Result> one = later(Math.max(0, lead), data, spoiled("Ash", "1"));
            CompletableFuture<Result> two = later(Math.max(0, -lead), data, spoiled("Oak", "2"));
            Result ash = one.join();
            Result oak = two.join();
            String told = "round " + round + " of seed " + Suite.seed() + ": " + ash.err() + oak.err();
            assertThat(List.of(ash.status(), oak.status())).as(told).contains(0).isSubsetOf(0, 1);
            Map<String, MapPoint> now = differing(before, places(data));
            assertThat(now.containsKey(FIRST + " 1")).as(told).isEqualTo(ash.status() == 0);
            assertThat(now.containsKey(FIRST + " 2")).as(told).isEqualTo(oak.status() == 0);
            if (ash.status() == 1 || oak.status() == 1) {
                refused++;
                againOfTheRefused(data, ash.status() == 1 ? "Ash" : "Oak", ash.status() == 1 ? ash : oak, told);
            }
        }
        System.out.println("two changes at once: refused " + refused + " of " + rounds);
        assertThat(refused).as("rounds in which one was refused").isPositive();
    }

    /** Who was refused is told hole and person, and asking again keeps both. */
    private static void againOfTheRefused(Path data, String person, Result refused, String told)
            throws IOException, InterruptedException {
        boolean ash = person.equals("Ash");
        assertThat(refused.err())
                .as(told)
                .contains("hole " + (ash ? 2 : 1) + " elsewhere, by " + (ash ? "Oak" : "Ash"));
        Map<String, MapPoint> first = places(data);
        kept(data, spoiled(person, ash ? "1" : "2"));
        Map<String, MapPoint> both = places(data);
        assertThat(both.get(FIRST + " " + (ash ? 2 : 1))).as(told).isEqualTo(first.get(FIRST + " " + (ash ? 2 : 1)));
        assertThat(differing(first, both)).as(told).containsKey(FIRST + " " + (ash ? 1 : 2));
    }

    /**
     * The moment at which a change is told to stop closes in on the one at which it is kept: later after it was
     * stopped, earlier after it was done.
     */
    @Test
    void aChangeThatIsStoppedLeavesTheLastPlansWhole() throws IOException, InterruptedException {
        int rounds = Suite.count("changes stopped", 30, 2);
        Map<String, MapPoint> before = places(made);
        Path whole = copy(rounds + FURTHER);
        long began = System.nanoTime();
        kept(whole, all());
        long delay = Math.max(1, TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began) / 2);
        long step = Math.max(1, delay / 2);
        Map<String, MapPoint> after = places(whole);
        assertThat(differing(before, after)).hasSizeGreaterThanOrEqualTo(GREENS);
        int stopped = 0;
        int done = 0;
        boolean wasDone = false;
        for (int round = 0; round < rounds || stopped == 0 && round < rounds + FURTHER; round++) {
            Path data = copy(round);
            Result result = stopped(delay, data);
            boolean isDone = !result.out().isEmpty();
            assertThat(places(data))
                    .as("round " + round + ", stopped after " + delay + " ms: " + result.out() + result.err())
                    .isEqualTo(isDone ? after : before);
            stopped += result.err().contains("Stopped before it was done; nothing was changed by it") ? 1 : 0;
            done += isDone ? 1 : 0;
            step = isDone == wasDone ? step : Math.max(10, step / 2);
            delay = Math.max(1, delay + (isDone ? -step : step));
            wasDone = isDone;
        }
        System.out.println("changes stopped: told so " + stopped + ", done before " + done + " of " + rounds);
        assertThat(stopped).as("changes that were stopped on their way").isPositive();
    }

    /** Every hole of the first day elsewhere. */
    private static Object[] all() {
        List<Object> all = new ArrayList<>(List.of("change", "--date", FIRST));
        for (int hole = 1; hole <= GREENS; hole++) {
            all.addAll(List.of("--spoiled", FIRST + ":" + hole));
        }
        return all.toArray();
    }

    private Result stopped(long milliseconds, Path data) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(RealProcess.program(List.of()));
        line(data, all()).forEach(argument -> line.add(argument.toString()));
        Path out = files.resolve("out");
        Path err = files.resolve("err");
        Process process = new ProcessBuilder(line)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        try {
            Thread.sleep(milliseconds);
            CtrlC.press(process);
            assertThat(process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        return new Result(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }
}
