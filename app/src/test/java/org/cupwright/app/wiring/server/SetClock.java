package org.cupwright.app.wiring.server;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.cupwright.app.cli.InProcess;

/** A clock that a test puts forward, and that fails where it is told to. */
final class SetClock extends Clock {
    private volatile Instant now = InProcess.CLOCK.instant();
    private volatile String failsFor = "";
    private volatile String words = "";

    void forward(Duration by) {
        now = now.plus(by);
    }

    /**
     * Lets it fail, as a defect of ours would, wherever a class asks for the time.
     *
     * @param type the class; null: nowhere any more
     * @param said what the failure says
     */
    void failFor(Class<?> type, String said) {
        words = said;
        failsFor = type == null ? "" : type.getName();
    }

    @Override
    public Instant instant() {
        String type = failsFor;
        boolean asked = !type.isEmpty()
                && StackWalker.getInstance()
                        .walk(frames ->
                                frames.anyMatch(frame -> frame.getClassName().equals(type)));
        if (asked) {
            throw new IllegalStateException(words);
        }
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
