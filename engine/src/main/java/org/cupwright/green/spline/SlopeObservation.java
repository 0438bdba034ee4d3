package org.cupwright.green.spline;

/**
 * The gradient of the plane over a disc, measured on the spot.
 *
 * @param east metres, course frame
 * @param north metres, course frame
 * @param gradientEast rise per metre towards east
 * @param gradientNorth rise per metre towards north
 * @param standardError of either component
 */
public record SlopeObservation(
        double east, double north, double gradientEast, double gradientNorth, double standardError) {}
