/**
 * The course: its frame and zone, its holes with the greens' outlines, lines of play, hazards, tees and marks.
 *
 * <p>All coordinates are metres east and north in the course's one projected frame.
 */
package org.cupwright.course;
