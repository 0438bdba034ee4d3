package org.cupwright.holelocation.rule;

import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Function;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.holelocation.spot.SpotGround;

/**
 * The worst of the ground about a position: the worst outcome, and of several such the one with the least margin.
 *
 * <p>The position itself must be known, or nothing is said. Spots that nobody measured are passed over: a level's
 * reading speaks for the ground about it. A gap in a survey is no such spot: beside one, what passes is a caution.
 *
 * <p>Some twenty positions look at each spot of the green's lattice, so what it answers is worked out once. Safe for
 * use by several threads; two that ask for a spot at once may both work it out, to the same answer.
 */
final class WorstAbout {
    private final SpotGrid grid;
    private final Function<SpotGround, RuleAnswer> rule;
    private final AtomicReferenceArray<RuleAnswer> known;

    /** @param rule what a rule answers at one spot */
    WorstAbout(SpotGrid grid, Function<SpotGround, RuleAnswer> rule) {
        this.grid = grid;
        this.rule = rule;
        this.known = new AtomicReferenceArray<>(grid.lattice().size());
    }

    RuleAnswer of(JudgedPosition judged) {
        if (!judged.own().known()) {
            return RuleAnswer.notChecked();
        }
        RuleAnswer worst = at(judged.own());
        for (SpotGround spot : judged.about()) {
            if (spot.known()) {
                RuleAnswer next = at(spot);
                worst = next.isWorseThan(worst) ? next : worst;
            }
        }
        if (worst.said().outcome() == Outcome.PASS && judged.besideGap()) {
            return new RuleAnswer(
                    LeaningOutcome.of(Outcome.CAUTION),
                    "gap",
                    worst.value(),
                    worst.limit(),
                    worst.margin(),
                    worst.error());
        }
        return worst;
    }

    private RuleAnswer at(SpotGround spot) {
        int cell = grid.cellOf(spot);
        if (cell < 0) {
            return rule.apply(spot);
        }
        RuleAnswer before = known.get(cell);
        if (before == null) {
            before = rule.apply(spot);
            known.set(cell, before);
        }
        return before;
    }
}
