package org.cupwright.rotation.weeks;

import org.cupwright.green.GroundOnDay;
import org.cupwright.rotation.candidate.Wishes;

/**
 * What is known beforehand of one green on one day.
 *
 * @param ground what lies on it that day, old holes apart: plugs that show, closed and saved ground
 * @param wishes what was decided for it
 */
public record GreenDay(GroundOnDay ground, Wishes wishes) {}
