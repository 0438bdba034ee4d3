package org.cupwright.testing;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.BendFit;
import org.cupwright.green.Coverage;
import org.cupwright.green.Ground;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.RestsOn;
import org.cupwright.green.Surface;

/**
 * Invented ground whose surface is known exactly, with whatever errors a test wants it to claim.
 *
 * @param known the surface
 * @param slopeError standard error of a slope component, rise over run
 * @param bendErrorPoints standard error of a change of slope over any disc, points
 * @param heightErrorMetres standard error of a height difference
 * @param gap where nothing was surveyed
 * @param restsOn a survey, or level readings everywhere outside the gap: then there is no surface to roll on
 */
public record ModelGround(
        Surface known,
        double slopeError,
        double bendErrorPoints,
        double heightErrorMetres,
        Optional<Outline> gap,
        RestsOn restsOn)
        implements Ground {
    private static final DiscQuadrature DISC = new DiscQuadrature(DISC_RADIUS_METRES);

    /** Ground known without error. */
    public static ModelGround exact(Surface surface) {
        return new ModelGround(surface, 0, 0, 0, Optional.empty(), RestsOn.SURVEY);
    }

    public ModelGround withSlopeError(double error) {
        return new ModelGround(known, error, bendErrorPoints, heightErrorMetres, gap, restsOn);
    }

    public ModelGround withBendError(double points) {
        return new ModelGround(known, slopeError, points, heightErrorMetres, gap, restsOn);
    }

    public ModelGround withHeightError(double metres) {
        return new ModelGround(known, slopeError, bendErrorPoints, metres, gap, restsOn);
    }

    public ModelGround withGap(Outline where) {
        return new ModelGround(known, slopeError, bendErrorPoints, heightErrorMetres, Optional.of(where), restsOn);
    }

    public ModelGround restingOn(RestsOn other) {
        return new ModelGround(known, slopeError, bendErrorPoints, heightErrorMetres, gap, other);
    }

    @Override
    public Coverage coverageAt(MapPoint point) {
        boolean unknown = restsOn == RestsOn.OUTLINE
                || gap.filter(area -> area.contains(point)).isPresent();
        if (!unknown) {
            return Coverage.KNOWN;
        }
        return restsOn == RestsOn.SURVEY ? Coverage.NOT_SURVEYED : Coverage.NOT_MEASURED;
    }

    @Override
    public Optional<Surface> surface() {
        return restsOn == RestsOn.SURVEY ? Optional.of(known) : Optional.empty();
    }

    @Override
    public Optional<PlaneFit> planeAt(MapPoint point) {
        if (coverageAt(point) != Coverage.KNOWN) {
            return Optional.empty();
        }
        double[] fit = DISC.of(known, point);
        double variance = slopeError * slopeError;
        return Optional.of(new PlaneFit(fit[0], fit[1], variance, 0, variance));
    }

    @Override
    public Optional<BendFit> bendAt(MapPoint point, double discRadiusMetres) {
        if (restsOn != RestsOn.SURVEY || coverageAt(point) != Coverage.KNOWN) {
            return Optional.empty();
        }
        DiscQuadrature disc = discRadiusMetres == DISC_RADIUS_METRES ? DISC : new DiscQuadrature(discRadiusMetres);
        double[] fit = disc.of(known, point);
        double each = bendErrorPoints / (200 * discRadiusMetres);
        double variance = each * each;
        // the same error in every direction: var(u'Hu) = variance
        BendFit.Covariance covariance = new BendFit.Covariance(variance, 0, 0, variance / 2, 0, variance);
        return Optional.of(new BendFit(fit[2], fit[3], fit[4], covariance, discRadiusMetres));
    }

    @Override
    public double heightStandardErrorMetres() {
        return surface().isPresent() ? heightErrorMetres : Double.NaN;
    }

    @Override
    public double surveySigmaMetres() {
        return heightStandardErrorMetres();
    }
}
