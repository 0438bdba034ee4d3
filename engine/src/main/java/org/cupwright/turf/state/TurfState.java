package org.cupwright.turf.state;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The turf as the facts have left it: a plain value that can be kept. It holds what was done; what follows from it on
 * a coming day also takes weather and policy, which may change later without touching it.
 *
 * @param zone the zone whose calendar days are the course's days
 * @param last the last fact that is in it, empty when none is
 * @param greens by hole; a hole without facts is missing
 * @param cutters by name
 * @param course what concerns all greens
 * @param facts how many facts are in it
 */
public record TurfState(
        ZoneId zone,
        Optional<FactMark> last,
        Map<String, GreenState> greens,
        Map<String, CutterState> cutters,
        CourseState course,
        long facts) {
    public TurfState {
        greens = Map.copyOf(greens);
        cutters = Map.copyOf(cutters);
    }

    /** Before the first fact. */
    public static TurfState empty(ZoneId zone) {
        return new TurfState(zone, Optional.empty(), Map.of(), Map.of(), CourseState.NONE, 0);
    }

    /** A green's state; a green without facts has nothing on it. */
    public GreenState green(String hole) {
        GreenState known = greens.get(hole);
        return known == null ? GreenState.of(hole) : known;
    }

    /** Irrigation of a green on a day: its own and what all greens had together; empty when neither was entered. */
    public OptionalDouble irrigationMillimetres(String hole, LocalDate day) {
        OptionalDouble own = green(hole).care().irrigationOn(day);
        OptionalDouble all = course.care().irrigationOn(day);
        return own.isEmpty() && all.isEmpty() ? own : OptionalDouble.of(own.orElse(0) + all.orElse(0));
    }

    /** When people may go on a green again after spraying, by the labels; empty when nothing was sprayed. */
    public Optional<Instant> reentryFrom(String hole) {
        Optional<Instant> own = green(hole).care().reentryFrom();
        Optional<Instant> all = course.care().reentryFrom();
        return own.isPresent() && all.isPresent()
                ? Optional.of(own.get().isAfter(all.get()) ? own.get() : all.get())
                : own.or(() -> all);
    }
}
