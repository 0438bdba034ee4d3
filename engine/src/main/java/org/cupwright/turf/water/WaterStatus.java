package org.cupwright.turf.water;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The water in the ground on the morning of a day.
 *
 * @param loss what the day itself takes; empty when nothing is known of its weather
 * @param deficitAtLeastMillimetres what the ground lacks, if every day of unknown irrigation or rain filled it
 * @param deficitAtMostMillimetres what it lacks, if none of them brought anything
 * @param filledDays days whose temperatures were filled in between neighbours
 * @param unknownDays days on which rain or irrigation is not known
 */
public record WaterStatus(
        LocalDate day,
        Optional<WaterLoss> loss,
        double deficitAtLeastMillimetres,
        double deficitAtMostMillimetres,
        int filledDays,
        int unknownDays) {
    /** The bounds are as good as one when they are nearer than this, mm (our choice). */
    private static final double SAME_MILLIMETRES = 0.5;

    /** What the ground lacks; empty when too much is unknown to say. */
    public OptionalDouble deficitMillimetres() {
        return deficitAtMostMillimetres - deficitAtLeastMillimetres <= SAME_MILLIMETRES
                ? OptionalDouble.of(deficitAtMostMillimetres)
                : OptionalDouble.empty();
    }
}
