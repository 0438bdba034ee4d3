package org.cupwright.examples;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * One invented hole: an egg-shaped green whose ground falls towards the line of play, with a mound and a step to a back
 * tier.
 *
 * @param ref its number
 * @param par its par
 * @param east of the green's middle, m, UTM zone 25 N
 * @param north of the green's middle
 * @param radius of the green, m, more or less
 * @param playDegrees direction of play, clockwise from north
 * @param lengthMetres of the hole
 * @param tiltPercent how much the green falls towards the player
 * @param tierMetres how much higher the back is
 */
record InventedHole(
        int ref,
        int par,
        double east,
        double north,
        double radius,
        double playDegrees,
        double lengthMetres,
        double tiltPercent,
        double tierMetres) {
    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final int CORNERS = 40;
    private static final double BACK_TIER_FROM_METRES = 4;
    private static final double STEP_LENGTH_METRES = 3;
    private static final double MOUND_METRES = 0.12;
    private static final double MOUND_RADIUS_METRES = 5;

    Polygon green() {
        return egg(0, 0, radius, 0.15);
    }

    /** A bunker front left and one beside the back right. */
    List<Polygon> bunkers() {
        return List.of(egg(-radius, -radius, 4, 0.3), egg(radius + 5, 3, 3.5, 0.2));
    }

    Polygon tee() {
        return egg(0, -lengthMetres, 5, 0.1);
    }

    LineString line() {
        return SHAPES.createLineString(new Coordinate[] {at(0, -lengthMetres), at(2, -lengthMetres / 2), at(0, 0)});
    }

    /** Height of the ground, m, at so far right of the middle and so far beyond it. */
    double heightMetres(Coordinate place) {
        double right = right(place);
        double forward = forward(place);
        double step = Math.min(1, Math.max(0, (forward - BACK_TIER_FROM_METRES) / STEP_LENGTH_METRES));
        double smooth = step * step * (3 - 2 * step);
        double mound = StrictMath.exp(-(StrictMath.pow(right - radius / 2, 2) + StrictMath.pow(forward, 2))
                / (2 * MOUND_RADIUS_METRES * MOUND_RADIUS_METRES));
        return 20 + tiltPercent / 100 * forward + 0.006 * right + tierMetres * smooth + MOUND_METRES * mound;
    }

    Coordinate at(double right, double forward) {
        return new Coordinate(east + right * cosine() + forward * sine(), north - right * sine() + forward * cosine());
    }

    private double right(Coordinate place) {
        return (place.x - east) * cosine() - (place.y - north) * sine();
    }

    private double forward(Coordinate place) {
        return (place.x - east) * sine() + (place.y - north) * cosine();
    }

    private double sine() {
        return StrictMath.sin(Math.toRadians(playDegrees));
    }

    private double cosine() {
        return StrictMath.cos(Math.toRadians(playDegrees));
    }

    private Polygon egg(double right, double forward, double size, double waviness) {
        List<Coordinate> ring = new ArrayList<>();
        for (int i = 0; i < CORNERS; i++) {
            double angle = 2 * Math.PI * i / CORNERS;
            double reach =
                    size * (1 + waviness * StrictMath.cos(2 * angle + ref) / 2 + waviness * StrictMath.sin(angle) / 3);
            ring.add(at(right + reach * StrictMath.sin(angle), forward + 1.15 * reach * StrictMath.cos(angle)));
        }
        ring.add(ring.get(0).copy());
        return SHAPES.createPolygon(ring.toArray(Coordinate[]::new));
    }
}
