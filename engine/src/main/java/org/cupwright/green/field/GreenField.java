package org.cupwright.green.field;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.GreenLattice;

/** A value at every second spot of a green's lattice; NaN off the green and where there is none. */
public final class GreenField {
    /** Half a metre, as the surfaces' knots (our choice). */
    private static final int EVERY = 2;

    private static final double STEP_METRES = EVERY * GreenLattice.CELL_METRES;

    private final Outline green;
    private final GreenLattice lattice;
    private final int columns;
    private final int rows;
    private final double[] values;

    public GreenField(Outline green, ToDoubleFunction<MapPoint> value) {
        this.green = green;
        this.lattice = GreenLattice.over(green, 0);
        this.columns = (lattice.columns() + EVERY - 1) / EVERY;
        this.rows = (lattice.rows() + EVERY - 1) / EVERY;
        this.values = IntStream.range(0, columns * rows)
                .mapToObj(this::spot)
                .mapToDouble(spot -> green.contains(spot) ? value.applyAsDouble(spot) : Double.NaN)
                .toArray();
    }

    private MapPoint spot(int i) {
        return new MapPoint(lattice.east(EVERY * (i % columns)), lattice.north(EVERY * (i / columns)));
    }

    /** The value that a share of the green's known spots does not exceed; NaN where nothing is known. */
    public double quantile(double share) {
        double[] known = Arrays.stream(values)
                .filter(value -> !Double.isNaN(value))
                .sorted()
                .toArray();
        return known.length == 0 ? Double.NaN : known[(int) (share * (known.length - 1))];
    }

    /** The parts of the green, each hanging together, where the value is above a limit; the largest first. */
    public List<GroundArea> areasAbove(double limit) {
        BitSet left = new BitSet(values.length);
        IntStream.range(0, values.length).filter(i -> values[i] > limit).forEach(left::set);
        List<GroundArea> areas = new ArrayList<>();
        for (int first = left.nextSetBit(0); first >= 0; first = left.nextSetBit(first + 1)) {
            areas.add(area(together(first, left)));
        }
        areas.removeIf(area -> area.shape().isEmpty());
        areas.sort(Comparator.comparingDouble(GroundArea::squareMetres).reversed());
        return areas;
    }

    /** All ground where the value is above a limit as one part, in one or many pieces. */
    public GroundArea allAbove(double limit) {
        return area(IntStream.range(0, values.length)
                .filter(i -> values[i] > limit)
                .boxed()
                .toList());
    }

    private GroundArea area(List<Integer> spots) {
        double greatest = spots.stream().mapToDouble(i -> values[i]).max().orElse(Double.NaN);
        return GroundArea.of(green, spots.stream().map(this::spot).toList(), STEP_METRES, greatest);
    }

    /** Takes out of the set a spot and all that hang together with it side by side. */
    private List<Integer> together(int first, BitSet left) {
        List<Integer> spots = new ArrayList<>();
        Deque<Integer> next = new ArrayDeque<>(List.of(first));
        left.clear(first);
        while (!next.isEmpty()) {
            int at = next.pop();
            spots.add(at);
            for (int beside : beside(at)) {
                if (left.get(beside)) {
                    left.clear(beside);
                    next.push(beside);
                }
            }
        }
        return spots;
    }

    /** Numbers beyond the last row may be among them: no set of spots holds them. */
    private int[] beside(int at) {
        int column = at % columns;
        return IntStream.of(column > 0 ? at - 1 : -1, column < columns - 1 ? at + 1 : -1, at - columns, at + columns)
                .filter(i -> i >= 0)
                .toArray();
    }
}
