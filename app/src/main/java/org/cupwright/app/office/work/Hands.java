package org.cupwright.app.office.work;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** Those who do long work: some do one piece after another, some several at once. */
final class Hands implements AutoCloseable {
    /** How a piece is done. How many are done at once and how many may wait for that are our choices. */
    enum Way {
        /** One piece at a time. Whoever comes after so many would wait for most of an hour. */
        ONE_BY_ONE("long-work", 1, 8),
        /** What is usually done in a moment: more than plan on one evening. */
        IN_A_MOMENT("short-work", 4, 8),
        /** What is sought for a page: more than a club has people. */
        SOUGHT("sought-work", 8, 100);

        private final String name;
        private final int atOnce;
        private final int most;

        Way(String name, int atOnce, int most) {
            this.name = name;
            this.atOnce = atOnce;
            this.most = most;
        }

        /** So many may wait. */
        int most() {
            return most;
        }

        private Thread daemon(Runnable work) {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        }
    }

    private final Map<Way, ExecutorService> all = new EnumMap<>(Way.class);

    Hands() {
        for (Way way : Way.values()) {
            all.put(way, Executors.newFixedThreadPool(way.atOnce, way::daemon));
        }
    }

    void give(Way way, Runnable work) {
        all.get(way).execute(work);
    }

    /** Whether all that was given them ended within so long. */
    boolean ended(int seconds) throws InterruptedException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        boolean ended = true;
        for (ExecutorService one : all.values()) {
            ended &= one.awaitTermination(until - System.nanoTime(), TimeUnit.NANOSECONDS);
        }
        return ended;
    }

    /** Nothing more is taken. */
    @Override
    public void close() {
        all.values().forEach(ExecutorService::shutdown);
    }
}
