package org.cupwright.green;

import java.util.Optional;
import java.util.function.Supplier;
import org.cupwright.course.MapPoint;

/**
 * The ground of a surveyed green that was fitted at an earlier time: its surface is at hand, and the survey is fitted
 * anew, once, when something else is asked.
 */
public final class RememberedGround implements Ground {
    private final Fitted fitted;
    private final Supplier<? extends Ground> fit;
    private Ground whole;

    /**
     * What the fit came to.
     *
     * @param surface the surface
     * @param heightStandardErrorMetres as {@link Ground#heightStandardErrorMetres()}
     * @param surveySigmaMetres as {@link Ground#surveySigmaMetres()}
     */
    public record Fitted(Surface surface, double heightStandardErrorMetres, double surveySigmaMetres) {}

    /**
     * @param fitted what is remembered
     * @param fit the same ground, fitted anew
     */
    public RememberedGround(Fitted fitted, Supplier<? extends Ground> fit) {
        this.fitted = fitted;
        this.fit = fit;
    }

    private synchronized Ground whole() {
        if (whole == null) {
            whole = fit.get();
        }
        return whole;
    }

    @Override
    public RestsOn restsOn() {
        return RestsOn.SURVEY;
    }

    @Override
    public Coverage coverageAt(MapPoint point) {
        return whole().coverageAt(point);
    }

    @Override
    public Optional<Surface> surface() {
        return Optional.of(fitted.surface());
    }

    @Override
    public Optional<PlaneFit> planeAt(MapPoint point) {
        return whole().planeAt(point);
    }

    @Override
    public Optional<ErrorParts> slopeErrorAt(MapPoint point) {
        return whole().slopeErrorAt(point);
    }

    @Override
    public Optional<MeasuredSharing> sharing() {
        return whole().sharing();
    }

    @Override
    public Optional<BendFit> bendAt(MapPoint point, double discRadiusMetres) {
        return whole().bendAt(point, discRadiusMetres);
    }

    @Override
    public double heightStandardErrorMetres() {
        return fitted.heightStandardErrorMetres();
    }

    @Override
    public double surveySigmaMetres() {
        return fitted.surveySigmaMetres();
    }
}
