package org.cupwright.holelocation.judging;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenLattice;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Verdict;
import org.cupwright.units.Heading;

/**
 * How far off a position the hole may be cut and still be as good, and on which side there is more room.
 *
 * <p>Taken from the verdicts of the green's lattice: no spot within the distance is worse than the position, in steps
 * of the lattice. Ground off the green is worse, and so is a gap in the survey.
 *
 * @param metres anywhere within this is as good; 0 where a neighbouring spot is worse already, at most
 *     {@link #FARTHEST_METRES}
 * @param moreRoom the middle of the quarter of the compass in which the nearest worse spot is farthest, of several the
 *     one with the most room to both sides; empty where no quarter has at least a cell more than the position has all
 *     round
 */
public record GoodWithin(double metres, Optional<Heading> moreRoom) {
    /** Nobody is told to look further: our choice. */
    public static final double FARTHEST_METRES = 5;

    private static final int QUARTERS = 8;

    /** The middle of every quarter: they overlap by half. */
    private static final List<Heading> MIDDLES = IntStream.range(0, QUARTERS)
            .mapToObj(quarter -> Heading.ofDegrees(360.0 * quarter / QUARTERS))
            .toList();

    private static final double[] MIDDLES_EAST =
            MIDDLES.stream().mapToDouble(Heading::east).toArray();
    private static final double[] MIDDLES_NORTH =
            MIDDLES.stream().mapToDouble(Heading::north).toArray();

    /** @throws IllegalArgumentException if the position was not judged on this green, or fails */
    public static GoodWithin of(Judgement position, GreenJudgement green) {
        double metres = metres(position, green);
        double[] room = new double[QUARTERS];
        Arrays.fill(room, FARTHEST_METRES);
        GreenLattice lattice = green.lattice();
        MapPoint at = position.position();
        int reach = (int) Math.ceil(FARTHEST_METRES / GreenLattice.CELL_METRES) + 1;
        long column = Math.round(lattice.columnOf(at.east()));
        long row = Math.round(lattice.rowOf(at.north()));
        for (long r = row - reach; r <= row + reach; r++) {
            for (long c = column - reach; c <= column + reach; c++) {
                double east = (lattice.westCount() + c) * GreenLattice.CELL_METRES - at.east();
                double north = (lattice.southCount() + r) * GreenLattice.CELL_METRES - at.north();
                double distance = Math.sqrt(east * east + north * north);
                if (distance < FARTHEST_METRES && worse(position.verdict(), green, c, r)) {
                    narrow(room, east, north, distance);
                }
            }
        }
        return new GoodWithin(metres, mostRoom(room, metres));
    }

    /**
     * The distance alone, which is found by looking no farther than the nearest worse spot.
     *
     * @throws IllegalArgumentException if the position was not judged on this green, or fails
     */
    public static double metres(Judgement position, GreenJudgement green) {
        if (!CellVerdicts.good(position.verdict())) {
            throw new IllegalArgumentException("nothing about " + position.position() + " is as good as it: "
                    + position.verdict() + ". Maybe ask about a position that does not fail.");
        }
        GreenLattice lattice = green.lattice();
        MapPoint at = position.position();
        long column = Math.round(lattice.columnOf(at.east()));
        long row = Math.round(lattice.rowOf(at.north()));
        double nearest = FARTHEST_METRES;
        for (int ring = 0; (ring - 1) * GreenLattice.CELL_METRES < nearest; ring++) {
            for (long r = row - ring; r <= row + ring; r++) {
                int step = Math.abs(r - row) == ring ? 1 : 2 * ring;
                for (long c = column - ring; c <= column + ring; c += step) {
                    double east = (lattice.westCount() + c) * GreenLattice.CELL_METRES - at.east();
                    double north = (lattice.southCount() + r) * GreenLattice.CELL_METRES - at.north();
                    double distance = Math.sqrt(east * east + north * north);
                    if (distance < nearest && worse(position.verdict(), green, c, r)) {
                        nearest = distance;
                    }
                }
            }
        }
        return floorToCells(nearest);
    }

    private static boolean worse(Verdict verdict, GreenJudgement green, long column, long row) {
        GreenLattice lattice = green.lattice();
        boolean outside = column < 0 || row < 0 || column >= lattice.columns() || row >= lattice.rows();
        return outside || green.isWorse((int) (row * lattice.columns() + column), verdict);
    }

    /** A worse spot bounds the room of every quarter of the compass that it lies in. */
    private static void narrow(double[] room, double east, double north, double distance) {
        for (int quarter = 0; quarter < QUARTERS; quarter++) {
            double ahead = east * MIDDLES_EAST[quarter] + north * MIDDLES_NORTH[quarter];
            if (ahead >= distance * Math.sqrt(0.5) - 1e-9) {
                room[quarter] = Math.min(room[quarter], distance);
            }
        }
    }

    /** The nearest worse spot itself is no longer good. */
    private static double floorToCells(double nearest) {
        if (nearest >= FARTHEST_METRES) {
            return FARTHEST_METRES;
        }
        double cells = Math.ceil(nearest / GreenLattice.CELL_METRES - 1e-9) - 1;
        return Math.max(0, cells) * GreenLattice.CELL_METRES;
    }

    private static Optional<Heading> mostRoom(double[] room, double metres) {
        int best = IntStream.range(0, QUARTERS)
                .boxed()
                .max(Comparator.<Integer>comparingDouble(quarter -> room[quarter])
                        .thenComparingDouble(
                                quarter -> room[(quarter + 7) % QUARTERS] + room[(quarter + 1) % QUARTERS]))
                .orElseThrow();
        return floorToCells(room[best]) >= metres + GreenLattice.CELL_METRES
                ? Optional.of(MIDDLES.get(best))
                : Optional.empty();
    }
}
