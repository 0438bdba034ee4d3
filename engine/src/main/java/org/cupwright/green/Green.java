package org.cupwright.green;

import org.cupwright.course.Hole;

/**
 * One green: the hole it belongs to and what is known of its ground.
 *
 * @param hole outline, line of play, hazards about it
 * @param ground the shape of its ground
 */
public record Green(Hole hole, Ground ground) {}
