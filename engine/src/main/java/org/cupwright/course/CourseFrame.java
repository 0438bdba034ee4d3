package org.cupwright.course;

import java.time.ZoneId;

/**
 * Where a course's numbers live: one projected metric coordinate frame and one time zone for all of it.
 *
 * @param epsg the frame's EPSG code; its axes are metres east and north
 * @param zone the zone whose calendar days the course's days are
 */
public record CourseFrame(int epsg, ZoneId zone) {}
