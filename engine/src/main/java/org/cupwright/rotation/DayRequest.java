package org.cupwright.rotation;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.counting.Tally;

/**
 * One day to be planned.
 *
 * @param date the day
 * @param greens what there is to choose from, in round order
 * @param sharedGreens pairs of holes that are played to one green and are to be kept apart on it
 * @param busy whether so many play that the course should play easier: half of the holes easier, a third medium, a
 *     sixth harder. That positions be easier on busy days is published (USGA, Frequency for Changing Hole Locations,
 *     2013), the shares are our choice
 * @param seed decides between plans that are equally good, and nothing else; equal requests with equal seeds have equal
 *     plans
 */
public record DayRequest(
        LocalDate date, List<GreenCandidates> greens, List<SharedGreen> sharedGreens, boolean busy, long seed) {
    public DayRequest {
        greens = List.copyOf(greens);
        sharedGreens = List.copyOf(sharedGreens);
        if (greens.size() > Tally.MOST_HOLES) {
            throw new IllegalArgumentException(
                    "a day's plan has at most " + Tally.MOST_HOLES + " greens, not " + greens.size());
        }
        Set<String> seen = new HashSet<>();
        for (GreenCandidates green : greens) {
            if (!seen.add(green.hole())) {
                throw new IllegalArgumentException("hole " + green.hole() + " stands twice in the plan of " + date);
            }
        }
    }

    public static DayRequest of(LocalDate date, List<GreenCandidates> greens) {
        return new DayRequest(date, greens, List.of(), false, 1);
    }

    /** The same day with other greens to choose from. */
    DayRequest withGreens(List<GreenCandidates> others) {
        return new DayRequest(date, others, sharedGreens, busy, seed);
    }
}
