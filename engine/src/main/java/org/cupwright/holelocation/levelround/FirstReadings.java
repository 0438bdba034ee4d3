package org.cupwright.holelocation.levelround;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.Third;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GreenJudgement;

/**
 * Where to lay the level on a green that has no survey: spots on which a hole may go as far as is known, spread over
 * front, middle and back and far from each other, from readings already taken and from the edge.
 *
 * <p>Such a reading speaks for its own short reach and no more, so what a round is expected to decide is the ground in
 * its reach.
 */
public final class FirstReadings {
    /** Nearer to another reading than this a spot tells little that is new, m (our choice: two and a half reaches). */
    private static final double APART_METRES = 1.5;

    private static final double CELL_SQUARE_METRES = GreenLattice.CELL_METRES * GreenLattice.CELL_METRES;

    private final GreenJudgement green;
    private final Optional<GreenFrame> frame;
    private final double reachMetres;
    private final List<MapPoint> read;
    private final List<MapPoint> open = new ArrayList<>();

    /**
     * @param green the green as it was judged
     * @param frame its frame; empty without a line of play
     * @param read where the level was laid already
     * @param reachMetres how far a reading is taken to hold
     */
    public FirstReadings(GreenJudgement green, Optional<GreenFrame> frame, List<MapPoint> read, double reachMetres) {
        this.green = green;
        this.frame = frame;
        this.reachMetres = reachMetres;
        this.read = List.copyOf(read);
        GreenLattice lattice = green.lattice();
        for (int cell = 0; cell < lattice.size(); cell++) {
            MapPoint at = lattice.spot(cell);
            if (mayHaveAHole(cell) && read.stream().noneMatch(other -> other.distanceMetres(at) <= reachMetres)) {
                open.add(at);
            }
        }
    }

    private boolean mayHaveAHole(int cell) {
        return green.findVerdict(cell)
                .filter(verdict -> verdict == Verdict.PASS || verdict == Verdict.CAUTION)
                .isPresent();
    }

    /** A round of so many readings at most. */
    public LevelRound round(int spots) {
        List<MapPoint> chosen = new ArrayList<>();
        Optional<MapPoint> next = next(chosen);
        while (chosen.size() < spots && next.isPresent()) {
            chosen.add(next.get());
            next = next(chosen);
        }
        List<RoundSpot> all = chosen.stream().map(this::spot).toList();
        double expected =
                all.stream().mapToDouble(RoundSpot::expectedSquareMetres).sum();
        return new LevelRound(Walk.over(all, this::forward), CELL_SQUARE_METRES * open.size(), expected);
    }

    private double forward(MapPoint point) {
        return frame.map(known -> known.forwardMetres(point)).orElse(point.north());
    }

    /** The open spot with most room in the third that has fewest readings; of equal thirds the foremost. */
    private Optional<MapPoint> next(List<MapPoint> chosen) {
        Map<Third, Integer> readings = new EnumMap<>(Third.class);
        read.forEach(at -> third(at).ifPresent(third -> readings.merge(third, 1, Integer::sum)));
        chosen.forEach(at -> third(at).ifPresent(third -> readings.merge(third, 1, Integer::sum)));
        return open.stream()
                .filter(at -> room(at, chosen) >= APART_METRES)
                .min(Comparator.comparingInt((MapPoint at) -> third(at)
                                .map(third -> readings.getOrDefault(third, 0))
                                .orElse(0))
                        .thenComparing(at -> third(at).map(Third::ordinal).orElse(0))
                        .thenComparingDouble(at -> -room(at, chosen)));
    }

    private Optional<Third> third(MapPoint at) {
        boolean onGreen = green.green().hole().green().contains(at);
        return frame.filter(known -> onGreen).map(known -> known.place(at).third());
    }

    /**
     * How far off the nearest reading is, or twice how far the edge: a reading close to the edge is rarely a hole's.
     */
    private double room(MapPoint at, List<MapPoint> chosen) {
        double room = 2 * green.green().hole().green().distanceToEdgeMetres(at);
        for (MapPoint other : read) {
            room = Math.min(room, other.distanceMetres(at));
        }
        for (MapPoint other : chosen) {
            room = Math.min(room, other.distanceMetres(at));
        }
        return room;
    }

    /** Spots lie more than two reaches apart, so what each reaches can be added up. */
    private RoundSpot spot(MapPoint at) {
        long reached = open.stream()
                .filter(other -> other.distanceMetres(at) <= reachMetres)
                .count();
        return new RoundSpot(at, frame.map(known -> known.place(at)), Optional.empty(), CELL_SQUARE_METRES * reached);
    }
}
