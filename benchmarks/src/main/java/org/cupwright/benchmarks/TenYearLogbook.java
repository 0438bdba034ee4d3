package org.cupwright.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.turf.ShowTurf;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.store.sqlite.SqliteLibrary;
import org.cupwright.app.texts.Door;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;

/**
 * Asks a store with ten years of eighteen greens' facts how the turf is: with nothing kept, from kept states in a fresh
 * process, again in the same process, and after facts that come ninety days late, one after the other. Each answer is
 * compared with the fold of all facts in memory.
 *
 * <p>Facts arrive as a crew's phones send them: on the day they happened, in any order, one in fifty up to two months
 * late. With nothing kept they are also read where they arrived in any order at all, so that neighbours in time lie
 * nowhere near each other.
 *
 * <p>Each step is a process of its own, started as the launcher starts the program, with at most 400 MB of memory: that
 * it ends says that the memory was enough. Aimed at on two free cores: within 10 s, 1 s, 50 ms and 1 s.
 */
public final class TenYearLogbook {
    private static final int DAYS = 3653;
    private static final Course COURSE = new DemoCourse(1).course();
    private static final ZoneId ZONE = COURSE.frame().zone();
    private static final LocalDate LAST = TenYearsOfFacts.FIRST.plusDays(DAYS - 1L);
    private static final Instant EVENING = LAST.atTime(20, 0).atZone(ZONE).toInstant();
    private static final List<Fact> LATE = IntStream.range(0, 9)
            .mapToObj(late -> TenYearsOfFacts.late(
                    COURSE.id(), EVENING.minus(Duration.ofDays(90)).plusSeconds(late)))
            .toList();
    private static final int CHUNK = 50_000;
    private static final String REHEARSE = "rehearse";
    private static final int ONE_IN = 50;
    private static final int LATEST_DAYS = 60;
    private static final int SAME_DAY_MINUTES = 720;

    private TenYearLogbook() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        if (arguments.length == 2) {
            step(arguments[0], new SqliteFolder(Path.of(arguments[1]), Clock.fixed(EVENING, ZONE)));
            return;
        }
        Path folder = Files.createTempDirectory("ten-year-logbook");
        try {
            Path ordered = folder.resolve("as sent");
            SqliteLibrary.putInto(library(folder));
            for (String step : List.of("write", "first", REHEARSE, "today", "late")) {
                inProcess(step, ordered);
            }
            for (String step : List.of("write in any order", "first")) {
                inProcess(step, folder.resolve("in any order"));
            }
        } finally {
            try (Stream<Path> all = Files.walk(folder)) {
                all.sorted(Comparator.reverseOrder())
                        .forEach(path -> path.toFile().delete());
            }
        }
    }

    private static void inProcess(String step, Path folder) throws IOException, InterruptedException {
        Path archive = folder.resolveSibling("classes.jsa");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                step.startsWith("write") ? "-Xmx1g" : "-Xmx400m",
                "-XX:+UseSerialGC",
                (step.equals(REHEARSE) ? "-XX:ArchiveClassesAtExit=" : "-XX:SharedArchiveFile=") + archive,
                "-Xlog:cds*=off",
                "-D" + SqliteLibrary.FOLDER_PROPERTY + "=" + library(folder.getParent()),
                "-cp",
                System.getProperty("java.class.path"),
                TenYearLogbook.class.getName(),
                step,
                folder.toString()));
        int status = new ProcessBuilder(command).inheritIO().start().waitFor();
        if (status != 0) {
            throw new IllegalStateException("step " + step + " ended with status " + status);
        }
    }

    private static Path library(Path folder) {
        return folder.resolve("native");
    }

    private static void step(String step, DataFolder folder) {
        switch (step) {
            case "write" -> write(folder, asSent());
            case "write in any order" -> write(folder, inAnyOrder());
            case REHEARSE -> turf(folder);
            case "first" -> {
                TurfState state = timed("all of it, nothing kept", 1, () -> turf(folder));
                peak();
                check("all of it", state, List.of());
            }
            case "today" -> {
                TurfState state = timed("today, first in a process", 1, () -> turf(folder));
                timed("today, again", 50, () -> turf(folder));
                peak();
                check("today", state, List.of());
            }
            case "late" -> {
                turf(folder);
                Iterator<Fact> late = LATE.iterator();
                TurfState state = timed("today after a fact ninety days late", LATE.size(), () -> {
                    folder.write(stores -> stores.facts().add(late.next()));
                    return turf(folder);
                });
                peak();
                check("late", state, LATE);
            }
            default -> throw new IllegalArgumentException(step);
        }
    }

    private static List<Fact> asSent() {
        Random random = new Random(2);
        Map<Fact, Instant> sent = new IdentityHashMap<>();
        List<Fact> facts = new ArrayList<>(TenYearsOfFacts.of(COURSE.id(), DAYS, 1));
        for (Fact fact : facts) {
            Duration late = random.nextInt(ONE_IN) == 0
                    ? Duration.ofDays(1 + random.nextInt(LATEST_DAYS))
                    : Duration.ofMinutes(random.nextInt(SAME_DAY_MINUTES));
            sent.put(fact, fact.happenedAt().plus(late));
        }
        facts.sort(Comparator.comparing(sent::get));
        return facts;
    }

    private static List<Fact> inAnyOrder() {
        List<Fact> facts = new ArrayList<>(TenYearsOfFacts.of(COURSE.id(), DAYS, 1));
        Collections.shuffle(facts, new Random(2));
        return facts;
    }

    private static void write(DataFolder folder, List<Fact> facts) {
        folder.write(stores -> {
            stores.courses().add(COURSE);
            return COURSE;
        });
        timed(String.format(Locale.ROOT, "%,d facts written", facts.size()), 1, () -> {
            for (int from = 0; from < facts.size(); from += CHUNK) {
                List<Fact> some = facts.subList(from, Math.min(facts.size(), from + CHUNK));
                folder.write(stores -> {
                    some.forEach(stores.facts()::add);
                    return some;
                });
            }
            return facts.size();
        });
    }

    private static TurfState turf(DataFolder folder) {
        DayQuestion today = DayQuestion.of(LAST);
        return new ShowTurf(session(folder)).of(today).turf().state();
    }

    private static void check(String what, TurfState is, List<Fact> more) {
        List<Fact> facts = new ArrayList<>(TenYearsOfFacts.of(COURSE.id(), DAYS, 1));
        facts.addAll(more);
        TurfState whole = TurfFold.fold(TurfState.empty(ZONE), Logbook.of(facts).facts());
        if (!is.equals(whole)) {
            throw new IllegalStateException(what + ": not the state of the full fold");
        }
        System.out.println("  same as the fold of " + facts.size() + " facts in memory");
    }

    private static <T> T timed(String what, int times, Supplier<T> work) {
        T result = null;
        double[] milliseconds = new double[times];
        long processor = processorTime();
        for (int i = 0; i < times; i++) {
            long start = System.nanoTime();
            result = work.get();
            milliseconds[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(milliseconds);
        System.out.printf(
                Locale.ROOT,
                "%s: %.0f ms%s, %.0f ms of processor time each%n",
                what,
                milliseconds[times / 2],
                times == 1
                        ? ""
                        : String.format(Locale.ROOT, " (median of %d, longest %.0f)", times, milliseconds[times - 1]),
                (processorTime() - processor) / 1e6 / times);
        return result;
    }

    private static long processorTime() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    /** The greatest sum of what the memory pools held at once is at most this. */
    private static void peak() {
        long bytes = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .mapToLong(pool -> pool.getPeakUsage().getUsed())
                .sum();
        System.out.printf(Locale.ROOT, "  at most %d MB of heap%n", bytes >> 20);
    }

    private static Session session(DataFolder folder) {
        return new Session(
                folder,
                new Person("the benchmark", Role.SUPERINTENDENT),
                new CourseChoice(Optional.empty()),
                Clock.fixed(EVENING, ZONE),
                UUID::randomUUID,
                new Speech(Door.COMMANDS, "en", UnitSystem.METRIC, Paces.STANDARD_METRES));
    }
}
