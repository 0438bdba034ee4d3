package org.cupwright.testing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Envelope;

/** Invented greens for random suites: lobed outlines, some with a bunker inside, played from any direction. */
public final class RandomGreens {
    private RandomGreens() {}

    /** A lobed green of 8 to 20 m in radius somewhere on the map, with a line of play. */
    public static Hole hole(Random random) {
        return holeOn(outline(random), Heading.ofDegrees(360 * random.nextDouble()), List.of());
    }

    public static Hole holeOn(Outline green, Heading play, List<Mark> marks) {
        return new Hole(
                "7",
                green,
                Optional.of(LineOfPlay.towards(green, play)),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                marks,
                List.of());
    }

    /** A point of the green, evenly spread. */
    public static MapPoint pointOn(Outline green, Random random) {
        Envelope box = green.polygon().getEnvelopeInternal();
        while (true) {
            MapPoint point = new MapPoint(
                    box.getMinX() + random.nextDouble() * box.getWidth(),
                    box.getMinY() + random.nextDouble() * box.getHeight());
            if (green.contains(point)) {
                return point;
            }
        }
    }

    private static Outline outline(Random random) {
        double east = 500_000 + 1000 * random.nextDouble();
        double north = 4_000_000 + 1000 * random.nextDouble();
        double radius = 8 + 12 * random.nextDouble();
        int lobes = 2 + random.nextInt(4);
        double depth = 0.45 * random.nextDouble();
        double turn = 2 * Math.PI * random.nextDouble();
        int corners = 20 + random.nextInt(120);
        double[] ring = new double[2 * corners];
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double r = radius * (1 + depth * StrictMath.cos(lobes * angle + turn));
            ring[2 * i] = east + r * StrictMath.cos(angle);
            ring[2 * i + 1] = north + r * StrictMath.sin(angle);
        }
        Outline whole = Shapes.polygon(ring);
        if (random.nextInt(3) > 0) {
            return whole;
        }
        Outline bunker = Shapes.circle(east + radius / 5, north, radius / 4);
        return new Outline((org.locationtech.jts.geom.Polygon) whole.polygon().difference(bunker.polygon()));
    }
}
