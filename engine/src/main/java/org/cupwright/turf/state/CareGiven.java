package org.cupwright.turf.state;

import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.cupwright.cupchange.CareWork;
import org.cupwright.cupchange.CareWork.Irrigated;
import org.cupwright.cupchange.CareWork.Maintained;
import org.cupwright.cupchange.CareWork.Sprayed;
import org.cupwright.cupchange.CareWork.Upkeep;

/**
 * What a green, or all greens together, were given.
 *
 * @param lastDone the last day of each kind of upkeep
 * @param irrigationMillimetres by day; a day that is missing is unknown, not dry
 * @param reentryFrom when people may go on again after the last spraying, by the latest label
 */
public record CareGiven(
        Map<Upkeep, LocalDate> lastDone, Map<LocalDate, Double> irrigationMillimetres, Optional<Instant> reentryFrom) {
    /** As far back as the water balance looks, and a week. */
    private static final int KEPT_DAYS = 67;

    static final CareGiven NONE = new CareGiven(Map.of(), Map.of(), Optional.empty());

    public CareGiven {
        lastDone = Map.copyOf(lastDone);
        irrigationMillimetres = Map.copyOf(irrigationMillimetres);
    }

    CareGiven after(CareWork work, LocalDate day) {
        if (work instanceof Maintained maintained) {
            Map<Upkeep, LocalDate> done = new EnumMap<>(Upkeep.class);
            done.putAll(lastDone);
            done.put(maintained.work(), day);
            return new CareGiven(done, irrigationMillimetres, reentryFrom);
        } else if (work instanceof Irrigated irrigated) {
            Map<LocalDate, Double> water = new TreeMap<>(irrigationMillimetres);
            water.merge(day, irrigated.millimetres(), Double::sum);
            water.keySet().removeIf(known -> known.isBefore(day.minusDays(KEPT_DAYS)));
            return new CareGiven(lastDone, water, reentryFrom);
        }
        Instant label = ((Sprayed) work).reentryFrom();
        boolean later = reentryFrom.map(known -> known.isBefore(label)).orElse(true);
        return later ? new CareGiven(lastDone, irrigationMillimetres, Optional.of(label)) : this;
    }

    /** What was entered for a day, 0 if somebody said so; empty when nobody entered anything. */
    public OptionalDouble irrigationOn(LocalDate day) {
        Double entered = irrigationMillimetres.get(day);
        return entered == null ? OptionalDouble.empty() : OptionalDouble.of(entered);
    }
}
