package org.cupwright.rotation.weeks;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Days that are planned already, and are to be changed as little as what is wanted of them now allows.
 *
 * @param weeks the days and greens as they are now, with what is wanted now; holes that may not be moved are locked
 *     where they stand
 * @param stands by hole, one for each day: where the hole stands; empty where it has none
 */
public record ChangeRequest(WeeksRequest weeks, Map<String, List<Optional<Stand>>> stands) {
    public ChangeRequest {
        stands = Map.copyOf(stands);
        for (GreenWeeks green : weeks.greens()) {
            List<Optional<Stand>> known = stands.get(green.hole());
            if (known == null || known.size() != weeks.days().size()) {
                throw new IllegalArgumentException(
                        "where hole " + green.hole() + " stands is not said for each of " + weeks.days());
            }
        }
    }
}
