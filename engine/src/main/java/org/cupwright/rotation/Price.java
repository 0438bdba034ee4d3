package org.cupwright.rotation;

import java.util.Map;
import org.cupwright.course.MapPoint;

/**
 * Weighted terms as whole numbers, so that sums do not depend on their order and equal requests have equal plans on
 * every machine.
 *
 * <p>The upper bits hold thousandths of a point (our choice: a millimetre of a wish of weight 1); the lower 24 a number
 * drawn from the seed and the position, which decides only between plans whose thousandths are equal.
 */
public final class Price {
    private static final int TIE_BITS = 24;

    /** A hole's draw is below 2^18, so that those of 63 holes together stay below 2^24. */
    private static final int DRAW_BITS = 18;

    private Price() {}

    static long of(double points) {
        return ofThousandths(Math.round(points * 1000));
    }

    public static long ofThousandths(long thousandths) {
        return thousandths << TIE_BITS;
    }

    static long points(Map<Term, Double> terms, Aims aims) {
        double points = 0;
        for (Map.Entry<Term, Double> term : terms.entrySet()) {
            points += term.getValue() * aims.weight(term.getKey());
        }
        return of(points);
    }

    /** The price of the terms of the whole day. */
    public static long ofDay(long tally, Aims aims) {
        double points = 0;
        for (Term term : Term.values()) {
            points += aims.ofDay(term, tally) * aims.weight(term);
        }
        return of(points);
    }

    /** The position's number in the draw that the seed makes. */
    static long draw(long seed, String hole, MapPoint at) {
        long mixed = mix(seed + 0x9E3779B97F4A7C15L * hole.hashCode());
        mixed = mix(mixed ^ Double.doubleToLongBits(at.east()));
        mixed = mix(mixed ^ Double.doubleToLongBits(at.north()));
        return mixed >>> (Long.SIZE - DRAW_BITS);
    }

    /** The finishing step of SplitMix64 (Steele, Lea and Flood, OOPSLA 2014; constants recalled). */
    static long mix(long value) {
        long mixed = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }
}
