package org.cupwright.holelocation.judging;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenLattice;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Verdict;

/** Where else a hole may go when a position has no room about it: the nearest spot that has. */
public final class SpotWithRoom {
    private SpotWithRoom() {}

    /**
     * The spot of the green's lattice nearest to a position that is no worse and has at least so much room about it, as
     * {@link GoodWithin} counts it; of several as near the one farther south, then west.
     *
     * @param metres the room it has to have
     * @param among which spots come into question
     * @return empty where there is none
     */
    public static Optional<MapPoint> nearest(
            Judgement position, GreenJudgement green, double metres, Predicate<MapPoint> among) {
        return nearest(position.position(), position.verdict(), green, metres, among);
    }

    /**
     * The same near any place.
     *
     * @param noWorse the worst verdict that will do, there and in the room about it
     */
    public static Optional<MapPoint> nearest(
            MapPoint place, Verdict noWorse, GreenJudgement green, double metres, Predicate<MapPoint> among) {
        GreenLattice lattice = green.lattice();
        return IntStream.range(0, lattice.size())
                .filter(cell -> !green.isWorse(cell, noWorse))
                .boxed()
                .sorted(Comparator.comparingDouble(cell -> lattice.spot(cell).distanceMetres(place)))
                .filter(cell -> among.test(lattice.spot(cell)))
                .filter(cell -> hasRoom(cell, noWorse, green, metres))
                .findFirst()
                .map(lattice::spot);
    }

    private static boolean hasRoom(int cell, Verdict noWorse, GreenJudgement green, double metres) {
        GreenLattice lattice = green.lattice();
        int reach = (int) Math.ceil(metres / GreenLattice.CELL_METRES - 1e-9);
        int column = cell % lattice.columns();
        int row = cell / lattice.columns();
        for (int r = row - reach; r <= row + reach; r++) {
            for (int c = column - reach; c <= column + reach; c++) {
                boolean near = (r - row) * (r - row) + (c - column) * (c - column) <= reach * reach;
                boolean outside = r < 0 || c < 0 || r >= lattice.rows() || c >= lattice.columns();
                if (near && (outside || green.isWorse(r * lattice.columns() + c, noWorse))) {
                    return false;
                }
            }
        }
        return true;
    }
}
