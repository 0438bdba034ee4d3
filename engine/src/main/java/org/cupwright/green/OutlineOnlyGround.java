package org.cupwright.green;

import java.util.Optional;
import org.cupwright.course.MapPoint;

/** A green of which only the edge is known: nothing can be said of its slopes. */
public final class OutlineOnlyGround implements Ground {
    @Override
    public RestsOn restsOn() {
        return RestsOn.OUTLINE;
    }

    @Override
    public Coverage coverageAt(MapPoint point) {
        return Coverage.NOT_MEASURED;
    }

    @Override
    public Optional<Surface> surface() {
        return Optional.empty();
    }

    @Override
    public Optional<PlaneFit> planeAt(MapPoint point) {
        return Optional.empty();
    }

    @Override
    public Optional<BendFit> bendAt(MapPoint point, double discRadiusMetres) {
        return Optional.empty();
    }

    @Override
    public double heightStandardErrorMetres() {
        return Double.NaN;
    }

    @Override
    public double surveySigmaMetres() {
        return Double.NaN;
    }
}
