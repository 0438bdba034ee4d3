package org.cupwright.testing.study;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.green.BendFit;
import org.cupwright.green.Coverage;
import org.cupwright.green.Ground;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.PointIndex;
import org.cupwright.green.spline.SameFit;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.testing.DiscQuadrature;
import org.cupwright.testing.study.StudySums.Sum;

/** The errors of one fitted survey against the truth. */
final class SurveyErrors {
    private static final double NORMAL_95 = 1.96;
    private static final DiscQuadrature DISC = new DiscQuadrature(Ground.DISC_RADIUS_METRES);
    private static final double POINTS_OF_BEND = 200 * Ground.DISC_RADIUS_METRES;
    private static final double GENTLE_PER_METRE = 0.01;
    private static final double AWAY_FROM_STEP_METRES = 2;

    // The rule's defaults (our choice): what fails, and what is known too badly to be judged.
    private static final double LIMIT_POINTS = 2;
    private static final double WORST_ERROR_POINTS = 1;
    private static final double EVEN_POINTS = 1;

    private final GroundClass.Made made;
    private final SurveyedGround fitted;
    private final PointIndex index;
    private final double sigmaMetres;
    private final Surface withoutNoise;
    private final StudySums sums = StudySums.empty();

    SurveyErrors(GroundClass.Made made, SurveyPoints points, SurveyedGround fitted, double sigmaMetres) {
        this.made = made;
        this.fitted = fitted;
        this.index = new PointIndex(points);
        this.sigmaMetres = sigmaMetres;
        this.withoutNoise = SameFit.through(made.surface(), fitted.spline());
    }

    StudySums at(List<MapPoint> positions) {
        for (MapPoint position : positions) {
            if (fitted.coverageAt(position) == Coverage.KNOWN) {
                add(position);
            }
        }
        return sums;
    }

    private void add(MapPoint position) {
        double[] truth = DISC.of(made.surface(), position);
        double fromStep = metresFromStep(position);
        boolean atStep = fromStep <= Ground.DISC_RADIUS_METRES;
        PlaneFit plane = fitted.planeAt(position).orElseThrow();
        addComponents(atStep, plane, truth);
        double[] raw = rawPlaneErrors(position);
        sums.add(atStep, Sum.RAW_WIDTHS, 100 * (raw[0] + raw[1]));
        if (greatest(truth) < GENTLE_PER_METRE && fromStep >= AWAY_FROM_STEP_METRES) {
            addSystematic(atStep, plane, truth, DISC.of(withoutNoise, position));
        }
        addBends(atStep, fitted.bendAt(position, Ground.DISC_RADIUS_METRES).orElseThrow(), truth);
    }

    private double metresFromStep(MapPoint at) {
        double nearest = Double.POSITIVE_INFINITY;
        for (MadeSurface.Tier tier : made.tiers()) {
            double across =
                    (at.east() - tier.east()) * tier.unitEast() + (at.north() - tier.north()) * tier.unitNorth();
            nearest = Math.min(nearest, Math.max(0, Math.abs(across) - tier.width() / 2));
        }
        return nearest;
    }

    private void addComponents(boolean atStep, PlaneFit plane, double[] truth) {
        double east = plane.gradientEast() - truth[0];
        double north = plane.gradientNorth() - truth[1];
        double eastError = plane.componentStandardError(1, 0);
        double northError = plane.componentStandardError(0, 1);
        sums.add(atStep, Sum.COMPONENTS, 2);
        sums.add(atStep, Sum.COMPONENT_HITS, holds(east, eastError) + holds(north, northError));
        sums.add(atStep, Sum.WIDTHS, 100 * (eastError + northError));
        sums.add(atStep, Sum.ERROR_SQUARES, 1e4 * (east * east + north * north));
    }

    private static int holds(double error, double standardError) {
        return Math.abs(error) <= NORMAL_95 * standardError ? 1 : 0;
    }

    /**
     * Standard errors (east, north) of the least-squares plane through the points of the disc, their noise being
     * known.
     */
    private double[] rawPlaneErrors(MapPoint at) {
        double[] s = new double[6];
        index.forEachWithin(at.east(), at.north(), Ground.DISC_RADIUS_METRES, (point, dx, dy) -> {
            s[0]++;
            s[1] += dx;
            s[2] += dy;
            s[3] += dx * dx;
            s[4] += dx * dy;
            s[5] += dy * dy;
        });
        double xx = s[3] - s[1] * s[1] / s[0];
        double xy = s[4] - s[1] * s[2] / s[0];
        double yy = s[5] - s[2] * s[2] / s[0];
        double determinant = xx * yy - xy * xy;
        return new double[] {sigmaMetres * Math.sqrt(yy / determinant), sigmaMetres * Math.sqrt(xx / determinant)};
    }

    private static double greatest(double[] truth) {
        return Math.abs((truth[2] + truth[4]) / 2) + Math.hypot((truth[2] - truth[4]) / 2, truth[3]);
    }

    private void addSystematic(boolean atStep, PlaneFit plane, double[] truth, double[] noiseFree) {
        double slope = Math.hypot(truth[0], truth[1]);
        double alongFall =
                ((plane.gradientEast() - truth[0]) * truth[0] + (plane.gradientNorth() - truth[1]) * truth[1]) / slope;
        double east = noiseFree[0] - truth[0];
        double north = noiseFree[1] - truth[1];
        sums.add(atStep, Sum.GENTLE_POSITIONS, 1);
        sums.add(atStep, Sum.FALL_LINE_ERROR, 100 * alongFall);
        sums.add(atStep, Sum.SYSTEMATIC_SQUARES, 1e4 * (east * east + north * north) / 2);
    }

    private void addBends(boolean atStep, BendFit bend, double[] truth) {
        BendFit.Change east = bend.along(1, 0);
        BendFit.Change north = bend.along(0, 1);
        int hits = holds(east.points() - POINTS_OF_BEND * truth[2], east.standardErrorPoints())
                + holds(north.points() - POINTS_OF_BEND * truth[4], north.standardErrorPoints());
        sums.add(atStep, Sum.BENDS, 2);
        sums.add(atStep, Sum.BEND_HITS, hits);
        double change = POINTS_OF_BEND * greatest(truth);
        BendFit.Change shown = bend.greatest();
        double points = Math.abs(shown.points());
        double error = shown.standardErrorPoints();
        boolean judged = error <= WORST_ERROR_POINTS;
        if (change <= EVEN_POINTS) {
            sums.add(atStep, Sum.EVEN_POSITIONS, 1);
            sums.add(atStep, Sum.EVEN_FAILED, judged && points - 2 * error > LIMIT_POINTS ? 1 : 0);
        }
        if (change > LIMIT_POINTS) {
            sums.add(atStep, Sum.UNEVEN_POSITIONS, 1);
            sums.add(atStep, Sum.UNEVEN_PASSED, judged && points + 2 * error <= LIMIT_POINTS ? 1 : 0);
        }
    }
}
