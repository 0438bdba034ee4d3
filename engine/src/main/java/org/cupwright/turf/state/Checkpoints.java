package org.cupwright.turf.state;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;

/**
 * Saved states, so that not every question folds the whole logbook. When facts arrive late, those that would have to contain them are
 * dropped and the fold goes on from the newest one before.
 *
 * @param states oldest first
 */
public record Checkpoints(TurfState start, List<TurfState> states) {
    public Checkpoints {
        states = List.copyOf(states);
    }

    /** None saved yet. */
    public static Checkpoints from(TurfState start) {
        return new Checkpoints(start, List.of());
    }

    /** With one state more, which must be later than those saved. */
    public Checkpoints with(TurfState state) {
        List<TurfState> more = new ArrayList<>(states);
        more.add(state);
        return new Checkpoints(start, more);
    }

    /** Without those that contain anything of a moment or later: facts of that moment have arrived. */
    public Checkpoints before(Instant moment) {
        return new Checkpoints(
                start, states.stream().filter(state -> isBefore(state, moment)).toList());
    }

    /** Without those that facts, which have just come into a logbook, make wrong. */
    public Checkpoints after(Logbook logbook, List<Fact> arrived) {
        return logbook.earliestTouched(arrived).map(this::before).orElse(this);
    }

    /** The newest saved state of which nothing is later than a moment, or the start. */
    public TurfState newestUpTo(Instant moment) {
        TurfState newest = start;
        for (TurfState state : states) {
            Optional<Instant> upTo = state.upTo();
            newest = upTo.isEmpty() || !upTo.get().isAfter(moment) ? state : newest;
        }
        return newest;
    }

    /** The state at a moment: from the newest checkpoint, with the logbook's facts after it. */
    public TurfState at(Logbook logbook, Instant moment) {
        TurfState from = newestUpTo(moment);
        List<Fact> facts = logbook.upTo(moment);
        int first = from.last().map(mark -> firstAfter(facts, mark)).orElse(0);
        return TurfFold.fold(from, facts.subList(first, facts.size()));
    }

    private static int firstAfter(List<Fact> facts, FactMark mark) {
        int low = 0;
        int high = facts.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (FactMark.of(facts.get(middle)).compareTo(mark) > 0) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private static boolean isBefore(TurfState state, Instant moment) {
        return state.upTo().map(last -> last.isBefore(moment)).orElse(true);
    }
}
