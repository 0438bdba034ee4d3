package org.cupwright.rotation.shortage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.cupwright.course.MapPoint;
import org.cupwright.rotation.exact.ZeroOneAnswer;
import org.cupwright.rotation.exact.ZeroOneProblem;
import org.cupwright.rotation.exact.ZeroOneSolver;
import org.cupwright.rotation.exact.ZeroOneSolver.SolverMissing;

/**
 * How many of some spots can have holes that are all at least so far from each other.
 *
 * <p>Of spots that all are too near to each other one has a hole at most. However the spots are shared out among such
 * groups, there are no more holes than groups: that is counted. A solver, where there is one, comes nearer, as it may
 * use all groups at once. Remembers what it was asked; not safe for use by several threads.
 */
public final class Packing {
    /**
     * A most, and how it is known.
     *
     * @param holes no more fit
     * @param solved whether the solver proved it; else it was counted
     */
    public record Most(int holes, boolean solved) {}

    /** Of closer packing: our choice, some hundredths of a second. */
    private static final int ROUNDS = 200;

    /** Closer packing hardly ever finds so many times as many: our choice, by trying. */
    private static final double CLOSER_BY = 1.25;

    private final BitSet[] near;
    private final Optional<ZeroOneSolver> solver;
    private final double mostWork;
    private final List<BitSet> groups = new ArrayList<>();
    private final Map<BitSet, Integer> counted = new HashMap<>();
    private final Map<BitSet, Integer> solved = new LinkedHashMap<>();
    private final Map<BitSet, Integer> fitting = new HashMap<>();

    /** The spots that were packed closely. */
    private final Set<BitSet> closely = new HashSet<>();

    /**
     * @param metres spots nearer than this do not both have a hole
     * @param mostWork of the solver for each question, in its unit
     */
    public Packing(List<MapPoint> spots, double metres, Optional<ZeroOneSolver> solver, double mostWork) {
        this.near = new BitSet[spots.size()];
        this.solver = solver;
        this.mostWork = mostWork;
        for (int i = 0; i < near.length; i++) {
            near[i] = new BitSet(near.length);
            for (int j = 0; j < near.length; j++) {
                near[i].set(j, spots.get(i).distanceMetres(spots.get(j)) < metres);
            }
        }
    }

    /** No more holes than this fit on some spots: counted, or solved for these or for more spots. */
    public Most most(BitSet spots) {
        Most most = new Most(counted.computeIfAbsent((BitSet) spots.clone(), this::groupsFor), false);
        for (Map.Entry<BitSet, Integer> known : solved.entrySet()) {
            BitSet further = (BitSet) spots.clone();
            further.andNot(known.getKey());
            if (further.isEmpty() && known.getValue() < most.holes()) {
                most = new Most(known.getValue(), true);
            }
        }
        return most;
    }

    /** So many of some spots do fit: taken one after another, each next to those before it. */
    public int fit(BitSet spots) {
        return fitting.computeIfAbsent(
                (BitSet) spots.clone(),
                asked -> fitting(asked, new SplittableRandom(1)).cardinality());
    }

    /** Spots that do fit: always one that takes fewest others away; the draw decides between such. */
    public BitSet fitting(BitSet spots, SplittableRandom draw) {
        BitSet left = (BitSet) spots.clone();
        BitSet fitting = new BitSet();
        while (!left.isEmpty()) {
            int next = fewestNear(left, draw);
            left.andNot(near[next]);
            fitting.set(next);
        }
        return fitting;
    }

    /**
     * The same, more closely, about holes that are where they are.
     *
     * @param kept spots that are all far enough apart; they are among the answer
     */
    public BitSet closer(BitSet spots, BitSet kept, SplittableRandom draw) {
        BitSet open = (BitSet) spots.clone();
        kept.stream().forEach(spot -> open.andNot(near[spot]));
        BitSet packed = new CloserPacking(near, open, draw).pack(fitting(open, draw), ROUNDS);
        packed.or(kept);
        return packed;
    }

    /** Of some spots those that are all far enough apart, the first before the others. */
    public BitSet apart(int[] spots) {
        BitSet apart = new BitSet();
        for (int spot : spots) {
            if (!apart.intersects(near[spot])) {
                apart.set(spot);
            }
        }
        return apart;
    }

    /** Whether so many of some spots surely fit: by the quick way, and by the closer where it is not far from it. */
    boolean fits(BitSet spots, int holes) {
        int quick = fit(spots);
        if (quick < holes && quick * CLOSER_BY >= holes && closely.add((BitSet) spots.clone())) {
            quick = closer(spots, new BitSet(), new SplittableRandom(1)).cardinality();
            fitting.merge((BitSet) spots.clone(), quick, Math::max);
        }
        return fit(spots) >= holes;
    }

    private int fewestNear(BitSet left, SplittableRandom draw) {
        int best = -1;
        int fewest = Integer.MAX_VALUE;
        int alike = 0;
        for (int spot = left.nextSetBit(0); spot >= 0; spot = left.nextSetBit(spot + 1)) {
            int count = both(near[spot], left).cardinality();
            if (count > fewest) {
                continue;
            }
            alike = count == fewest ? alike + 1 : 1;
            fewest = count;
            best = draw.nextInt(alike) == 0 ? spot : best;
        }
        return best;
    }

    /** Always the spot with the fewest near ones first, as it has least choice, with as many others as go together. */
    private int groupsFor(BitSet spots) {
        BitSet left = (BitSet) spots.clone();
        SplittableRandom draw = new SplittableRandom(1);
        int groupCount = 0;
        while (!left.isEmpty()) {
            left.andNot(grown(fewestNear(left, draw), left));
            groupCount++;
        }
        return groupCount;
    }

    /** A group about a spot: always the one that leaves most others to choose from. */
    private BitSet grown(int first, BitSet among) {
        BitSet group = new BitSet();
        group.set(first);
        BitSet open = both(near[first], among);
        open.clear(first);
        while (!open.isEmpty()) {
            int best = -1;
            int most = -1;
            for (int spot = open.nextSetBit(0); spot >= 0; spot = open.nextSetBit(spot + 1)) {
                int left = both(near[spot], open).cardinality();
                if (left > most) {
                    most = left;
                    best = spot;
                }
            }
            group.set(best);
            open.and(near[best]);
            open.clear(best);
        }
        return group;
    }

    /** Groups of spots that all are too near to each other, so that any two that are stand together in one. */
    public List<BitSet> groups() {
        if (groups.isEmpty()) {
            coverEveryPair();
        }
        return List.copyOf(groups);
    }

    private void coverEveryPair() {
        BitSet[] open = new BitSet[near.length];
        for (int spot = 0; spot < near.length; spot++) {
            open[spot] = (BitSet) near[spot].clone();
            open[spot].clear(spot);
        }
        for (int spot = 0; spot < near.length; spot++) {
            while (!open[spot].isEmpty()) {
                // The other one of the pair is near to all that may join, so it always does.
                BitSet group = grown(spot, near[open[spot].nextSetBit(0)]);
                group.stream().forEach(one -> open[one].andNot(group));
                groups.add(group);
            }
        }
    }

    private static BitSet both(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.and(other);
        return both;
    }

    /** Has the solver look how many fit on some spots; where there is none, nothing more is known. */
    void solve(BitSet spots) {
        if (solver.isEmpty() || solved.containsKey(spots)) {
            return;
        }
        try {
            // The fewest spots without a hole: no answer has fewer than the bound.
            ZeroOneAnswer answer = solver.get().solve(problem(spots), mostWork);
            solved.put((BitSet) spots.clone(), spots.cardinality() - (int) Math.max(0, answer.bound()));
        } catch (SolverMissing missing) {
            solved.put((BitSet) spots.clone(), spots.cardinality());
        }
    }

    private ZeroOneProblem problem(BitSet spots) {
        ZeroOneProblem problem = new ZeroOneProblem();
        int[] decisions = new int[near.length];
        spots.stream().forEach(spot -> {
            int hole = problem.decision(0);
            problem.exactlyOne(hole, problem.decision(1));
            decisions[spot] = hole;
        });
        for (BitSet group : groups()) {
            BitSet there = both(group, spots);
            if (there.cardinality() > 1) {
                problem.atMostOne(there.stream().map(spot -> decisions[spot]).toArray());
            }
        }
        return problem;
    }
}
