package org.cupwright.holelocation.spot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.cupwright.green.ContourLines;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.ScalarGrid;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.MultiLineString;

/**
 * The part of a green that is steeper than a limit, and how far it is to there.
 *
 * <p>Its border is the line of equal slope through the green's spots ({@link ContourLines}); the distance to that line
 * is exact. Steep spots beside unknown ground or the outline, where the line is open, count by themselves.
 */
public final class SteepGround {
    private final double limit;
    private final ToDoubleFunction<SpotGround> measure;
    private final LatticeDistances fromBorders;

    /**
     * @param measure the slope that counts: as estimated, or what it certainly or possibly is
     * @param limit steeper than this is steep, rise over run
     */
    public SteepGround(SpotGrid grid, ToDoubleFunction<SpotGround> measure, double limit) {
        this.measure = measure;
        this.limit = limit;
        List<Coordinate[]> borders = new ArrayList<>();
        ScalarGrid slopes = slopes(grid, measure);
        MultiLineString lines = ContourLines.at(limit, slopes);
        for (int i = 0; i < lines.getNumGeometries(); i++) {
            borders.add(lines.getGeometryN(i).getCoordinates());
        }
        for (int row = 0; row < slopes.rows(); row++) {
            for (int column = 0; column < slopes.columns(); column++) {
                if (slopes.value(column, row) > limit && besideUnknown(slopes, column, row)) {
                    borders.add(new Coordinate[] {new Coordinate(slopes.east(column), slopes.north(row))});
                }
            }
        }
        this.fromBorders = new LatticeDistances(grid.lattice(), new NearestBorder(borders)::metresFrom);
    }

    private static ScalarGrid slopes(SpotGrid grid, ToDoubleFunction<SpotGround> measure) {
        GreenLattice lattice = grid.lattice();
        double[] values = new double[lattice.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = grid.find(i % lattice.columns(), i / lattice.columns())
                    .map(measure::applyAsDouble)
                    .orElse(Double.NaN);
        }
        return new ScalarGrid(
                lattice.east(0), lattice.north(0), GreenLattice.CELL_METRES, lattice.columns(), lattice.rows(), values);
    }

    private static boolean besideUnknown(ScalarGrid slopes, int column, int row) {
        for (int r = row - 1; r <= row + 1; r++) {
            for (int c = column - 1; c <= column + 1; c++) {
                boolean outside = c < 0 || r < 0 || c >= slopes.columns() || r >= slopes.rows();
                if (outside || Double.isNaN(slopes.value(c, r))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Distance to the nearest steep ground, m: 0 in it, infinite where the green has none. */
    public double metresFrom(SpotGround spot) {
        return measure.applyAsDouble(spot) > limit ? 0 : fromBorders.from(spot.at());
    }
}
