package org.cupwright.holelocation.levelround;

import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaneFit;

/**
 * A surveyed spot of the green as far as it is known now.
 *
 * @param at where
 * @param slopePercent the slope shown now
 * @param unitEast the direction of steepest rise
 * @param unitNorth of it
 * @param now covariance of the gradient
 * @param undecided whether the rule has no answer there yet
 */
record OpenSpot(
        MapPoint at, double slopePercent, double unitEast, double unitNorth, GradientSpread now, boolean undecided) {
    static OpenSpot of(MapPoint at, PlaneFit plane, boolean undecided) {
        double slope = plane.slope();
        boolean level = slope < 1e-12;
        return new OpenSpot(
                at,
                plane.slopePercent(),
                level ? 1 : plane.gradientEast() / slope,
                level ? 0 : plane.gradientNorth() / slope,
                new GradientSpread(plane.varianceEast(), plane.covariance(), plane.varianceNorth()),
                undecided);
    }
}
