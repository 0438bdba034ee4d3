package org.cupwright.holelocation.levelround;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Green;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.surveyed.SurveyedGround;

/** Every second spot of a green's lattice, as far as it was surveyed, with what is known there. */
final class OpenGround {
    /** Spots of the lattice from one to the next: half a metre, a fraction of what a reading reaches (our choice). */
    static final int EVERY = 2;

    static final double SPACING_METRES = EVERY * GreenLattice.CELL_METRES;

    private final List<OpenSpot> spots = new ArrayList<>();
    private final Map<Long, Integer> byPlace = new HashMap<>();
    private final double westMetres;
    private final double southMetres;

    OpenGround(Green green, SurveyedGround ground, Chances chances) {
        Outline outline = green.hole().green();
        GreenLattice lattice = GreenLattice.over(outline, 0);
        this.westMetres = lattice.east(0);
        this.southMetres = lattice.north(0);
        for (int row = 0; row < lattice.rows(); row += EVERY) {
            for (int column = 0; column < lattice.columns(); column += EVERY) {
                MapPoint at = new MapPoint(lattice.east(column), lattice.north(row));
                Optional<PlaneFit> plane = outline.contains(at) ? ground.planeAt(at) : Optional.empty();
                if (plane.isPresent()) {
                    byPlace.put(key(column / EVERY, row / EVERY), spots.size());
                    spots.add(OpenSpot.of(at, plane.get(), !chances.decided(plane.get())));
                }
            }
        }
    }

    private static long key(long column, long row) {
        return column * 1_000_003L + row;
    }

    private long column(MapPoint at) {
        return Math.round((at.east() - westMetres) / SPACING_METRES);
    }

    private long row(MapPoint at) {
        return Math.round((at.north() - southMetres) / SPACING_METRES);
    }

    List<OpenSpot> spots() {
        return spots;
    }

    OpenSpot spot(int number) {
        return spots.get(number);
    }

    static double squareMetres() {
        return SPACING_METRES * SPACING_METRES;
    }

    double undecidedSquareMetres() {
        return squareMetres() * spots.stream().filter(OpenSpot::undecided).count();
    }

    /** Numbers of the spots within a distance of a point. */
    int[] within(MapPoint at, double metres) {
        long column = column(at);
        long row = row(at);
        long reach = (long) Math.ceil(metres / SPACING_METRES) + 1;
        List<Integer> near = new ArrayList<>();
        for (long r = row - reach; r <= row + reach; r++) {
            for (long c = column - reach; c <= column + reach; c++) {
                Integer number = byPlace.get(key(c, r));
                if (number != null && spots.get(number).at().distanceMetres(at) <= metres + 1e-9) {
                    near.add(number);
                }
            }
        }
        return near.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Whether a spot stands on a square of the chessboard from which readings are chosen. */
    boolean onChessboard(int number) {
        MapPoint at = spots.get(number).at();
        return (column(at) + row(at)) % 2 == 0;
    }
}
