package org.cupwright.rotation.weeks;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.cupwright.rotation.Term;

/**
 * What no plan of the same days can be better than, term by term, were each the only wish: from counting, with what is
 * known before the first day.
 *
 * @param holesSetAside holes for which a rule is set aside, or as near to the other hole of their day and
 *     green
 * @param thirdsOff holes off even thirds, all days together
 * @param terms terms of {@link Term} in their own unit; those that are not in it have no bound but 0
 */
public record WeeksBounds(int holesSetAside, int thirdsOff, Map<Term, Double> terms) {
    public WeeksBounds {
        Map<Term, Double> sorted = new EnumMap<>(Term.class);
        sorted.putAll(terms);
        terms = Collections.unmodifiableMap(sorted);
    }
}
