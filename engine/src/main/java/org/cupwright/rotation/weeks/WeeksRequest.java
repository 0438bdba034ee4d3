package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.cupwright.rotation.SharedGreen;
import org.cupwright.rotation.counting.Tally;

/**
 * Days to be planned together.
 *
 * @param days the days on which holes are changed, in order
 * @param greens what there is to choose from, in round order
 * @param sharedGreens pairs of holes that are played to one green
 * @param rests how long ground rests and plugs show
 * @param busy days on which so many play that the course should play easier
 * @param seed where the search begins; equal requests with equal seeds have equal plans
 */
public record WeeksRequest(
        List<LocalDate> days,
        List<GreenWeeks> greens,
        List<SharedGreen> sharedGreens,
        RestDays rests,
        Set<LocalDate> busy,
        long seed) {
    public WeeksRequest {
        days = List.copyOf(days);
        greens = List.copyOf(greens);
        sharedGreens = List.copyOf(sharedGreens);
        rests = rests.remembered();
        busy = Set.copyOf(busy);
        if (days.isEmpty() || !days.stream().sorted().distinct().toList().equals(days)) {
            throw new IllegalArgumentException("days to plan stand in order, each once, not " + days);
        }
        if (greens.size() > Tally.MOST_HOLES) {
            throw new IllegalArgumentException(
                    "a plan has at most " + Tally.MOST_HOLES + " greens, not " + greens.size());
        }
        Set<String> seen = new HashSet<>();
        for (GreenWeeks green : greens) {
            if (!seen.add(green.hole()) || green.days().size() != days.size()) {
                throw new IllegalArgumentException("hole " + green.hole() + " stands twice, or not for every day");
            }
        }
    }
}
