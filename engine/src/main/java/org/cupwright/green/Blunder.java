package org.cupwright.green;

import org.cupwright.course.MapPoint;

/**
 * A point left out because it lies far from the surface through its neighbours.
 *
 * @param at where
 * @param heightMetres its height
 * @param residualMetres how far above the surface
 */
public record Blunder(MapPoint at, double heightMetres, double residualMetres) {}
