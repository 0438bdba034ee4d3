package org.cupwright.green;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.green.EdgeScan.Segment;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;

/**
 * Where two straight pieces meet: a point, or a line where they lie on each other; in the pieces' own axes, x across, y
 * along.
 *
 * <p>Pieces are taken a hair too long, so that nothing falls between two that share a corner.
 */
record Meeting(Coordinate from, Coordinate to) {
    private static final double HAIR = 1e-9;

    Coordinate middle() {
        return new Coordinate((from.x + to.x) / 2, (from.y + to.y) / 2);
    }

    /** Of meetings that lie on each other the longest alone. */
    static List<Meeting> withoutThoseOnOthers(List<Meeting> meetings, double withinMetres) {
        List<Meeting> longestFirst = new ArrayList<>(meetings);
        longestFirst.sort(Comparator.comparingDouble(meeting -> -meeting.from.distance(meeting.to)));
        List<Meeting> kept = new ArrayList<>();
        for (Meeting meeting : longestFirst) {
            if (kept.stream().noneMatch(longer -> longer.covers(meeting, withinMetres))) {
                kept.add(meeting);
            }
        }
        return kept;
    }

    private boolean covers(Meeting other, double withinMetres) {
        return Distance.pointToSegment(other.middle(), from, to) <= withinMetres;
    }

    static Optional<Meeting> of(Segment a, Segment b) {
        double ax = a.across2() - a.across1();
        double ay = a.along2() - a.along1();
        double bx = b.across2() - b.across1();
        double by = b.along2() - b.along1();
        double dx = b.across1() - a.across1();
        double dy = b.along1() - a.along1();
        double cross = ax * by - ay * bx;
        if (cross * cross <= HAIR * HAIR * (ax * ax + ay * ay) * (bx * bx + by * by)) {
            return shared(a, b);
        }
        double onA = (dx * by - dy * bx) / cross;
        double onB = (dx * ay - dy * ax) / cross;
        return within(onA) && within(onB) ? Optional.of(new Meeting(on(a, onA), on(a, onA))) : Optional.empty();
    }

    private static Coordinate on(Segment a, double share) {
        return new Coordinate(
                a.across1() + share * (a.across2() - a.across1()), a.along1() + share * (a.along2() - a.along1()));
    }

    private static boolean within(double share) {
        return share >= -HAIR && share <= 1 + HAIR;
    }

    private static Optional<Meeting> shared(Segment a, Segment b) {
        double ax = a.across2() - a.across1();
        double ay = a.along2() - a.along1();
        double square = ax * ax + ay * ay;
        double apart = Math.abs((b.across1() - a.across1()) * ay - (b.along1() - a.along1()) * ax) / Math.sqrt(square);
        double first = ((b.across1() - a.across1()) * ax + (b.along1() - a.along1()) * ay) / square;
        double last = ((b.across2() - a.across1()) * ax + (b.along2() - a.along1()) * ay) / square;
        double from = Math.max(0, Math.min(first, last));
        double to = Math.min(1, Math.max(first, last));
        if (apart > EdgeScan.ROUNDING_METRES || from > to) {
            return Optional.empty();
        }
        return Optional.of(new Meeting(on(a, from), on(a, to)));
    }
}
