package org.cupwright.democourse;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Jet;
import org.cupwright.green.LevelReading;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoint;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Envelope;

/**
 * Invented measurements of an invented green: a walk over it with a satellite receiver, and readings of a digital
 * level.
 */
final class DemoSurvey {
    /** Points per square metre. */
    private static final double DENSITY = 8;

    /** Noise of a height, m. */
    private static final double SIGMA = 0.005;

    /** Noise of a level's reading, rise over run. */
    private static final double LEVEL_SIGMA = 0.001;

    /** How far outside the edge the walk goes, m. */
    private static final double MARGIN = 3;

    private DemoSurvey() {}

    static List<SurveyPoint> points(Outline green, Surface surface, long seed) {
        Random random = new Random(seed);
        Envelope box = green.polygon().getEnvelopeInternal();
        box.expandBy(MARGIN);
        long tries = Math.round(DENSITY * box.getArea());
        List<SurveyPoint> points = new ArrayList<>();
        Jet jet = new Jet();
        for (long i = 0; i < tries; i++) {
            double east = millimetres(box.getMinX() + box.getWidth() * random.nextDouble());
            double north = millimetres(box.getMinY() + box.getHeight() * random.nextDouble());
            double noise = SIGMA * random.nextGaussian();
            MapPoint at = new MapPoint(east, north);
            if (green.contains(at) || green.distanceToEdgeMetres(at) < MARGIN) {
                surface.at(east, north, jet);
                points.add(new SurveyPoint(east, north, millimetres(jet.z + noise)));
            }
        }
        return points;
    }

    private static double millimetres(double metres) {
        return Math.rint(1000 * metres) / 1000;
    }

    /** Six readings: front, middle and back, left and right of the middle line. */
    static List<LevelReading> readings(DemoLayout layout, Surface surface, long seed) {
        Random random = new Random(seed);
        List<LevelReading> readings = new ArrayList<>();
        Jet jet = new Jet();
        for (int third = -1; third <= 1; third++) {
            for (int side = -1; side <= 1; side += 2) {
                DemoHole.Shape shape = layout.hole().shape();
                MapPoint at = layout.at(0.35 * side * shape.halfWidth(), 0.5 * third * shape.halfDepth());
                surface.at(at.east(), at.north(), jet);
                double east = jet.zx + LEVEL_SIGMA * random.nextGaussian();
                double north = jet.zy + LEVEL_SIGMA * random.nextGaussian();
                double percent = Math.rint(1000 * Math.hypot(east, north)) / 10;
                double degrees = Math.rint(Heading.ofStep(-east, -north).degrees());
                readings.add(LevelReading.steepest(at, percent, Heading.ofDegrees(degrees), 100 * LEVEL_SIGMA));
            }
        }
        return readings;
    }
}
