package org.cupwright.rotation;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;

/**
 * How far a day's choice of positions falls short of what the course wants, term by term.
 *
 * @param thirdsOff how many holes would have to be in another third; 0 under a scheme that does not ask
 * @param terms every term's sum over the day, each in its own unit; 0 is a wish fully met
 */
public record DayScore(int thirdsOff, Map<Term, Double> terms) {
    public DayScore {
        terms = Collections.unmodifiableMap(new EnumMap<>(terms));
    }

    /** One hole of a day's choice: the green, and the candidate that is to be its hole. */
    public record Pick(GreenCandidates green, Candidate candidate) {}

    /**
     * The score of a choice.
     *
     * @param busy see {@link DayRequest#busy()}
     */
    public static DayScore of(List<Pick> picks, Policy policy, boolean busy) {
        return of(picks, new Aims(policy, busy));
    }

    static DayScore of(List<Pick> picks, Aims aims) {
        long tally = picks.stream()
                .mapToLong(pick -> Appraised.tally(pick.candidate()))
                .sum();
        Map<Term, Double> terms = new EnumMap<>(Term.class);
        for (Term term : Term.values()) {
            double sum = aims.ofDay(term, tally);
            for (Pick pick : picks) {
                sum += aims.ofPosition(term, pick.candidate(), pick.green());
            }
            terms.put(term, sum);
        }
        return new DayScore(aims.thirdsOff(tally), terms);
    }

    /** Whether it comes before another of the same day: thirds first, then the weighted sum of what falls short. */
    public boolean isBetter(DayScore other, ToDoubleFunction<Term> weights) {
        return thirdsOff != other.thirdsOff ? thirdsOff < other.thirdsOff : points(weights) < other.points(weights);
    }

    /** All terms in one number: the sum of weight times term. */
    public double points(ToDoubleFunction<Term> weights) {
        double sum = 0;
        for (Term term : Term.values()) {
            sum += weights.applyAsDouble(term) * terms.get(term);
        }
        return sum;
    }
}
