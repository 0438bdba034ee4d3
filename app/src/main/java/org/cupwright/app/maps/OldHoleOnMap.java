package org.cupwright.app.maps;

import org.cupwright.course.MapPoint;

/**
 * An old hole.
 *
 * @param at where
 * @param days how many days ago it was last played to
 */
public record OldHoleOnMap(MapPoint at, long days) {}
