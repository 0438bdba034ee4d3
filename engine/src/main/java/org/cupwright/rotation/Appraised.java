package org.cupwright.rotation;

import java.util.EnumMap;
import java.util.Map;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.counting.Option;
import org.cupwright.rotation.counting.Split;
import org.cupwright.rotation.counting.Tally;

/**
 * A candidate with what it does to the day.
 *
 * @param candidate the candidate
 * @param terms its terms, each in its own unit
 * @param option what it adds to the tally, and its price
 */
public record Appraised(Candidate candidate, Map<Term, Double> terms, Option option) {
    static Appraised of(Candidate candidate, GreenCandidates green, Aims aims, long seed) {
        Map<Term, Double> terms = new EnumMap<>(Term.class);
        for (Term term : Term.values()) {
            terms.put(term, aims.ofPosition(term, candidate, green));
        }
        long price = Price.points(terms, aims) + Price.draw(seed, green.hole(), candidate.at());
        return new Appraised(candidate, terms, new Option(tally(candidate), price));
    }

    /** What a candidate adds to the counts of a day. */
    public static long tally(Candidate candidate) {
        return Tally.HOLE
                + candidate
                        .third()
                        .map(third -> Split.THIRD.one(third.ordinal()))
                        .orElse(0L)
                + candidate
                        .lateral()
                        .map(lateral -> Split.LATERAL.one(lateral.ordinal()))
                        .orElse(0L)
                + candidate
                        .rank()
                        .map(rank -> Split.DIFFICULTY.one(rank.ordinal()))
                        .orElse(0L);
    }
}
