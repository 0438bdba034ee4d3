package org.cupwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

class RecentResultsTest {
    private static final int BYTES_A_MEGABYTE = 1 << 20;

    private final AtomicInteger done = new AtomicInteger();

    private String work(String result) {
        done.incrementAndGet();
        return result;
    }

    @Test
    void isDoneOnceAndThenRemembered() {
        RecentResults results = new RecentResults(2);
        assertThat(results.<String>of("a", () -> work("first"))).isEqualTo("first");
        assertThat(results.<String>of("a", () -> work("second"))).isEqualTo("first");
        assertThat(done).hasValue(1);
    }

    @Test
    void whatWasAskedForLeastLatelyIsForgottenFirst() {
        RecentResults results = new RecentResults(2);
        results.of("a", () -> work("a"));
        results.of("b", () -> work("b"));
        results.of("a", () -> work("again"));
        results.of("c", () -> work("c"));
        assertThat(results.<String>of("a", () -> work("anew"))).isEqualTo("a");
        assertThat(results.<String>of("b", () -> work("anew"))).isEqualTo("anew");
    }

    @Test
    void howeverManyAskAtOnceItIsDoneOnce() throws Exception {
        RecentResults results = new RecentResults(2);
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        ExecutorService askers = Executors.newFixedThreadPool(8);
        List<Future<String>> answers = IntStream.range(0, 8)
                .mapToObj(asker -> askers.submit(() -> results.<String>of("a", () -> {
                    begun.countDown();
                    await(goOn);
                    return work("asker " + asker);
                })))
                .toList();
        begun.await();
        goOn.countDown();
        String first = answers.get(0).get();
        for (Future<String> answer : answers) {
            assertThat(answer.get()).isEqualTo(first);
        }
        assertThat(done).hasValue(1);
        askers.shutdown();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    @Test
    void whatFailedIsDoneAnew() {
        RecentResults results = new RecentResults(2);
        assertThatThrownBy(() -> results.of("a", () -> {
                    throw new IllegalArgumentException("invented");
                }))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(results.<String>of("a", () -> work("done"))).isEqualTo("done");
    }

    /**
     * Three times as much is worked out as there is room for, in a reduced run a quarter more: what is older makes
     * room, and nothing fails.
     */
    @Test
    void givesUpWhatWouldTakeMoreMemoryThanThereIs() {
        int pieces = 48;
        double times = Suite.full() ? 3 : 1.25;
        int each = (int) (times * Runtime.getRuntime().maxMemory() / pieces / BYTES_A_MEGABYTE);
        RecentResults results = new RecentResults(pieces);
        for (int piece = 0; piece < pieces; piece++) {
            byte[][] megabytes = results.of(piece, () -> new byte[each][BYTES_A_MEGABYTE]);
            assertThat(megabytes).hasDimensions(each, BYTES_A_MEGABYTE);
        }
        assertThat(results.<byte[][]>of(pieces - 1, () -> new byte[0][0])).hasDimensions(each, BYTES_A_MEGABYTE);
    }
}
