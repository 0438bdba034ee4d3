package org.cupwright.rotation.weeks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Third;
import org.cupwright.rotation.candidate.Candidate;

/**
 * What there is to choose from on one green over the days of a plan.
 *
 * @param hole the hole's name
 * @param candidates spots that may have a hole as far as the ground's shape is concerned: judged with nothing lying on
 *     the green
 * @param eased spots that may have a hole if rules are set aside that the course sets aside before the rest of old
 *     holes: judged in the same way, those rules set aside
 * @param past the holes before the plan whose places are known, oldest first; the last may be in use still
 * @param yesterdaysThird in which third the hole is or was before the first day, where nobody knows more of its place
 * @param days one for each day of the plan
 */
public record GreenWeeks(
        String hole,
        List<Candidate> candidates,
        List<Candidate> eased,
        List<PastHole> past,
        Optional<Third> yesterdaysThird,
        List<GreenDay> days) {
    /** A green of which no rule is set aside but that about old holes. */
    public GreenWeeks(
            String hole,
            List<Candidate> candidates,
            List<PastHole> past,
            Optional<Third> yesterdaysThird,
            List<GreenDay> days) {
        this(hole, candidates, List.of(), past, yesterdaysThird, days);
    }

    public GreenWeeks {
        candidates = List.copyOf(candidates);
        eased = List.copyOf(eased);
        past = List.copyOf(past);
        days = List.copyOf(days);
    }

    /** The same green with other days. */
    public GreenWeeks withDays(List<GreenDay> others) {
        return new GreenWeeks(hole, candidates, eased, past, yesterdaysThird, others);
    }

    /** All spots that it may have, those that keep to the rules first. */
    List<Candidate> spots() {
        return Stream.concat(candidates.stream(), eased.stream()).toList();
    }

    /** The hole in use before the first day, as far as its place is known. */
    Optional<PastHole> inUse() {
        boolean known = !past.isEmpty() && yesterdaysThird.isEmpty();
        return known
                ? Optional.of(past.get(past.size() - 1))
                        .filter(hole -> hole.leftOn().isEmpty())
                : Optional.empty();
    }

    /** Where the hole is before the first day, as far as its place is known. */
    Optional<MapPoint> yesterday() {
        boolean known = !past.isEmpty() && yesterdaysThird.isEmpty();
        return known ? Optional.of(past.get(past.size() - 1).at()) : Optional.empty();
    }
}
