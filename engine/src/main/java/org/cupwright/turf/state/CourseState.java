package org.cupwright.turf.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.cupwright.cupchange.CareWork;
import org.cupwright.cupchange.CupWork.SpotCheck;
import org.cupwright.cupchange.DayReading.RoundsPlayed;

/**
 * What the facts say of the course as a whole.
 *
 * @param care what all greens were given together
 * @param rounds rounds played by day, of the last {@link HolesOnGreen#KEPT_DAYS} days; a day that is missing is unknown
 * @param measured the last measures of the spot checks, oldest first
 * @param frost frost is on the greens
 * @param speedFeet the last reading that was not of one green
 */
public record CourseState(
        CareGiven care,
        Map<LocalDate, Integer> rounds,
        List<Measured> measured,
        boolean frost,
        OptionalDouble speedFeet) {
    /** Enough for a chart of two years' monthly checks on eighteen greens (our choice). */
    private static final int MEASURES_KEPT = 3 * 18 * 24;

    static final CourseState NONE = new CourseState(CareGiven.NONE, Map.of(), List.of(), false, OptionalDouble.empty());

    public CourseState {
        rounds = Map.copyOf(rounds);
        measured = List.copyOf(measured);
    }

    CourseState cared(CareWork work, LocalDate day) {
        return new CourseState(care.after(work, day), rounds, measured, frost, speedFeet);
    }

    /** A later count of the same day replaces the earlier. */
    CourseState played(RoundsPlayed played, LocalDate today) {
        Map<LocalDate, Integer> more = new HashMap<>(rounds);
        more.put(played.day(), played.rounds());
        LocalDate oldest = today.minusDays(HolesOnGreen.KEPT_DAYS);
        more.keySet().removeIf(day -> day.isBefore(oldest));
        return new CourseState(care, more, measured, frost, speedFeet);
    }

    CourseState checked(String hole, SpotCheck check, LocalDate day) {
        List<Measured> more = new ArrayList<>(measured);
        check.holeDepthMillimetres()
                .ifPresent(value -> more.add(new Measured(Measured.What.HOLE_DEPTH, hole, day, value)));
        check.cupDepthMillimetres()
                .ifPresent(value -> more.add(new Measured(Measured.What.CUP_DEPTH, hole, day, value)));
        check.plugHeightMillimetres()
                .ifPresent(value -> more.add(new Measured(Measured.What.PLUG_HEIGHT, hole, day, value)));
        List<Measured> kept = more.subList(Math.max(0, more.size() - MEASURES_KEPT), more.size());
        return new CourseState(care, rounds, kept, frost, speedFeet);
    }

    CourseState frost(boolean onGreens) {
        return new CourseState(care, rounds, measured, onGreens, speedFeet);
    }

    CourseState read(double feet) {
        return new CourseState(care, rounds, measured, frost, OptionalDouble.of(feet));
    }
}
