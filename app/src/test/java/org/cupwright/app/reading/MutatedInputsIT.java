package org.cupwright.app.reading;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A million broken files in one process, each kind in its share: all are read or refused with what a person can mend,
 * none takes longer than ten seconds or more memory than 300 MB.
 *
 * <p>Memory is what the reading thread allocated, by the machine's own count: it cannot have held more at once. Time
 * is the processor's, so that a busy machine is none of the file's fault; it is asked for while a file is read, so that
 * one that never ends is told too.
 */
class MutatedInputsIT {
    private static final int FULL = 1_000_000;
    private static final int REDUCED = 8_000;
    private static final long MOST_NANOSECONDS = 10_000_000_000L;
    private static final long MOST_BYTES = 300L << 20;
    private static final int LOOK_MILLISECONDS = 200;
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @TempDir
    Path files;

    private ReadingDesk desk;
    private final Map<FileKind, Tally> tallies = new LinkedHashMap<>();
    private final Map<String, String> defects = new ConcurrentHashMap<>();
    private volatile Attempt now;

    /** What one kind came to. */
    private static final class Tally {
        private int read;
        private int refused;
        private long nanoseconds;
        private long longestNanoseconds;
        private long mostBytes;

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%7d inputs, %7d read, %7d refused; %6.1f s, longest %6.0f ms; most memory %5.1f MB",
                    read + refused,
                    read,
                    refused,
                    nanoseconds / 1e9,
                    longestNanoseconds / 1e6,
                    mostBytes / 1e6);
        }
    }

    /** One input of a kind. */
    private record Attempt(FileKind kind, int number, byte[] bytes, long began) {
        boolean isTooLong(Thread reader) {
            return THREADS.getThreadCpuTime(reader.getId()) - began > MOST_NANOSECONDS;
        }

        @Override
        public String toString() {
            return kind + ", input " + number + " of seed " + Suite.seed() + ", in base 64: "
                    + Base64.getEncoder().encodeToString(bytes);
        }
    }

    @BeforeEach
    void open() throws IOException {
        desk = new ReadingDesk(files);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void areReadOrRefused() throws IOException, InterruptedException {
        int count = Suite.count("mutated inputs", FULL, REDUCED);
        for (FileKind kind : FileKind.values()) {
            Mutator mutator = new Mutator(kind.seeds(desk), new Random(Suite.seed() + kind.ordinal()));
            int own = count / 100 * kind.share();
            tallies.put(kind, new Tally());
            watched(new Thread(() -> readAll(kind, own, mutator), "reader of " + kind));
            System.out.println("mutated inputs, " + kind + ": " + tallies.get(kind));
            assertThat(tallies.get(kind).mostBytes).as("bytes for a file").isLessThan(MOST_BYTES);
        }
        assertThat(defects.values()).as(String.join("\n", defects.values())).isEmpty();
        assertThat(tallies.values()).allMatch(tally -> tally.refused > 0);
        assertThat(tallies.values().stream()
                        .mapToInt(tally -> tally.read + tally.refused)
                        .sum())
                .isEqualTo(count);
    }

    /** Waits for a reader, unless it stays with one file for too long. */
    private void watched(Thread reader) throws InterruptedException {
        reader.setDaemon(true);
        reader.start();
        while (reader.isAlive()) {
            reader.join(LOOK_MILLISECONDS);
            Attempt current = now;
            if (current != null && current.isTooLong(reader)) {
                throw new AssertionError(
                        "longer than ten seconds at " + Arrays.toString(reader.getStackTrace()) + ": " + current);
            }
        }
        now = null;
    }

    private void readAll(FileKind kind, int count, Mutator mutator) {
        for (int i = 0; i < count; i++) {
            try {
                read(kind, i, mutator.next());
            } catch (Throwable defect) { // whatever it is, the input must be told
                defects.putIfAbsent(signature(defect), now + "\n" + trace(defect));
            }
        }
    }

    /** Of defects that come from one place one is enough. */
    private static String signature(Throwable defect) {
        return defect.getClass() + " "
                + Arrays.stream(defect.getStackTrace())
                        .filter(frame -> frame.getClassName().startsWith("org.cupwright"))
                        .findFirst();
    }

    private static String trace(Throwable defect) {
        StringWriter trace = new StringWriter();
        defect.printStackTrace(new PrintWriter(trace));
        return trace.toString();
    }

    private void read(FileKind kind, int number, byte[] bytes) {
        Tally tally = tallies.get(kind);
        long before = THREADS.getCurrentThreadAllocatedBytes();
        long began = THREADS.getCurrentThreadCpuTime();
        now = new Attempt(kind, number, bytes, began);
        if (kind.reads(desk, bytes)) {
            tally.read++;
        } else {
            tally.refused++;
        }
        long took = THREADS.getCurrentThreadCpuTime() - began;
        tally.nanoseconds += took;
        tally.longestNanoseconds = Math.max(tally.longestNanoseconds, took);
        tally.mostBytes = Math.max(tally.mostBytes, THREADS.getCurrentThreadAllocatedBytes() - before);
    }
}
