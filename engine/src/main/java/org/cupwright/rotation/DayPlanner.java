package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.counting.CheapestChoice.Choice;

/**
 * Decides one day's hole locations.
 *
 * <p>Hard: one position for each green in play, never one the rules refuse (a locked one apart, and that is named); saved ground
 * and thirds the course leaves out only where a green has nothing else, and named. Then, in this order: front, middle and back as
 * even as these greens allow; the least weighted sum of {@link Term}s. The plan is the best there is by these measures, not an
 * approximation. Greens without a line of play take part in all but the balance of thirds and sides, holes of unknown difficulty
 * in all but that of difficulty; both are named. Two holes of a double green are kept apart, see {@link KeepApart}.
 *
 * <p>Stateless; safe for use by several threads.
 */
public final class DayPlanner {
    private final Policy policy;

    public DayPlanner(Policy policy) {
        this.policy = policy;
    }

    public DayPlan plan(DayRequest request) {
        Aims aims = new Aims(policy, request.busy());
        return new KeepApart(asked -> decided(asked, aims), aims).plan(request);
    }

    private static DayPlan decided(DayRequest request, Aims aims) {
        OpenGreens open = new OpenGreens(request, aims);
        List<OpenGreen> greens = open.greens();
        DaySearch search = new DaySearch(greens, aims);
        Choice choice = search.find();
        List<Appraised> chosen = new ArrayList<>();
        for (int i = 0; i < greens.size(); i++) {
            chosen.add(greens.get(i).kinds().get(choice.options().get(i)));
        }
        DayOutcome outcome = new DayOutcome(greens, chosen, choice.tally(), search.thirdsOff());
        List<Message> findings = new ArrayList<>(open.findings());
        findings.addAll(new Shortfalls(outcome, aims).all());
        return new DayPlan(
                request.date(),
                request.seed(),
                holes(outcome, aims, search),
                Totals.of(greens.size(), choice.tally()),
                search.thirdsOff(),
                terms(outcome, aims),
                search.bounds(),
                findings);
    }

    private static List<PlannedHole> holes(DayOutcome outcome, Aims aims, DaySearch search) {
        Reasons reasons = new Reasons(outcome, aims);
        Alternatives alternatives = new Alternatives(outcome, aims, search);
        List<PlannedHole> holes = new ArrayList<>();
        for (int i = 0; i < outcome.greens().size(); i++) {
            OpenGreen green = outcome.greens().get(i);
            Appraised chosen = outcome.chosen().get(i);
            holes.add(new PlannedHole(
                    green.hole(),
                    chosen.candidate(),
                    green.locked(),
                    reasons.of(green, chosen),
                    alternatives.of(green, chosen)));
        }
        return holes;
    }

    private static Map<Term, Double> terms(DayOutcome outcome, Aims aims) {
        Map<Term, Double> terms = new EnumMap<>(Term.class);
        for (Term term : Term.values()) {
            double sum = aims.ofDay(term, outcome.tally());
            for (Appraised one : outcome.chosen()) {
                sum += one.terms().get(term);
            }
            terms.put(term, sum);
        }
        return terms;
    }
}
