package org.cupwright.roll;

import org.cupwright.course.MapPoint;

/**
 * One ball rolled to its end.
 *
 * @param stop where it came to rest, crossed the edge, or was when the roll was given up
 * @param seconds how long it rolled
 * @param pathMetres length of its path on the map
 * @param pathGroundMetres length of its path along the ground
 * @param end how it ended
 */
public record Roll(MapPoint stop, double seconds, double pathMetres, double pathGroundMetres, RollEnd end) {}
