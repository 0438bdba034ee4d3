package org.cupwright.course;

import org.locationtech.jts.geom.Polygon;

/**
 * One teeing ground.
 *
 * @param name what the course calls it; empty when it has no name
 * @param area where it lies
 */
public record Tee(String name, Polygon area) {}
