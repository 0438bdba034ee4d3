package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Which days of a plan share one hole of a green: a hole that stays over several days is one choice. Immutable once
 * made.
 */
final class Stays {
    private final PlanCalendar calendar;

    /** By day: the first day of the plan on which its hole was there. */
    private final int[] begins;

    /** By day: the day after the last on which its hole is there. */
    private final int[] ends;

    private final Optional<LocalDate> inUseSince;

    /**
     * @param begins by day, the first day of its stay
     * @param inUseSince when the hole was cut that stays on the first day; empty where that day has one of its own
     */
    Stays(PlanCalendar calendar, int[] begins, Optional<LocalDate> inUseSince) {
        this.calendar = calendar;
        this.begins = begins.clone();
        this.ends = new int[begins.length];
        this.inUseSince = inUseSince;
        for (int day = begins.length - 1; day >= 0; day--) {
            boolean last = day + 1 == begins.length || begins[day + 1] == day + 1;
            ends[day] = last ? day + 1 : ends[day + 1];
        }
    }

    /** The first day of the stay of a day's hole. */
    int begin(int day) {
        return begins[day];
    }

    boolean begins(int day) {
        return begins[day] == day;
    }

    /** Whether a day's hole, where there is one, is cut on that day. */
    boolean cut(int day) {
        return begins(day) && (day > 0 || inUseSince.isEmpty());
    }

    /** The day after the last of a stay, by number; as many as there are days where it lasts to the end. */
    int end(int day) {
        return ends[day];
    }

    /** The day on which a day's hole was cut. */
    LocalDate cutOn(int day) {
        return begins[day] == 0 ? inUseSince.orElse(calendar.date(0)) : calendar.date(begins[day]);
    }

    /** The day on which a day's hole is left: the first after its stay. */
    LocalDate leftOn(int day) {
        return calendar.leftOn(ends[day] - 1);
    }

    /** Whether the hole that was in use before the plan stays on its first day. */
    boolean inherited() {
        return inUseSince.isPresent();
    }
}
