package org.cupwright.app.storage;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.cupwright.holelocation.FastestSpeed.Quickened;

/**
 * A day's fastest green speed and where it comes from.
 *
 * @param feet the speed, ft
 * @param from where it comes from
 * @param reading what was read; empty where nobody read it
 * @param added what came on top of the reading
 */
public record DaySpeed(double feet, From from, Optional<Reading> reading, List<Added> added) {
    /** Where a speed comes from. */
    public enum From {
        /** Somebody said that it is the day's fastest. */
        SAID,
        /** It was read on the day. */
        READ,
        /** It was read on a day before. */
        CARRIED,
        /** Nobody read it: the setting. */
        SEASON,
        /** Kept before it was kept where it comes from. */
        NOT_KEPT
    }

    /**
     * A reading.
     *
     * @param feet on the level, ft
     * @param day when it was read
     * @param time by the course's clock; empty where only the day is known
     */
    public record Reading(double feet, LocalDate day, Optional<LocalTime> time) {}

    /**
     * What came on top.
     *
     * @param by what quickened the greens
     * @param feet how much
     */
    public record Added(Quickened by, double feet) {}

    public DaySpeed {
        added = List.copyOf(added);
    }

    /** A speed of which no reading is known. */
    public static DaySpeed of(double feet, From from) {
        return new DaySpeed(feet, from, Optional.empty(), List.of());
    }
}
