package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * When the holes of a plan rest, show their plugs and count among the last: by numbers of days of the plan.
 *
 * <p>A hole that is planned for one day is left on the next day of the plan.
 */
final class PlanCalendar {
    /** By so much a cold week moves the end of a rest, and somewhat more: our choice. */
    private static final int SOON_DAYS = 3;

    private final List<LocalDate> days;
    private final RestDays rests;

    PlanCalendar(List<LocalDate> days, RestDays rests) {
        this.days = days;
        this.rests = rests;
    }

    int size() {
        return days.size();
    }

    LocalDate date(int day) {
        return days.get(day);
    }

    /** The last day of the plan, by number, that is not after a date; -1 where all are. */
    int lastUntil(LocalDate date) {
        int last = -1;
        while (last + 1 < days.size() && !days.get(last + 1).isAfter(date)) {
            last++;
        }
        return last;
    }

    /** The day on which a hole cut on a day of the plan is left: the next one, or the day after the plan. */
    LocalDate leftOn(int day) {
        return day + 1 < days.size() ? days.get(day + 1) : days.get(day).plusDays(1);
    }

    /** The last day of the plan on which the ground about a hole rests that is left on a date. */
    int restsUntil(LocalDate leftOn) {
        return lastUntil(rests.restsUntil(leftOn));
    }

    /**
     * The last day of the plan on which it is soon after the rest of a hole that is left on a date: the end of a rest
     * is foreseen from growth that is foreseen.
     */
    int soonAfterRestUntil(LocalDate leftOn) {
        LocalDate end = rests.restsUntil(leftOn);
        return lastUntil(isForeseen(leftOn, end) ? end.plusDays(SOON_DAYS) : end);
    }

    /** Not where there is no rest, nor where it had ended before the plan begins, which is known. */
    private boolean isForeseen(LocalDate leftOn, LocalDate end) {
        return !end.isBefore(leftOn) && !end.isBefore(days.get(0));
    }

    /**
     * How soon after the rest of a hole that is left on a date a day is: 1 on the day after it, a third less on each
     * further one; 0 where the end is not foreseen.
     */
    double soonAfterRest(LocalDate leftOn, int day) {
        LocalDate end = rests.restsUntil(leftOn);
        long after = ChronoUnit.DAYS.between(end, date(day));
        return isForeseen(leftOn, end) && after > 0 ? Math.max(0, (SOON_DAYS + 1.0 - after) / SOON_DAYS) : 0;
    }

    /** The last day of the plan on which the plug of a hole shows that is left on a date. */
    int plugShowsUntil(LocalDate leftOn) {
        return lastUntil(rests.plugShowsUntil(leftOn));
    }

    /** What share of its rest a hole that was left on a date still has before it on a day: 1 on the day it was left. */
    double restLeft(LocalDate leftOn, int day) {
        double whole = ChronoUnit.DAYS.between(leftOn, rests.restsUntil(leftOn)) + 1.0;
        double left = ChronoUnit.DAYS.between(date(day), rests.restsUntil(leftOn)) + 1.0;
        return Math.max(0, Math.min(1, left / whole));
    }
}
