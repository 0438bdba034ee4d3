package org.cupwright.holelocation.spot;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicLongArray;
import java.util.function.ToDoubleFunction;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenLattice;

/**
 * A distance from any point, worked out once for each spot of a lattice: day after day the same spots of a green are
 * asked.
 *
 * <p>Safe for use by several threads; two that ask for a spot at once may both work it out, to the same number.
 */
public final class LatticeDistances {
    private final GreenLattice lattice;
    private final ToDoubleFunction<MapPoint> metres;
    private final AtomicLongArray known;

    /** @param metres the distance from a point, m; never NaN */
    public LatticeDistances(GreenLattice lattice, ToDoubleFunction<MapPoint> metres) {
        this.lattice = lattice;
        this.metres = metres;
        long[] none = new long[lattice.size()];
        Arrays.fill(none, Double.doubleToRawLongBits(Double.NaN));
        this.known = new AtomicLongArray(none);
    }

    /** The distance from a point, m. */
    public double from(MapPoint at) {
        int cell = lattice.nearest(at);
        if (cell < 0 || !lattice.spot(cell).equals(at)) {
            return metres.applyAsDouble(at);
        }
        double before = Double.longBitsToDouble(known.get(cell));
        if (!Double.isNaN(before)) {
            return before;
        }
        double now = metres.applyAsDouble(at);
        known.set(cell, Double.doubleToRawLongBits(now));
        return now;
    }
}
