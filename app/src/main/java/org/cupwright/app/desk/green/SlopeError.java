package org.cupwright.app.desk.green;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.ErrorParts;
import org.cupwright.green.Ground;
import org.cupwright.green.MeasuredSharing;

/**
 * Of what the error of a surveyed slope is made.
 *
 * @param parts standard errors, rise per metre
 * @param sharing what the survey's points share of their errors
 */
public record SlopeError(ErrorParts parts, MeasuredSharing sharing) {
    /** Empty where the ground rests on no survey, or nothing is known of the place. */
    public static Optional<SlopeError> at(Ground ground, MapPoint place) {
        return ground.sharing()
                .flatMap(sharing -> ground.slopeErrorAt(place).map(parts -> new SlopeError(parts, sharing)));
    }

    /** The whole, rise per metre. */
    public double standardError() {
        return Math.hypot(parts.own(), parts.shared());
    }
}
