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
    private final Once<Ground> whole;

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
        this.whole = new Once<>(fit);
    }

    @Override
    public RestsOn restsOn() {
        return RestsOn.SURVEY;
    }

    @Override
    public Coverage coverageAt(MapPoint point) {
        return whole.value().coverageAt(point);
    }

    @Override
    public Optional<Surface> surface() {
        return Optional.of(fitted.surface());
    }

    @Override
    public Optional<PlaneFit> planeAt(MapPoint point) {
        return whole.value().planeAt(point);
    }

    @Override
    public Optional<ErrorParts> slopeErrorAt(MapPoint point) {
        return whole.value().slopeErrorAt(point);
    }

    @Override
    public Optional<MeasuredSharing> sharing() {
        return whole.value().sharing();
    }

    @Override
    public Optional<BendFit> bendAt(MapPoint point, double discRadiusMetres) {
        return whole.value().bendAt(point, discRadiusMetres);
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
