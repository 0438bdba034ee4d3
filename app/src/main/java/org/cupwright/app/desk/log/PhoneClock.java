package org.cupwright.app.desk.log;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.cupwright.cupchange.Fact;

/** The clock of the telephone on which something was written down, where it was not the office's. */
public final class PhoneClock {
    /** A clock that is off by less is not put right: our choice. */
    public static final Duration AS_GOOD_AS_RIGHT = Duration.ofMinutes(2);

    private PhoneClock() {}

    /**
     * What a telephone's clock showed when something happened there and its clock was wrong; empty where it was right.
     * What was written down in the office, of whatever time, has the office's clock for its own.
     */
    public static Optional<Instant> wronglyShown(Fact fact) {
        Instant shown = fact.recordedAtDevice();
        return Optional.of(shown)
                .filter(device -> isOff(device, fact.happenedAt()))
                .filter(device -> fact.recordedAtServer()
                        .filter(office -> isOff(device, office))
                        .isPresent());
    }

    private static boolean isOff(Instant one, Instant other) {
        return Duration.between(one, other).abs().compareTo(AS_GOOD_AS_RIGHT) >= 0;
    }
}
