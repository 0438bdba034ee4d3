package org.cupwright.rotation;

import java.util.List;

/**
 * What the search decided, for those who explain it.
 *
 * @param greens the greens in play
 * @param chosen for each of them, what was chosen
 * @param tally the day's tally
 * @param thirdsOff holes off even thirds
 */
record DayOutcome(List<OpenGreen> greens, List<Appraised> chosen, long tally, int thirdsOff) {}
