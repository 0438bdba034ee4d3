package org.cupwright.settingout;

import java.util.Optional;
import org.cupwright.units.Paces;

/**
 * How far off the position a hole is still good, every way.
 *
 * @param goodWithinMetres as it was judged
 * @param goodWithinPaces the same in paces, down to the half pace
 * @param moreRoom where there is more room than that; empty where no way stands out, or no line of play names it
 */
public record Leeway(double goodWithinMetres, double goodWithinPaces, Optional<Way> moreRoom) {
    public Leeway {
        if (!(goodWithinMetres >= 0)) {
            throw new IllegalArgumentException("good within " + goodWithinMetres + " m cannot be");
        }
    }

    static Leeway of(double metres, double paceMetres, Optional<Way> moreRoom) {
        return new Leeway(metres, Paces.roundedDownToHalf(metres, paceMetres), moreRoom);
    }
}
