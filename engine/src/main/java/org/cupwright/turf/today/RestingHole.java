package org.cupwright.turf.today;

import org.cupwright.turf.growth.ClockEnd;
import org.cupwright.turf.state.OldHole;

/** An old hole whose surroundings still rest from foot traffic, and until when. */
public record RestingHole(String hole, OldHole old, ClockEnd rests) {}
