package org.cupwright.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Supplier;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.turf.state.Checkpoints;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;

/**
 * Folds ten years of eighteen greens: whole, from a checkpoint, and after a fact that comes ninety days late; the results are compared.
 *
 * <p>Run {@code mvn -q -pl benchmarks -am package} and then this class with {@code -Xmx400m}: that it ends says that the memory was
 * enough.
 */
public final class TurfFoldBenchmark {
    private static final int DAYS = 3653;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final TurfState NOTHING = TurfState.empty(ZoneOffset.UTC);

    private TurfFoldBenchmark() {}

    public static void main(String[] arguments) {
        List<Fact> facts = TenYearsOfFacts.of(DAYS, 1);
        Collections.shuffle(facts, new Random(2));
        System.out.printf(Locale.ROOT, "facts %,d%n", facts.size());

        Logbook book = timed("logbook from facts in any order", 1, () -> Logbook.of(facts));
        TurfState whole = timed("full fold", 1, () -> TurfFold.fold(NOTHING, book.facts()));
        usedMemory();

        Instant end = whole.upTo().orElseThrow();
        Checkpoints saved = monthly(book, end);
        Checkpoints upToYesterday = saved.with(saved.at(book, end.minus(Duration.ofHours(23))));
        TurfState today = timed("checkpoint and today, warm", 50, () -> upToYesterday.at(book, end));
        check("checkpoint and today", today, whole);

        late(facts, book, saved, end);
    }

    /** What the store does: only the facts since the checkpoint are read again. */
    private static void late(List<Fact> facts, Logbook book, Checkpoints saved, Instant end) {
        Instant when = end.minus(Duration.ofDays(90));
        Fact late = TenYearsOfFacts.late(when);
        Checkpoints good = saved.before(when);
        Instant from = good.newestUpTo(end).upTo().orElseThrow();
        List<Fact> since = new ArrayList<>(book.between(from, end));
        since.add(late);
        System.out.printf(Locale.ROOT, "facts since the checkpoint before the late one %,d%n", since.size());
        TurfState refolded = timed("late by ninety days, refolded", 5, () -> good.at(Logbook.of(since), end));
        facts.add(late);
        check("late fact", refolded, TurfFold.fold(NOTHING, Logbook.of(facts).facts()));
    }

    private static Checkpoints monthly(Logbook book, Instant end) {
        Checkpoints saved = Checkpoints.from(NOTHING);
        for (Instant at = end.minus(Duration.ofDays(360)); at.isBefore(end); at = at.plus(Duration.ofDays(30))) {
            saved = saved.with(saved.at(book, at));
        }
        return saved;
    }

    private static void check(String what, TurfState is, TurfState shouldBe) {
        if (!is.equals(shouldBe)) {
            throw new IllegalStateException(what + " does not give the state of the full fold");
        }
        System.out.println(what + ": same as the full fold");
    }

    private static <T> T timed(String what, int times, Supplier<T> work) {
        T result = null;
        long best = Long.MAX_VALUE;
        long bestOfProcessor = Long.MAX_VALUE;
        for (int i = 0; i < times; i++) {
            long start = System.nanoTime();
            long startOfProcessor = THREADS.getCurrentThreadCpuTime();
            result = work.get();
            best = Math.min(best, System.nanoTime() - start);
            bestOfProcessor = Math.min(bestOfProcessor, THREADS.getCurrentThreadCpuTime() - startOfProcessor);
        }
        System.out.printf(
                Locale.ROOT,
                "%s: %.1f ms, processor %.1f ms (best of %d)%n",
                what,
                best / 1e6,
                bestOfProcessor / 1e6,
                times);
        return result;
    }

    private static void usedMemory() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        long used = runtime.totalMemory() - runtime.freeMemory();
        System.out.printf(Locale.ROOT, "memory in use with facts, logbook and state %d MB%n", used >> 20);
    }
}
