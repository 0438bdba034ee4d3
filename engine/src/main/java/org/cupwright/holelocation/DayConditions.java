package org.cupwright.holelocation;

import org.cupwright.green.GroundOnDay;
import org.cupwright.units.GreenSpeed;

/**
 * What counts for one green on one day.
 *
 * @param fastest the fastest the green will be that day
 * @param rainExpected whether rain is expected during play
 * @param event whether the day is an event's, for which the course's stricter limits count
 * @param ground what lies on the green that day
 */
public record DayConditions(GreenSpeed fastest, boolean rainExpected, boolean event, GroundOnDay ground) {}
