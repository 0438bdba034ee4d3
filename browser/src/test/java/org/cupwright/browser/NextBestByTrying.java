package org.cupwright.browser;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GreenLattice;
import org.cupwright.rotation.counting.Parts;
import org.cupwright.units.Paces;

/**
 * The next best spots in place of one, found slowly: each time all spots are tried, and the best of those that are
 * apart from the ones already found is taken. Thirds are the engine's, and so is how even a day is.
 */
final class NextBestByTrying {
    static final double PACE = Paces.STANDARD_METRES;
    private static final List<String> WORST_LAST = List.of("pass", "caution", "fail", "notSurveyed");
    private static final List<String> PLAYS = List.of("easier", "medium", "harder");
    private static final double ROOM_METRES = 0.5; // half a pace, in whole steps of the lattice

    private final MadeLookUp made;
    private final GreenLattice lattice;
    private final GreenFrame frame;

    NextBestByTrying(MadeLookUp made) {
        this.made = made;
        this.lattice = made.lattice();
        this.frame = made.frame();
    }

    /** How good a spot is: verdict, another third, how uneven the day is with it, and how far off; less is better. */
    record Score(int rank, int otherThird, int uneven, double awayMetres) {
        private static final Comparator<Score> ORDER = Comparator.comparingInt(Score::rank)
                .thenComparingInt(Score::otherThird)
                .thenComparingInt(Score::uneven)
                .thenComparingDouble(Score::awayMetres);
    }

    List<Integer> find() {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            IntStream.range(0, lattice.size())
                    .filter(this::fits)
                    .filter(cell -> found.stream()
                            .allMatch(one -> lattice.spot(one).distanceMetres(lattice.spot(cell)) >= 2 * PACE))
                    .boxed()
                    .min(Comparator.comparing(this::score, Score.ORDER))
                    .ifPresent(found::add);
        }
        return found;
    }

    private boolean fits(int cell) {
        String said = made.said().get(cell);
        MapPoint at = lattice.spot(cell);
        double away = at.distanceMetres(made.from());
        return !said.isEmpty()
                && rank(cell) <= 1
                && said.endsWith("|")
                && away >= PACE
                && away <= 10 * PACE
                && made.other()
                        .filter(other -> other.distanceMetres(at) < MadeLookUp.APART_METRES)
                        .isEmpty()
                && hasRoom(cell);
    }

    /** No spot near it is worse, or off the green, or beside the lattice. */
    private boolean hasRoom(int cell) {
        MapPoint at = lattice.spot(cell);
        int steps = (int) Math.round(ROOM_METRES / GreenLattice.CELL_METRES);
        for (int east = -steps; east <= steps; east++) {
            for (int north = -steps; north <= steps; north++) {
                MapPoint beside = new MapPoint(
                        at.east() + east * GreenLattice.CELL_METRES, at.north() + north * GreenLattice.CELL_METRES);
                int other = lattice.nearest(beside);
                boolean near = beside.distanceMetres(at) <= ROOM_METRES + 1e-6;
                if (near && (other < 0 || made.said().get(other).isEmpty() || rank(other) > rank(cell))) {
                    return false;
                }
            }
        }
        return true;
    }

    private int rank(int cell) {
        String word = made.said().get(cell).split("\\|")[0];
        return WORST_LAST.indexOf(word.equals("saidToBeGood") ? "pass" : word);
    }

    Score score(int cell) {
        MapPoint at = lattice.spot(cell);
        int third = frame.place(at).third().ordinal();
        int lateral = frame.place(at).lateral().ordinal();
        int plays = PLAYS.indexOf(made.said().get(cell).split("\\|", -1)[2]);
        int[] part = {third, lateral, plays};
        int uneven = IntStream.range(0, part.length)
                .map(split -> made.shares()
                        .get(split)
                        .map(shares -> shares.holesOff(counts(split, part[split])))
                        .orElse(0))
                .sum();
        int own = frame.place(made.from()).third().ordinal();
        return new Score(rank(cell), third == own ? 0 : 1, uneven, at.distanceMetres(made.from()));
    }

    private Parts counts(int split, int own) {
        int[] counts = new int[3];
        made.parts().stream()
                .mapToInt(part -> part[split])
                .filter(one -> one >= 0)
                .forEach(one -> counts[one]++);
        if (own >= 0) {
            counts[own]++;
        }
        return new Parts(counts[0], counts[1], counts[2]);
    }
}
