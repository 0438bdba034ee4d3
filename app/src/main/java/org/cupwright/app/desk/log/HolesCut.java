package org.cupwright.app.desk.log;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.storage.FactStore;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.HoleMovedInPlay;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.Fact;

/**
 * Where the holes of one day really are, as far as the logbook says.
 *
 * @param holes by hole, in the order of the last word on each; holes that nobody has said anything about, and
 *     those cut where nobody knows, are missing
 * @param records all that was written of the change of a hole, in the order in which it happened
 */
public record HolesCut(Map<String, HoleCut> holes, Map<String, List<Fact>> records) {
    /**
     * What was done.
     *
     * @param at where the hole is now; empty when it was left where it was
     * @param time when, to the minute, by the course's clock
     * @param person who
     * @param inPlay whether it was moved there while it was played to
     */
    public record HoleCut(Optional<MapPoint> at, LocalTime time, String person, boolean inPlay) {
        /**
         * What became of the plan.
         *
         * @param wanted where the plan has the hole
         */
        public Became became(Optional<MapPoint> wanted) {
            if (inPlay) {
                return Became.IN_PLAY;
            }
            return at.map(cut -> Optional.of(cut).equals(wanted) ? Became.CUT : Became.ELSEWHERE)
                    .orElse(Became.LEFT);
        }
    }

    /** Cut as planned or elsewhere, left where it was, or moved while it was played to. */
    public enum Became {
        CUT,
        ELSEWHERE,
        LEFT,
        IN_PLAY
    }

    public HolesCut {
        holes = Collections.unmodifiableMap(new LinkedHashMap<>(holes));
        records = Map.copyOf(records);
    }

    /** With one record of each. */
    public HolesCut(Map<String, HoleCut> holes) {
        this(holes, Map.of());
    }

    public static HolesCut of(FactStore store, Course course, LocalDate day) {
        ZoneId zone = course.frame().zone();
        Map<String, HoleCut> holes = new LinkedHashMap<>();
        Map<String, List<Fact>> records = new LinkedHashMap<>();
        for (Fact fact : DayLog.of(store, course, day).facts()) {
            fact.hole()
                    .filter(hole -> DayLog.isChange(fact.payload()))
                    .ifPresent(hole -> records.computeIfAbsent(hole, none -> new ArrayList<>())
                            .add(fact));
            if (fact.payload() instanceof CutSomewhere) {
                fact.hole().ifPresent(holes::remove); // it is no longer where it was cut before
            }
            Optional<Optional<MapPoint>> place = place(fact);
            if (place.isPresent() && fact.hole().isPresent()) {
                LocalTime time = LocalTime.ofInstant(fact.happenedAt(), zone).truncatedTo(ChronoUnit.MINUTES);
                holes.remove(fact.hole().get());
                holes.put(
                        fact.hole().get(),
                        new HoleCut(place.get(), time, fact.person(), fact.payload() instanceof HoleMovedInPlay));
            }
        }
        return new HolesCut(holes, records);
    }

    /**
     * Where the fact puts the hole; empty within when it leaves it, empty as a whole when it is about something else.
     */
    private static Optional<Optional<MapPoint>> place(Fact fact) {
        if (fact.payload() instanceof CupChanged changed) {
            return Optional.of(Optional.of(changed.cutAt()));
        }
        if (fact.payload() instanceof HoleMovedInPlay moved) {
            return Optional.of(Optional.of(moved.movedTo()));
        }
        return fact.payload() instanceof LeftInOldHole ? Optional.of(Optional.empty()) : Optional.empty();
    }

    /** What several wrote of one hole: telephones do not ask each other. Empty where there is one record, or none. */
    public List<Fact> several(String hole) {
        List<Fact> written = records.getOrDefault(hole, List.of());
        return written.size() > 1 ? written : List.of();
    }

    public Optional<HoleCut> find(String hole) {
        return Optional.ofNullable(holes.get(hole));
    }
}
