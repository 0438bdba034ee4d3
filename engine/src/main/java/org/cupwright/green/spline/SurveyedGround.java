package org.cupwright.green.spline;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.BendFit;
import org.cupwright.green.Blunder;
import org.cupwright.green.Coverage;
import org.cupwright.green.DiscQuadrature;
import org.cupwright.green.Ground;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.RestsOn;
import org.cupwright.green.Surface;

/**
 * Ground known from a survey: a fitted surface, and how well its slope and change of slope are known at each spot.
 *
 * <p>Errors are those of the spline: the covariance of its coefficients carried through to the disc's plane and quadratic. Errors
 * that neighbouring points share (a tilted strip, a domed model) cannot be seen in one survey and are not in them.
 */
public final class SurveyedGround implements Ground {
    private final SplineSurface surface;
    private final ErrorField errors;
    private final PointIndex points;
    private final DiscQuadrature disc;
    private final Noise noise;
    private final List<Blunder> blunders;

    /**
     * How noisy the survey is, m.
     *
     * @param sigma of a height: the residuals', or what was stated where that is more
     * @param residual of the residuals
     * @param heightDifference of the difference of two fitted heights a metre or more apart
     */
    record Noise(double sigma, double residual, double heightDifference) {}

    SurveyedGround(
            SplineSurface surface,
            ErrorField errors,
            PointIndex points,
            DiscQuadrature disc,
            Noise noise,
            List<Blunder> blunders) {
        this.surface = surface;
        this.errors = errors;
        this.points = points;
        this.disc = disc;
        this.noise = noise;
        this.blunders = List.copyOf(blunders);
    }

    @Override
    public RestsOn restsOn() {
        return RestsOn.SURVEY;
    }

    @Override
    public Coverage coverageAt(MapPoint point) {
        return errors.covered(point) ? Coverage.KNOWN : Coverage.NOT_SURVEYED;
    }

    @Override
    public Optional<Surface> surface() {
        return Optional.of(surface);
    }

    @Override
    public Optional<PlaneFit> planeAt(MapPoint point) {
        if (!errors.covered(point)) {
            return Optional.empty();
        }
        double[] fit = disc.of(surface, point);
        double[] error = errors.at(point);
        return Optional.of(new PlaneFit(fit[0], fit[1], error[0], error[1], error[2]));
    }

    @Override
    public Optional<BendFit> bendAt(MapPoint point, double discRadiusMetres) {
        if (!errors.covered(point)) {
            return Optional.empty();
        }
        if (discRadiusMetres == disc.radiusMetres()) {
            double[] fit = disc.of(surface, point);
            double[] e = errors.at(point);
            BendFit.Covariance covariance = new BendFit.Covariance(e[3], e[4], e[5], e[6], e[7], e[8]);
            return Optional.of(new BendFit(fit[2], fit[3], fit[4], covariance, discRadiusMetres));
        }
        return Optional.of(wideBend(point, new DiscQuadrature(discRadiusMetres)));
    }

    /**
     * Over a wider disc the errors are those of a quadratic through the raw points in it, evenly spread: an upper bound of the
     * spline's.
     */
    private BendFit wideBend(MapPoint point, DiscQuadrature wide) {
        int[] count = {0};
        double radius = wide.radiusMetres();
        points.within(point.east(), point.north(), radius, (dx, dy, i) -> count[0]++);
        double each = noise.sigma() * noise.sigma() / Math.max(1, count[0]) / Math.pow(radius, 4);
        double own = 4 * (6 + 12) * each;
        double shared = 4 * (12 - 6) * each;
        BendFit.Covariance covariance = new BendFit.Covariance(own, 0, shared, 24 * each, 0, own);
        double[] fit = wide.of(surface, point);
        return new BendFit(fit[2], fit[3], fit[4], covariance, radius);
    }

    @Override
    public double heightStandardErrorMetres() {
        return noise.heightDifference();
    }

    @Override
    public double surveySigmaMetres() {
        return noise.residual();
    }

    /** The points left out of the fit. */
    public List<Blunder> blunders() {
        return blunders;
    }
}
