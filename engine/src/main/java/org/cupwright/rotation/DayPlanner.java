package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayScore.Pick;
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
        List<Message> findings = new ArrayList<>(open.findings());
        findings.addAll(new Shortfalls(outcome, aims).all());
        return new DayPlan(
                request.date(),
                request.seed(),
                holes(outcome, aims),
                Totals.of(greens.size(), choice.tally()),
                found.thirdsOff(),
                DayScore.of(picks(outcome), aims).terms(),
                found.bounds(),
                findings);
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
                    alternatives.of(green, chosen)));
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
