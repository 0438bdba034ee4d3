package org.cupwright.testing;

import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoints;

/**
 * An invented survey of an invented surface: points at random over a rectangle, with normal errors.
 *
 * @param surface what is surveyed
 * @param west edge of the rectangle, m
 * @param perSquareMetre points per m²
 * @param sigmaMetres standard deviation of a height
 * @param seed the same seed gives the same points
 */
public record MadeSurvey(
        Surface surface,
        double west,
        double south,
        double east,
        double north,
        double perSquareMetre,
        double sigmaMetres,
        long seed) {
    /** The points. */
    public SurveyPoints points() {
        return points(everywhere -> true);
    }

    /** The points that lie where a test says. */
    public SurveyPoints points(Predicate<MapPoint> where) {
        Random random = new Random(seed);
        int count = (int) Math.round(perSquareMetre * (east - west) * (north - south));
        double[] x = new double[count];
        double[] y = new double[count];
        double[] z = new double[count];
        Jet jet = new Jet();
        for (int i = 0; i < count; i++) {
            x[i] = west + (east - west) * random.nextDouble();
            y[i] = south + (north - south) * random.nextDouble();
            surface.at(x[i], y[i], jet);
            z[i] = jet.z + sigmaMetres * random.nextGaussian();
        }
        return SurveyPoints.scattered(x, y, z).where(i -> where.test(new MapPoint(x[i], y[i])));
    }

    /** The nodes of a grid over the rectangle, with normal errors of the survey's standard deviation. */
    public SurveyPoints grid(double cellMetres) {
        Random random = new Random(seed);
        int columns = (int) Math.round((east - west) / cellMetres) + 1;
        int rows = (int) Math.round((north - south) / cellMetres) + 1;
        double[] x = new double[columns * rows];
        double[] y = new double[columns * rows];
        double[] z = new double[columns * rows];
        Jet jet = new Jet();
        for (int i = 0; i < x.length; i++) {
            int column = i / rows;
            int row = i % rows;
            x[i] = west + column * cellMetres;
            y[i] = south + row * cellMetres;
            surface.at(x[i], y[i], jet);
            z[i] = jet.z + sigmaMetres * random.nextGaussian();
        }
        return SurveyPoints.grid(cellMetres, Math.max(sigmaMetres, 0.001), x, y, z);
    }

    /** Points at the same places with other heights, m. */
    public static SurveyPoints withHeights(SurveyPoints points, double[] heightMetres) {
        double[] east =
                IntStream.range(0, points.count()).mapToDouble(points::east).toArray();
        double[] north =
                IntStream.range(0, points.count()).mapToDouble(points::north).toArray();
        return SurveyPoints.scattered(east, north, heightMetres);
    }
}
