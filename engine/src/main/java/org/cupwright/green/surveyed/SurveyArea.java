package org.cupwright.green.surveyed;

import java.util.HashSet;
import java.util.Set;
import org.cupwright.course.Outline;
import org.cupwright.green.Ground;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.FitSettings;
import org.cupwright.green.spline.PointIndex;
import org.cupwright.green.spline.SurveySpline;
import org.cupwright.policy.Policy;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/** Which points of a survey count for a green, over what rectangle a surface is fitted to them, and how fine. */
final class SurveyArea {
    /** Room for a disc about a spot on the outline and the nodes about the spot, m. */
    private static final double BEYOND_OUTLINE_METRES = Ground.DISC_RADIUS_METRES + 0.5;

    /**
     * A surface is never wanted further from the points than this, m: half a gap, a disc, and the nodes about a spot.
     */
    private static final double BEYOND_POINTS_METRES = BEYOND_OUTLINE_METRES + 0.5;

    /** Knot spacings are multiples of this, m (our choice). */
    private static final double SPACING_STEP_METRES = 0.25;

    /** Fewest points a knot cell should hold on average (our choice: the penalty does the rest). */
    private static final double POINTS_PER_CELL = 0.75;

    /** Wider knots than this would not show what a 0.91 m disc asks for, m (our choice). */
    private static final double WIDEST_SPACING_METRES = 1;

    /** More cells than this make knots wider: keeps the largest practice green within seconds (our choice). */
    private static final int MOST_CELLS = 12_000;

    private SurveyArea() {}

    static SurveyPoints pointsNear(Outline outline, SurveyPoints survey, double marginMetres) {
        Geometry area = outline.polygon().buffer(marginMetres);
        Envelope box = area.getEnvelopeInternal();
        IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(area);
        return survey.where(i -> box.contains(survey.east(i), survey.north(i))
                && locator.locate(new Coordinate(survey.east(i), survey.north(i))) != Location.EXTERIOR);
    }

    static void check(SurveyPoints points, SurveyCoverage coverage, Policy policy) throws SurveyTooThin {
        double widest = policy.get(GroundPolicy.GRID_CELL_METRES);
        double cell = points.gridCellMetres().orElse(0);
        if (cell > widest + 1e-6) {
            throw new SurveyTooThin(SurveyTooThin.Reason.CELLS_TOO_WIDE, points.count(), cell, widest);
        }
        if (points.count() < coverage.leastPoints()) {
            throw new SurveyTooThin(
                    SurveyTooThin.Reason.TOO_FEW_POINTS, points.count(), points.count(), coverage.leastPoints());
        }
        Spread spread = new Spread();
        for (int i = 0; i < points.count(); i++) {
            spread.add(points.east(i) - points.east(0), points.north(i) - points.north(0));
        }
        if (spread.leastMetres() < coverage.leastSpreadMetres()) {
            throw new SurveyTooThin(
                    SurveyTooThin.Reason.ON_A_LINE, points.count(), spread.leastMetres(), coverage.leastSpreadMetres());
        }
    }

    /** The points' own rectangle, and where they reach it the outline's with room for the discs on its edge. */
    static SurveySpline.Area rectangle(Outline outline, SurveyPoints points) {
        double[] box = PointIndex.box(points);
        Envelope green = outline.polygon().getEnvelopeInternal();
        return new SurveySpline.Area(
                lower(box[0], green.getMinX()),
                lower(box[1], green.getMinY()),
                upper(box[2], green.getMaxX()),
                upper(box[3], green.getMaxY()));
    }

    private static double lower(double points, double outline) {
        return Math.min(points, Math.max(outline - BEYOND_OUTLINE_METRES, points - BEYOND_POINTS_METRES));
    }

    private static double upper(double points, double outline) {
        return Math.max(points, Math.min(outline + BEYOND_OUTLINE_METRES, points + BEYOND_POINTS_METRES));
    }

    static FitSettings settings(SurveyPoints points, SurveySpline.Area area, Policy policy) {
        double least = policy.get(GroundPolicy.KNOT_SPACING_METRES);
        double borne = Math.sqrt(POINTS_PER_CELL / pointsPerSquareMetre(points));
        double square = (area.east() - area.west()) * (area.north() - area.south());
        double spacing = Math.max(least, Math.min(roundedUp(borne), WIDEST_SPACING_METRES));
        spacing = Math.max(spacing, roundedUp(Math.sqrt(square / MOST_CELLS)));
        double atSteps = Math.max(least, roundedUp(Math.sqrt(square / MOST_CELLS)));
        return new FitSettings(
                spacing, atSteps, policy.get(GroundPolicy.PENALTY_DIVISOR), policy.get(GroundPolicy.BLUNDER_LIMIT));
    }

    private static double roundedUp(double metres) {
        return SPACING_STEP_METRES * Math.ceil(metres / SPACING_STEP_METRES - 1e-9);
    }

    /** Over the ground that holds points: gaps do not count. */
    private static double pointsPerSquareMetre(SurveyPoints points) {
        if (points.gridCellMetres().isPresent()) {
            double cell = points.gridCellMetres().getAsDouble();
            return 1 / (cell * cell);
        }
        Set<Long> squares = new HashSet<>();
        for (int i = 0; i < points.count(); i++) {
            long column = (long) Math.floor(points.east(i));
            long row = (long) Math.floor(points.north(i));
            squares.add(column * 100_000_007L + row);
        }
        return (double) points.count() / squares.size();
    }
}
