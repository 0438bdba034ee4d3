package org.cupwright.app.desk.green;

import org.cupwright.rotation.candidate.Area;

/**
 * An area of a green that the course has a number for.
 *
 * @param today whether it is one of those in which the hole is to be on the day
 */
public record AreaOnDay(Area area, boolean today) {}
