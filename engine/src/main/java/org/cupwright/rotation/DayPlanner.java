package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayScore.Pick;
import org.cupwright.rotation.candidate.Area;
import org.cupwright.rotation.counting.CheapestChoice.Choice;

/**
 * Decides one day's hole locations.
 *
 * <p>Hard: one position for each green in play, never one the rules refuse (a locked one apart, and that is named);
 * saved ground and thirds the course leaves out only where a green has nothing else, and named. Then, in this order:
 * front, middle and back as even as these greens allow; the least weighted sum of {@link Term}s. The plan is the best
 * there is by these measures, not an approximation. Greens without a line of play take part in all but the balance of
 * thirds and sides, holes of unknown difficulty in all but that of difficulty; both are named. Two holes of a double
 * green are kept apart, see {@link KeepApart}.
 *
 * <p>Stateless; safe for use by several threads.
 */
public final class DayPlanner {
    private final Policy policy;
    private final DaySearch.Maker search;

    /** Plans by exact counting. */
    public DayPlanner(Policy policy) {
        this(policy, CountingSearch::new);
    }

    /** Plans by another search; the plan is as good as what that finds. */
    public DayPlanner(Policy policy, DaySearch.Maker search) {
        this.policy = policy;
        this.search = search;
    }

    public DayPlan plan(DayRequest request) {
        Aims aims = new Aims(policy, request.busy());
        return new KeepApart(asked -> decided(asked, aims), aims).plan(request);
    }

    /**
     * The plan of a day whose holes have been chosen already, with reasons, alternatives and bounds as if it had been
     * found here.
     *
     * @param chosen for every hole that is to be in the plan the spot, one of those that may be chosen
     * @throws IllegalArgumentException for a spot that may not be chosen
     */
    public DayPlan explain(DayRequest request, Map<String, MapPoint> chosen) {
        Aims aims = new Aims(policy, request.busy());
        OpenGreens open = new OpenGreens(request, aims);
        List<Appraised> picks =
                open.greens().stream().map(green -> pick(green, chosen)).toList();
        long tally = picks.stream().mapToLong(pick -> pick.option().tally()).sum();
        DayOutcome outcome = new DayOutcome(open.greens(), picks, tally, aims.thirdsOff(tally));
        DayPlan plan = plan(request, open, outcome, search.of(open.greens(), aims), aims);
        return plan.withFindings(KeepApart.near(request, plan, aims));
    }

    private static Appraised pick(OpenGreen green, Map<String, MapPoint> chosen) {
        return green.all().stream()
                .filter(one -> one.candidate().at().equals(chosen.get(green.hole())))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("hole " + green.hole() + " may not be at "
                        + chosen.get(green.hole()) + "; choose one of its candidates"));
    }

    private DayPlan decided(DayRequest request, Aims aims) {
        OpenGreens open = new OpenGreens(request, aims);
        List<OpenGreen> greens = open.greens();
        DaySearch found = search.of(greens, aims);
        Choice choice = found.find();
        List<Appraised> chosen = new ArrayList<>();
        for (int i = 0; i < greens.size(); i++) {
            chosen.add(greens.get(i).kinds().get(choice.options().get(i)));
        }
        DayOutcome outcome = new DayOutcome(greens, chosen, choice.tally(), found.thirdsOff());
        return plan(request, open, outcome, found, aims);
    }

    private static DayPlan plan(DayRequest request, OpenGreens open, DayOutcome outcome, DaySearch search, Aims aims) {
        List<Message> findings = new ArrayList<>(open.findings());
        findings.addAll(new Shortfalls(outcome, aims).all());
        Map<Term, Double> terms = DayScore.of(picks(outcome), aims).terms();
        return new DayPlan(
                request.date(),
                request.seed(),
                holes(outcome, aims),
                Totals.of(outcome.greens().size(), outcome.tally()),
                outcome.thirdsOff(),
                terms,
                bounds(terms, search),
                findings);
    }

    /** Nothing is less than 0: where a wish is fully met there is nothing to count. */
    private static Map<Term, Double> bounds(Map<Term, Double> terms, DaySearch search) {
        Map<Term, Double> bounds = new EnumMap<>(Term.class);
        terms.forEach((term, value) -> bounds.put(term, value > 0 ? search.bound(term) : 0));
        return bounds;
    }

    private static List<PlannedHole> holes(DayOutcome outcome, Aims aims) {
        Reasons reasons = new Reasons(outcome, aims);
        Alternatives alternatives = new Alternatives(outcome, aims);
        List<PlannedHole> holes = new ArrayList<>();
        for (int i = 0; i < outcome.greens().size(); i++) {
            OpenGreen green = outcome.greens().get(i);
            Appraised chosen = outcome.chosen().get(i);
            holes.add(new PlannedHole(
                    green.hole(),
                    chosen.candidate(),
                    green.locked(),
                    reasons.of(green, chosen),
                    alternatives.of(green, chosen),
                    green.from().wishes().since(),
                    green.from().wishes().areaOf(chosen.candidate().at()).map(Area::number)));
        }
        return holes;
    }

    private static List<Pick> picks(DayOutcome outcome) {
        List<Pick> picks = new ArrayList<>();
        for (int i = 0; i < outcome.greens().size(); i++) {
            picks.add(new Pick(
                    outcome.greens().get(i).from(), outcome.chosen().get(i).candidate()));
        }
        return picks;
    }
}
