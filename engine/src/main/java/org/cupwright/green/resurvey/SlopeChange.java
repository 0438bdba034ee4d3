package org.cupwright.green.resurvey;

import org.cupwright.course.MapPoint;

/**
 * How much steeper the ground about a spot has become.
 *
 * @param at the spot
 * @param points slope after less slope before, percentage points
 * @param standardErrorPoints from both surveys
 */
public record SlopeChange(MapPoint at, double points, double standardErrorPoints) {}
