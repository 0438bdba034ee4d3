package org.cupwright.rotation.shortage;

import java.util.BitSet;
import java.util.SplittableRandom;

/**
 * Packs more holes onto a green than one after another can: where one makes way for two it does, and now and then one
 * that stands in the way of others is put among them all the same. Iterated local search for independent sets (Andrade,
 * Resende and Werneck, Journal of Heuristics 18, 2012), without its tuning.
 */
final class CloserPacking {
    private final BitSet[] near;
    private final BitSet spots;
    private final SplittableRandom draw;

    /** By spot, how many holes of the packing are too near to it, its own among them. */
    private final int[] tight;

    private BitSet holes = new BitSet();

    /**
     * @param near by spot, those too near to it, itself among them
     * @param spots those that may have holes
     */
    CloserPacking(BitSet[] near, BitSet spots, SplittableRandom draw) {
        this.near = near;
        this.spots = spots;
        this.draw = draw;
        this.tight = new int[near.length];
    }

    /**
     * The best of so many rounds.
     *
     * @param from holes that are all far enough apart
     */
    BitSet pack(BitSet from, int rounds) {
        from.stream().forEach(this::put);
        improve();
        BitSet best = (BitSet) holes.clone();
        int[] order = spots.stream().toArray();
        for (int round = 0; round < rounds && order.length > 0; round++) {
            force(order[draw.nextInt(order.length)]);
            improve();
            if (holes.cardinality() > best.cardinality()) {
                best = (BitSet) holes.clone();
            } else if (holes.cardinality() < best.cardinality()) {
                back(best);
            } else {
                best = (BitSet) holes.clone(); // as many in other places: on from there
            }
        }
        return best;
    }

    private void put(int spot) {
        holes.set(spot);
        near[spot].stream().forEach(one -> tight[one]++);
    }

    private void take(int spot) {
        holes.clear(spot);
        near[spot].stream().forEach(one -> tight[one]--);
    }

    private void back(BitSet to) {
        BitSet now = (BitSet) holes.clone();
        now.andNot(to);
        now.stream().forEach(this::take);
        BitSet missing = (BitSet) to.clone();
        missing.andNot(holes);
        missing.stream().forEach(this::put);
    }

    private void force(int spot) {
        if (!holes.get(spot)) {
            BitSet inTheWay = (BitSet) holes.clone();
            inTheWay.and(near[spot]);
            inTheWay.stream().forEach(this::take);
            put(spot);
        }
    }

    private void improve() {
        fill();
        boolean better = true;
        while (better) {
            better = false;
            for (int hole = holes.nextSetBit(0); hole >= 0 && !better; hole = holes.nextSetBit(hole + 1)) {
                better = twoForOne(hole);
            }
            fill();
        }
    }

    private void fill() {
        for (int spot = spots.nextSetBit(0); spot >= 0; spot = spots.nextSetBit(spot + 1)) {
            if (tight[spot] == 0) {
                put(spot);
            }
        }
    }

    /** Two spots in place of one, which alone was in their way. */
    private boolean twoForOne(int hole) {
        BitSet onlyHere = new BitSet();
        for (int spot = near[hole].nextSetBit(0); spot >= 0; spot = near[hole].nextSetBit(spot + 1)) {
            onlyHere.set(spot, spot != hole && tight[spot] == 1 && spots.get(spot));
        }
        for (int one = onlyHere.nextSetBit(0); one >= 0; one = onlyHere.nextSetBit(one + 1)) {
            BitSet others = (BitSet) onlyHere.clone();
            others.andNot(near[one]);
            if (!others.isEmpty()) {
                take(hole);
                put(one);
                put(others.nextSetBit(0));
                return true;
            }
        }
        return false;
    }
}
