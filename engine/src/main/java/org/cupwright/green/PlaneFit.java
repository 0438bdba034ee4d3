package org.cupwright.green;

import java.util.Optional;
import org.cupwright.units.Heading;

/**
 * The slope of the ground about a spot, with its error: the gradient of a plane and its covariance.
 *
 * @param gradientEast rise per metre towards east
 * @param gradientNorth rise per metre towards north
 * @param varianceEast variance of gradientEast
 * @param covariance covariance of the two
 * @param varianceNorth variance of gradientNorth
 */
public record PlaneFit(
        double gradientEast, double gradientNorth, double varianceEast, double covariance, double varianceNorth) {
    /** Slope, rise over run, never negative. */
    public double slope() {
        return Math.hypot(gradientEast, gradientNorth);
    }

    public double slopePercent() {
        return 100 * slope();
    }

    /**
     * Standard error of {@link #slope()}, taken along the fall line; where the plane is level, along the less known
     * direction.
     */
    public double slopeStandardError() {
        double slope = slope();
        if (slope < 1e-12) {
            double half = (varianceEast + varianceNorth) / 2;
            double spread = Math.hypot((varianceEast - varianceNorth) / 2, covariance);
            return Math.sqrt(half + spread);
        }
        return componentStandardError(gradientEast / slope, gradientNorth / slope);
    }

    /** Standard error of the rise per metre in the direction of a unit vector. */
    public double componentStandardError(double unitEast, double unitNorth) {
        double variance = unitEast * unitEast * varianceEast
                + 2 * unitEast * unitNorth * covariance
                + unitNorth * unitNorth * varianceNorth;
        return Math.sqrt(Math.max(0, variance));
    }

    /** The direction in which the ground falls; empty where it is level. */
    public Optional<Heading> downhill() {
        return slope() < 1e-12 ? Optional.empty() : Optional.of(Heading.ofStep(-gradientEast, -gradientNorth));
    }
}
