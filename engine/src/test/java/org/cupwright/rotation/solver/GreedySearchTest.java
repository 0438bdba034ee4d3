package org.cupwright.rotation.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.DayPlanner;
import org.cupwright.rotation.DayRequest;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.Term;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.junit.jupiter.api.Test;

/** A search of another package plans a day, and its plan is held against the exact one. */
class GreedySearchTest {
    private static final Policy POLICY = Policy.defaults();
    private static final LocalDate DAY = LocalDate.of(2026, 6, 20);

    private static DayPlan exact(List<GreenCandidates> greens) {
        return new DayPlanner(POLICY).plan(DayRequest.of(DAY, greens));
    }

    private static DayPlan greedy(List<GreenCandidates> greens) {
        return new DayPlanner(POLICY, GreedySearch::new).plan(DayRequest.of(DAY, greens));
    }

    private static double points(DayPlan plan) {
        double points = 0;
        for (Term term : Term.values()) {
            points += plan.terms().get(term) * POLICY.get(term.weight());
        }
        return points;
    }

    @Test
    void greensThatOfferEverythingAreSpreadEvenly() {
        List<GreenCandidates> greens = IntStream.rangeClosed(1, 9)
                .mapToObj(hole -> MadeGreens.green(
                        Integer.toString(hole),
                        MadeGreens.good(5, 5, DifficultyClass.EASIER),
                        MadeGreens.good(15, 15, DifficultyClass.MEDIUM),
                        MadeGreens.good(25, 25, DifficultyClass.HARDER)))
                .toList();
        DayPlan plan = greedy(greens);
        assertThat(plan.thirdsOff()).isZero();
        assertThat(plan.totals()).isEqualTo(exact(greens).totals());
        assertThat(plan.holes()).extracting(PlannedHole::hole).hasSize(9).doesNotHaveDuplicates();
        assertThat(points(plan)).isEqualTo(points(exact(greens)));
    }

    /** The first green takes the front, which is all that the other two have to offer. */
    @Test
    void whoNeverLooksBackIsNoBetterThanTheExactPlan() {
        GreenCandidates any =
                MadeGreens.green("1", MadeGreens.in(Third.FRONT), MadeGreens.good(5, 15, DifficultyClass.MEDIUM));
        List<GreenCandidates> greens = List.of(
                any,
                MadeGreens.green("2", MadeGreens.in(Third.FRONT)),
                MadeGreens.green("3", MadeGreens.in(Third.FRONT)));
        DayPlan plan = greedy(greens);
        DayPlan best = exact(greens);
        assertThat(plan.find("1").orElseThrow().candidate().third()).contains(Third.FRONT);
        assertThat(best.find("1").orElseThrow().candidate().third()).contains(Third.MIDDLE);
        assertThat(plan.thirdsOff()).isGreaterThan(best.thirdsOff());
    }
}
