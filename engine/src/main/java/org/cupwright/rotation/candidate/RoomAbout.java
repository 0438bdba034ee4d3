package org.cupwright.rotation.candidate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.cupwright.course.MapPoint;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;

/**
 * How far about a spot the ground is no worse than the spot itself.
 *
 * <p>The distance to the nearest judged spot with a worse verdict, never more than the distance to the edge, nor than
 * {@link #REACH_METRES}. Spots are found by squares of the reach, so that a green of ten thousand takes tens of
 * milliseconds.
 */
final class RoomAbout {
    /** As far as anybody looks: more room than 3 m is no better (our choice). */
    static final double REACH_METRES = 3.0;

    private final Map<Square, List<Judgement>> bySquare = new HashMap<>();

    RoomAbout(List<JudgedSpot> spots) {
        for (JudgedSpot spot : spots) {
            // Good ground is never worse than anything, and most of a green is good.
            if (standing(spot.judgement().verdict()) > 0) {
                Square square = Square.of(spot.judgement().position(), REACH_METRES);
                bySquare.computeIfAbsent(square, key -> new ArrayList<>()).add(spot.judgement());
            }
        }
    }

    double metres(Judgement of) {
        double room = REACH_METRES;
        Square centre = Square.of(of.position(), REACH_METRES);
        for (int i = -1; i <= 1; i++) {
            for (int j = -1; j <= 1; j++) {
                Square near = new Square(centre.east() + i, centre.north() + j);
                room = Math.min(room, nearestWorse(bySquare.getOrDefault(near, List.of()), of));
            }
        }
        return Math.min(room, edgeMetres(of));
    }

    private static double nearestWorse(List<Judgement> others, Judgement of) {
        double nearest = REACH_METRES;
        for (Judgement other : others) {
            if (standing(other.verdict()) > standing(of.verdict())) {
                nearest = Math.min(nearest, other.position().distanceMetres(of.position()));
            }
        }
        return nearest;
    }

    private static double edgeMetres(Judgement of) {
        OptionalDouble edge = of.rules().stream()
                .filter(result -> result.rule() == RuleId.EDGE)
                .findFirst()
                .map(result -> result.value())
                .orElse(OptionalDouble.empty());
        return Math.max(0, edge.orElse(REACH_METRES));
    }

    private static int standing(Verdict verdict) {
        return switch (verdict) {
            case PASS -> 0;
            case CAUTION -> 1;
            case FAIL, NOT_SURVEYED -> 2;
        };
    }

    /** A square of the course's frame. */
    record Square(long east, long north) {
        static Square of(MapPoint point, double sideMetres) {
            return new Square(
                    (long) Math.floor(point.east() / sideMetres), (long) Math.floor(point.north() / sideMetres));
        }

        MapPoint centre(double sideMetres) {
            return new MapPoint((east + 0.5) * sideMetres, (north + 0.5) * sideMetres);
        }
    }
}
