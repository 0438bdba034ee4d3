package org.cupwright.rotation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.message.Message;

/**
 * The hole locations of one day.
 *
 * @param date the day
 * @param seed the seed that decided between equally good plans
 * @param holes one for each green in play, in round order
 * @param totals how they are spread
 * @param thirdsOff how many holes would have to be in another third for front, middle and back to be even; no plan of
 *     these greens has fewer
 * @param terms every wish, in its own unit
 * @param bounds for every wish the best value any plan of these greens could have, were it the only wish: from
 *     counting, with the thirds as even as here; wishes may stand in each other's way, so not all bounds can be reached
 *     at once
 * @param findings what could not be done and what was left out, keys begin with {@code rotation.finding.}
 */
public record DayPlan(
        LocalDate date,
        long seed,
        List<PlannedHole> holes,
        Totals totals,
        int thirdsOff,
        Map<Term, Double> terms,
        Map<Term, Double> bounds,
        List<Message> findings) {
    public DayPlan {
        holes = List.copyOf(holes);
        terms = Collections.unmodifiableMap(new EnumMap<>(terms));
        bounds = Collections.unmodifiableMap(new EnumMap<>(bounds));
        findings = List.copyOf(findings);
    }

    /** The same plan with more to say. */
    DayPlan withFindings(List<Message> more) {
        List<Message> all = new ArrayList<>(findings);
        all.addAll(more);
        return new DayPlan(date, seed, holes, totals, thirdsOff, terms, bounds, all);
    }

    /** The same plan with more said of its holes. */
    public DayPlan withHoles(List<PlannedHole> told) {
        return new DayPlan(date, seed, told, totals, thirdsOff, terms, bounds, findings);
    }

    DayScore score() {
        return new DayScore(thirdsOff, terms);
    }

    /** The planned hole of a green; empty when it is left out or unknown. */
    public Optional<PlannedHole> find(String hole) {
        return holes.stream().filter(planned -> planned.hole().equals(hole)).findFirst();
    }
}
