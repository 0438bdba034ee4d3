package org.cupwright.rotation.shortage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.cupwright.rotation.exact.ZeroOneAnswer;
import org.cupwright.rotation.exact.ZeroOneAnswer.Outcome;
import org.cupwright.rotation.exact.ZeroOneProblem;
import org.cupwright.rotation.exact.ZeroOneSolver;
import org.cupwright.rotation.exact.ZeroOneSolver.SolverMissing;
import org.cupwright.rotation.shortage.GroundNeed.Stage;

/**
 * The whole question of one green, put to a solver: which spot each of its days may have so that none is on ground that
 * rests, and how many days have to go without. Where counting leaves a green open, days differ in what they may have,
 * and only all of them together tell.
 */
public final class DayByDay {
    /** More than this is not put to the solver, which would not be done with it: our choice. */
    private static final long MOST_TERMS = 400_000;

    /**
     * What came of it.
     *
     * @param atLeast so many holes are on ground that rests in every plan: proved
     * @param fits whether a plan was found that has none there
     */
    public record Answer(int atLeast, boolean fits) {
        /** Whether it is known if there is such a plan. */
        public boolean settled() {
            return fits || atLeast > 0;
        }
    }

    private static final Answer NOTHING = new Answer(0, false);

    private final GroundNeed need;
    private final List<BitSet> groups;

    /** By stage and spot the decision that the hole is there; by stage, in the last place, that it goes without. */
    private final int[][] decisions;

    /** @param groups spots that all are too near to each other, so that any two that are stand together in one */
    public DayByDay(GroundNeed need, List<BitSet> groups) {
        this.need = need;
        this.groups = withSingles(need, groups);
        this.decisions = new int[need.stages().size()][];
    }

    /** A spot that no other is too near to is a group by itself: two days may not both have it either. */
    private static List<BitSet> withSingles(GroundNeed need, List<BitSet> groups) {
        List<BitSet> all = new ArrayList<>(groups);
        BitSet single = new BitSet();
        need.stages().forEach(stage -> single.or(stage.offered()));
        groups.forEach(single::andNot);
        single.stream().forEach(spot -> {
            BitSet one = new BitSet();
            one.set(spot);
            all.add(one);
        });
        return all;
    }

    /** @throws SolverMissing where this machine has none */
    public Answer ask(ZeroOneSolver solver, double mostWork) {
        if (terms() > MOST_TERMS) {
            return NOTHING;
        }
        ZeroOneAnswer answer = solver.solve(problem(), mostWork);
        return switch (answer.outcome()) {
            case BEST, FOUND -> new Answer((int) Math.max(0, answer.bound()), answer.cost() == 0);
            case OPEN -> new Answer((int) Math.max(0, answer.bound()), false);
            case IMPOSSIBLE -> throw new IllegalStateException(Outcome.IMPOSSIBLE + ": every day may go without");
        };
    }

    private long terms() {
        long terms = 0;
        for (int from = 0; from < need.stages().size(); from++) {
            if (isWidest(from)) {
                for (int stage = from; stage <= need.lastTogether(from); stage++) {
                    terms += need.stages().get(stage).offered().cardinality();
                }
            }
        }
        return terms;
    }

    private ZeroOneProblem problem() {
        ZeroOneProblem problem = new ZeroOneProblem();
        for (int stage = 0; stage < decisions.length; stage++) {
            BitSet offered = need.stages().get(stage).offered();
            int[] of = new int[offered.length() + 1];
            Arrays.fill(of, -1);
            List<Integer> one = new ArrayList<>();
            for (int spot = offered.nextSetBit(0); spot >= 0; spot = offered.nextSetBit(spot + 1)) {
                of[spot] = problem.decision(0);
                one.add(of[spot]);
            }
            one.add(problem.decision(1));
            problem.exactlyOne(one.stream().mapToInt(Integer::intValue).toArray());
            decisions[stage] = of;
        }
        for (int from = 0; from < decisions.length; from++) {
            if (isWidest(from)) {
                together(problem, from, need.lastTogether(from));
            }
        }
        return problem;
    }

    private boolean isWidest(int from) {
        return from == 0 || need.lastTogether(from) > need.lastTogether(from - 1);
    }

    /** Of some stages, all of which keep apart, one at most has its hole in a group. */
    private void together(ZeroOneProblem problem, int from, int to) {
        for (BitSet group : groups) {
            List<Integer> there = new ArrayList<>();
            for (int stage = from; stage <= to; stage++) {
                int[] of = decisions[stage];
                Stage asked = need.stages().get(stage);
                group.stream().filter(asked.offered()::get).forEach(spot -> there.add(of[spot]));
            }
            if (there.size() > 1) {
                problem.atMostOne(there.stream().mapToInt(Integer::intValue).toArray());
            }
        }
    }
}
