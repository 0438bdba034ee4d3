package org.cupwright.app.cli.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.cupwright.app.desk.Progress;

/**
 * Ctrl-C while a longer piece of work goes on: the work is told to stop, and the program ends when it has, so that what
 * is kept stays whole and the person is told.
 */
final class Interrupt implements AutoCloseable {
    /** Work tells of its parts every second or two; what takes longer is broken off (our choice). */
    private static final long LONGEST_SECONDS = 20;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook;

    Interrupt(Progress progress) {
        this.hook = new Thread(() -> stop(progress), "interrupt");
        Runtime.getRuntime().addShutdownHook(hook);
    }

    private void stop(Progress progress) {
        progress.stop();
        try {
            ended.await(LONGEST_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException broken) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        ended.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException alreadyEnding) {
            return; // the hook is what has been waiting for this
        }
    }
}
