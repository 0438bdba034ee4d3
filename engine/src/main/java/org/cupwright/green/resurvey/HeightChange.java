package org.cupwright.green.resurvey;

import org.cupwright.course.MapPoint;

/**
 * How far the ground at a spot has come up.
 *
 * @param at the spot
 * @param metres height after less height before
 * @param standardErrorMetres from both surveys' own errors
 */
public record HeightChange(MapPoint at, double metres, double standardErrorMetres) {}
