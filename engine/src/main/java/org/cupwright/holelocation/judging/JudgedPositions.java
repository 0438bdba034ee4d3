package org.cupwright.holelocation.judging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.GreenLattice;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.holelocation.rule.JudgedPosition;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.holelocation.spot.SpotMeter;
import org.cupwright.policy.Policy;

/**
 * Puts positions together with the ground about them: the quarter-metre lattice about the position within the policy's distance
 * (0.6 m: 21 spots), as far as it lies within the outline.
 *
 * <p>A position of the green's own lattice takes what was measured there; any other is measured in the same way.
 */
final class JudgedPositions {
    private final Outline outline;
    private final SpotGrid grid;
    private final List<Offset> offsets = new ArrayList<>();

    private record Offset(int columns, int rows) {
        double east() {
            return columns * GreenLattice.CELL_METRES;
        }

        double north() {
            return rows * GreenLattice.CELL_METRES;
        }
    }

    JudgedPositions(Outline outline, SpotGrid grid, Policy policy) {
        this.outline = outline;
        this.grid = grid;
        double reach = policy.get(SlopePolicy.ABOUT_METRES) / GreenLattice.CELL_METRES;
        int far = (int) Math.floor(reach);
        for (int rows = -far; rows <= far; rows++) {
            for (int columns = -far; columns <= far; columns++) {
                if (columns * columns + rows * rows <= reach * reach) {
                    offsets.add(new Offset(columns, rows));
                }
            }
        }
    }

    JudgedPosition cell(int cell) {
        int column = cell % grid.lattice().columns();
        int row = cell / grid.lattice().columns();
        List<SpotGround> about = new ArrayList<>(offsets.size());
        for (Offset offset : offsets) {
            grid.find(column + offset.columns, row + offset.rows).ifPresent(about::add);
        }
        return new JudgedPosition(grid.get(cell), about);
    }

    JudgedPosition at(MapPoint position) {
        Optional<SpotGround> onLattice = grid.findExactly(position);
        return onLattice.isPresent() ? cell(grid.lattice().nearest(position)) : measured(position);
    }

    private JudgedPosition measured(MapPoint position) {
        SpotMeter meter = grid.meter();
        List<SpotGround> about = new ArrayList<>(offsets.size());
        for (Offset offset : offsets) {
            MapPoint spot = new MapPoint(position.east() + offset.east(), position.north() + offset.north());
            if (outline.contains(spot)) {
                about.add(meter.at(spot));
            }
        }
        return new JudgedPosition(meter.at(position), about);
    }
}
