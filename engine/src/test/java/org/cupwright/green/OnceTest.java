package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OnceTest {
    /** Far beyond what a busy machine needs; reached only by threads that wait for each other. */
    private static final Duration FOR_EVER = Duration.ofSeconds(30);

    @Test
    void manyWhoAskHaveOneValueThatWasWorkedOutOnce() {
        AtomicInteger times = new AtomicInteger();
        Once<Object> once = new Once<>(() -> {
            times.incrementAndGet();
            return new Object();
        });
        List<Object> values = IntStream.range(0, 1_000)
                .parallel()
                .mapToObj(who -> once.value())
                .distinct()
                .toList();
        assertThat(values).hasSize(1);
        assertThat(times).hasValue(1);
    }

    @Test
    void nothingIsWorkedOutUnasked() {
        AtomicInteger times = new AtomicInteger();
        new Once<>(times::incrementAndGet);
        assertThat(times).hasValue(0);
    }

    @Test
    void workThatFailedIsDoneAnew() {
        AtomicInteger times = new AtomicInteger();
        Once<String> once = new Once<>(() -> {
            if (times.incrementAndGet() == 1) {
                throw new IllegalArgumentException("the first time");
            }
            return "the second time";
        });
        assertThatThrownBy(once::value).isInstanceOf(IllegalArgumentException.class);
        assertThat(once.value()).isEqualTo("the second time");
    }

    /** The pool's one thread waits for the value, and the value for a part of its work that the pool is to do. */
    @Test
    void whoWaitsDoesNotKeepThePoolFromTheWork() {
        ForkJoinPool pool = new ForkJoinPool(1);
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch asked = new CountDownLatch(1);
        Once<Integer> once = new Once<>(() -> {
            begun.countDown();
            await(asked);
            return pool.submit(() -> 7).join();
        });
        try {
            assertTimeoutPreemptively(FOR_EVER, () -> {
                ForkJoinTask<Integer> waits = pool.submit(() -> {
                    await(begun);
                    asked.countDown();
                    return once.value();
                });
                assertThat(once.value()).isEqualTo(7);
                assertThat(waits.join()).isEqualTo(7);
            });
        } finally {
            pool.shutdownNow();
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(FOR_EVER.toSeconds(), TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }
}
