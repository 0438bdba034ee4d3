package org.cupwright.rotation.shortage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Looks for a plan that keeps one green's holes off resting ground, which shows that there is one: spots are packed
 * closely, and each hole gets one of them, earlier ones making way where they can. Spots of a packing are all far
 * enough apart, so only holes on the same spot can be too near; where all rest together, that is a matching of holes
 * and spots, which augmenting paths find if there is one for the packing. What is not found is not thereby proved to be
 * missing.
 */
public final class PackedDays {
    /** Packings that are tried: our choice, some tenths of a second. */
    private static final int PACKINGS = 8;

    private static final int NOWHERE = -1;

    private final GroundNeed need;
    private final Packing packing;

    public PackedDays(GroundNeed need, Packing packing) {
        this.need = need;
        this.packing = packing;
    }

    /** Whether a plan was found that has no hole on resting ground. */
    public boolean found() {
        SplittableRandom draw = new SplittableRandom(1);
        BitSet spots = need.offered(0, need.stages().size() - 1);
        for (int tried = 0; tried < PACKINGS; tried++) {
            if (new HandedOut(packing.closer(spots, new BitSet(), draw)).toAll()) {
                return true;
            }
        }
        return false;
    }

    /** The spots of one packing, given to holes. */
    private final class HandedOut {
        private final BitSet packed;

        /** By stage, its spot. */
        private final int[] spotOf = new int[need.stages().size()];

        HandedOut(BitSet packed) {
            this.packed = packed;
            Arrays.fill(spotOf, NOWHERE);
        }

        boolean toAll() {
            for (int stage = 0; stage < spotOf.length; stage++) {
                if (!place(stage, new BitSet())) {
                    return false;
                }
            }
            return true;
        }

        /** Gives a hole a free spot, or one whose holder finds another. */
        private boolean place(int stage, BitSet tried) {
            BitSet open = (BitSet) need.stages().get(stage).offered().clone();
            open.and(packed);
            open.andNot(tried);
            for (int spot = open.nextSetBit(0); spot >= 0; spot = open.nextSetBit(spot + 1)) {
                if (holders(spot, stage).isEmpty()) {
                    spotOf[stage] = spot;
                    return true;
                }
            }
            for (int spot = open.nextSetBit(0); spot >= 0; spot = open.nextSetBit(spot + 1)) {
                List<Integer> holders = holders(spot, stage);
                if (holders.size() == 1 && !tried.get(spot)) {
                    tried.set(spot);
                    if (place(holders.get(0), tried)) {
                        spotOf[stage] = spot;
                        return true;
                    }
                }
            }
            return false;
        }

        /** The holes on a spot that are too near in days to go there with another one. */
        private List<Integer> holders(int spot, int stage) {
            List<Integer> holders = new ArrayList<>();
            for (int other = 0; other < spotOf.length; other++) {
                if (other != stage && spotOf[other] == spot && together(other, stage)) {
                    holders.add(other);
                }
            }
            return holders;
        }

        private boolean together(int one, int other) {
            return need.lastTogether(Math.min(one, other)) >= Math.max(one, other);
        }
    }
}
