package org.cupwright.holelocation.judging;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.green.GreenLattice;
import org.cupwright.holelocation.Concession;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleResult;

/**
 * Finds the concessions that free some ground of a green on which nothing passes.
 *
 * <p>They are made one by one in the course's order until a spot no longer fails; then those that turn out not to be
 * needed are taken back, the dearest first. If all of them free nothing, none is made.
 */
final class ConcessionSearch {
    private final List<Concession> ranking;

    /** For each spot and each of its failures: the concessions that would excuse it, a bit each by rank. */
    private final List<int[]> spots = new ArrayList<>();

    ConcessionSearch(List<Concession> ranking) {
        this.ranking = ranking;
    }

    /** Takes in one spot, unless one of its failures cannot be excused. */
    void add(List<RuleResult> results, Concessions none) {
        int[] excuses = results.stream()
                .filter(result -> result.outcome() == Outcome.FAIL)
                .mapToInt(failure -> excuses(failure, none))
                .toArray();
        for (int excuse : excuses) {
            if (excuse == 0) {
                return;
            }
        }
        spots.add(excuses);
    }

    private int excuses(RuleResult failure, Concessions none) {
        int bits = 0;
        for (int rank = 0; rank < ranking.size(); rank++) {
            bits |= none.excuses(ranking.get(rank), failure) ? 1 << rank : 0;
        }
        return bits;
    }

    List<ConcessionStep> find() {
        int made = 0;
        for (int rank = 0; rank < ranking.size() && freed(made) == 0; rank++) {
            made |= 1 << rank;
        }
        if (freed(made) == 0) {
            return List.of();
        }
        for (int rank = ranking.size() - 1; rank >= 0; rank--) {
            int without = made & ~(1 << rank);
            made = freed(without) > 0 ? without : made;
        }
        return steps(made);
    }

    private List<ConcessionStep> steps(int made) {
        List<ConcessionStep> steps = new ArrayList<>();
        int soFar = 0;
        for (int rank = 0; rank < ranking.size(); rank++) {
            int next = soFar | made & 1 << rank;
            if (next != soFar) {
                int gained = freed(next) - freed(soFar);
                double area = gained * GreenLattice.CELL_METRES * GreenLattice.CELL_METRES;
                steps.add(new ConcessionStep(ranking.get(rank), gained, area));
                soFar = next;
            }
        }
        return steps;
    }

    private int freed(int made) {
        int freed = 0;
        for (int[] failures : spots) {
            boolean free = true;
            for (int excuses : failures) {
                free &= (excuses & made) != 0;
            }
            freed += free ? 1 : 0;
        }
        return freed;
    }
}
