package org.cupwright.app.maps;

import org.cupwright.course.MapPoint;

/**
 * A spot with something written at it: an old hole with its age, a slope.
 *
 * @param at where
 * @param label what is written beside it
 */
public record SpotOnMap(MapPoint at, String label) {}
