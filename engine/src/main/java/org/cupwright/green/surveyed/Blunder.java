package org.cupwright.green.surveyed;

import org.cupwright.course.MapPoint;

/**
 * A surveyed point that was left out because it lies too far off the fitted surface.
 *
 * @param place where it is
 * @param heightMetres the height that was surveyed
 * @param residualMetres how far that is above the surface; negative below
 */
public record Blunder(MapPoint place, double heightMetres, double residualMetres) {}
