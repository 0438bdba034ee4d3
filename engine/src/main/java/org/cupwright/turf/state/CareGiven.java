package org.cupwright.turf.state;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.cupchange.CareWork;
import org.cupwright.cupchange.CareWork.Irrigated;
import org.cupwright.cupchange.CareWork.Maintained;
import org.cupwright.cupchange.CareWork.Sprayed;
import org.cupwright.cupchange.CareWork.Upkeep;

/**
 * What a green, or all greens together, were given.
 *
 * @param lastDone the last day of each kind of upkeep
 * @param irrigation by day, oldest first; a day that is missing is unknown, not dry
 * @param reentryFrom when people may go on again after the last spraying, by the latest label
 */
public record CareGiven(Map<Upkeep, LocalDate> lastDone, List<Watered> irrigation, Optional<Instant> reentryFrom) {
    /** What was given on one day. */
    public record Watered(LocalDate day, double millimetres) {}

    /** As far back as the water balance looks, and a week. */
    private static final int KEPT_DAYS = 67;

    static final CareGiven NONE = new CareGiven(Map.of(), List.of(), Optional.empty());

    public CareGiven {
        lastDone = Map.copyOf(lastDone);
        irrigation = List.copyOf(irrigation);
    }

    CareGiven after(CareWork work, LocalDate day) {
        if (work instanceof Maintained maintained) {
            Map<Upkeep, LocalDate> done = new EnumMap<>(Upkeep.class);
            done.putAll(lastDone);
            done.put(maintained.work(), day);
            return new CareGiven(done, irrigation, reentryFrom);
        } else if (work instanceof Irrigated irrigated) {
            return new CareGiven(lastDone, watered(day, irrigated.millimetres()), reentryFrom);
        }
        Instant label = ((Sprayed) work).reentryFrom();
        boolean later = reentryFrom.map(known -> known.isBefore(label)).orElse(true);
        return later ? new CareGiven(lastDone, irrigation, Optional.of(label)) : this;
    }

    /** Facts come in order, so that a day is the last one's or a later one. */
    private List<Watered> watered(LocalDate day, double millimetres) {
        LocalDate oldest = day.minusDays(KEPT_DAYS);
        List<Watered> water = new ArrayList<>(irrigation.size() + 1);
        double before = 0;
        for (Watered known : irrigation) {
            if (known.day().equals(day)) {
                before = known.millimetres();
            } else if (!known.day().isBefore(oldest)) {
                water.add(known);
            }
        }
        water.add(new Watered(day, before + millimetres));
        return water;
    }

    /** What was entered for a day, 0 if somebody said so; empty when nobody entered anything. */
    public OptionalDouble irrigationOn(LocalDate day) {
        return irrigation.stream()
                .filter(known -> known.day().equals(day))
                .mapToDouble(Watered::millimetres)
                .findFirst();
    }
}
