package org.cupwright.rotation.exact;

import java.util.BitSet;

/**
 * What came of a problem.
 *
 * @param outcome how sure it is
 * @param yes the decisions that are yes; none where there is no answer
 * @param cost what they cost together; 0 where there is no answer
 * @param bound no answer costs less than this; as good as the cost where the answer is the best
 */
public record ZeroOneAnswer(Outcome outcome, BitSet yes, long cost, long bound) {
    public ZeroOneAnswer {
        yes = (BitSet) yes.clone();
    }

    /** How sure an answer is. */
    public enum Outcome {
        /** There is none cheaper: proved. */
        BEST,
        /** An answer, but perhaps a cheaper one was not found. */
        FOUND,
        /** There is none: proved. */
        IMPOSSIBLE,
        /** Neither an answer nor a proof that there is none, within the work allowed. */
        OPEN
    }

    @Override
    public BitSet yes() {
        return (BitSet) yes.clone();
    }

    public boolean found() {
        return outcome == Outcome.BEST || outcome == Outcome.FOUND;
    }
}
