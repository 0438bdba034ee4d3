package org.cupwright.green;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/**
 * The edge of a green as straight pieces in the green's own frame, cut by lines parallel to one of its axes.
 *
 * <p>A line has a fixed {@code across} and runs along the {@code along} axis. Where it leaves the green and comes back
 * there is one {@link Chord} a piece. A line through a corner counts as the line just beside it, so pieces always come
 * in whole.
 */
final class EdgeScan {
    /**
     * How far a point of the edge may seem to lie off it through rounding, m: our choice, far below what a tape can
     * tell.
     */
    static final double ROUNDING_METRES = 1e-6;

    private final Segment[] segments;

    /** @param rings closed rings, x the across value, y the along value */
    EdgeScan(List<Coordinate[]> rings) {
        List<Segment> all = new ArrayList<>();
        for (Coordinate[] ring : rings) {
            for (int i = 1; i < ring.length; i++) {
                all.add(new Segment(ring[i - 1].x, ring[i - 1].y, ring[i].x, ring[i].y));
            }
        }
        segments = all.toArray(Segment[]::new);
    }

    /** The pieces of the line that lie on the green, in order. */
    List<Chord> pieces(double across) {
        double[] crossings = Arrays.stream(segments)
                .filter(segment -> segment.isCrossedAt(across))
                .mapToDouble(segment -> segment.alongAt(across))
                .sorted()
                .toArray();
        List<Chord> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.length; i += 2) {
            pieces.add(new Chord(crossings[i], crossings[i + 1]));
        }
        return pieces;
    }

    /** The piece that holds a point of the green; of no length where the point is the green's outermost corner. */
    Chord holding(double across, double along) {
        for (double beside : new double[] {0, ROUNDING_METRES, -ROUNDING_METRES}) {
            Optional<Chord> nearest = nearest(pieces(across + beside), along);
            if (nearest.isPresent() && nearest.get().outside(along) <= ROUNDING_METRES) {
                return nearest.get();
            }
        }
        return new Chord(along, along);
    }

    private static Optional<Chord> nearest(List<Chord> pieces, double along) {
        return pieces.stream().min((a, b) -> Double.compare(a.outside(along), b.outside(along)));
    }

    /**
     * The edge's straight pieces; those that run along a line are left out, as no line enters or leaves through them.
     */
    List<Segment> crossable() {
        return Arrays.stream(segments)
                .filter(segment -> segment.across1 != segment.across2)
                .toList();
    }

    /** A straight piece of the edge. */
    record Segment(double across1, double along1, double across2, double along2) {
        boolean isCrossedAt(double across) {
            return (across1 <= across) != (across2 <= across);
        }

        double alongAt(double across) {
            return along1 + (across - across1) * (along2 - along1) / (across2 - across1);
        }

        Segment shiftedAlong(double by) {
            return new Segment(across1, along1 + by, across2, along2 + by);
        }

        /** The same piece with the axes changed over. */
        Segment turned() {
            return new Segment(along1, across1, along2, across2);
        }
    }
}
