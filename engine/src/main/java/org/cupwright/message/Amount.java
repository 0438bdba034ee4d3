package org.cupwright.message;

import java.util.Optional;
import org.cupwright.message.Message.Argument;

/**
 * What an argument of a sentence comes to, for scripts.
 *
 * @param number in the unit
 * @param unit m, m², %, points (of slope), or empty for a plain count
 */
public record Amount(double number, String unit) {
    /** The amount of an argument; empty when it is not one. */
    public static Optional<Amount> of(Argument argument) {
        if (argument instanceof Message.Length length) {
            return Optional.of(new Amount(length.metres(), "m"));
        }
        if (argument instanceof Message.Area area) {
            return Optional.of(new Amount(area.squareMetres(), "m²"));
        }
        if (argument instanceof Message.Slope slope) {
            return Optional.of(new Amount(slope.percent(), "%"));
        }
        if (argument instanceof Message.SlopePoints points) {
            return Optional.of(new Amount(points.points(), "points"));
        }
        return argument instanceof Message.Count count ? Optional.of(new Amount(count.number(), "")) : Optional.empty();
    }
}
