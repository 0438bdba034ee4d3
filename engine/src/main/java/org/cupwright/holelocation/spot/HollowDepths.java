package org.cupwright.holelocation.spot;

import java.util.Comparator;
import java.util.PriorityQueue;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;

/**
 * How deep water would stand in the closed hollows of a green: the level to which each hollow fills before it runs
 * over.
 *
 * <p>The surface is flooded from its edge inwards, always from the lowest spot reached (priority flood: Barnes, Lehman
 * and Mulla, Computers &amp; Geosciences 62, 2014, recalled), over the quarter-metre lattice and its eight directions.
 * Beyond the outline water counts as gone. A channel narrower than the lattice is not seen.
 */
public final class HollowDepths {
    private final Surface surface;
    private final GreenLattice lattice;
    private final double[] filled;

    private record Reached(int cell, double level) {}

    public HollowDepths(Surface surface, SpotGrid grid) {
        this.surface = surface;
        this.lattice = grid.lattice();
        this.filled = new double[lattice.size()];
        flood(grid);
    }

    private void flood(SpotGrid grid) {
        PriorityQueue<Reached> front =
                new PriorityQueue<>(Comparator.comparingDouble(Reached::level).thenComparingInt(Reached::cell));
        boolean[] seen = new boolean[filled.length];
        for (int cell = 0; cell < filled.length; cell++) {
            if (drains(cell, grid)) {
                filled[cell] = height(lattice.spot(cell));
                seen[cell] = true;
                front.add(new Reached(cell, filled[cell]));
            }
        }
        while (!front.isEmpty()) {
            Reached lowest = front.remove();
            for (int step = 0; step < 9; step++) {
                int column = lowest.cell % lattice.columns() + step % 3 - 1;
                int row = lowest.cell / lattice.columns() + step / 3 - 1;
                boolean outside = column < 0 || row < 0 || column >= lattice.columns() || row >= lattice.rows();
                int cell = row * lattice.columns() + column;
                if (!outside && !seen[cell]) {
                    seen[cell] = true;
                    filled[cell] = Math.max(lowest.level, height(lattice.spot(cell)));
                    front.add(new Reached(cell, filled[cell]));
                }
            }
        }
    }

    /** Whether water leaves the green from a cell: it lies at the outline, or outside. */
    private boolean drains(int cell, SpotGrid grid) {
        for (int step = 0; step < 9; step++) {
            int column = cell % lattice.columns() + step % 3 - 1;
            int row = cell / lattice.columns() + step / 3 - 1;
            if (grid.find(column, row).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private double height(MapPoint at) {
        Jet jet = new Jet();
        surface.at(at.east(), at.north(), jet);
        return jet.z;
    }

    /** Depth of water over a spot when its hollow is full, m; 0 where water runs off. */
    public double metresAt(MapPoint spot) {
        int cell = lattice.nearest(spot);
        boolean inHollow = cell >= 0 && filled[cell] > height(lattice.spot(cell));
        return inHollow ? Math.max(0, filled[cell] - height(spot)) : 0;
    }
}
