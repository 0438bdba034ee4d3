package org.cupwright.app.maps;

import org.locationtech.jts.geom.Geometry;

/**
 * An area of the green that the course has a number for.
 *
 * @param number by which the course calls it
 * @param place a polygon in the course's frame
 * @param today whether the hole is to be in it on the day
 */
public record AreaOnMap(String number, Geometry place, boolean today) {}
