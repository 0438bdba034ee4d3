package org.cupwright.green;

import java.util.Optional;
import org.cupwright.course.MapPoint;

/**
 * What is known of the shape of a green's ground, and how well.
 *
 * <p>Estimates are of the fitted plane or quadratic over a disc about the spot, with standard errors; an empty answer
 * means that nothing honest can be said there. Implementations are immutable and safe for use by several threads.
 */
public interface Ground {
    /**
     * Radius of the disc over which a position's slope is judged, m: 3 ft (Lemons, USGA Green Section Record, 2008).
     */
    double DISC_RADIUS_METRES = 0.91;

    RestsOn restsOn();

    Coverage coverageAt(MapPoint point);

    /** The surface a ball can be rolled on; empty without a survey. */
    default Optional<Surface> surface() {
        return Optional.empty();
    }

    /**
     * The plane fitted over {@link #DISC_RADIUS_METRES} about the point; empty where {@link #coverageAt} is not KNOWN.
     */
    Optional<PlaneFit> planeAt(MapPoint point);

    /**
     * Of what the standard error of the plane's slope is made, rise per metre; empty where there is no plane. Without a
     * survey nothing is shared.
     */
    default Optional<ErrorParts> slopeErrorAt(MapPoint point) {
        return planeAt(point).map(plane -> new ErrorParts(plane.slopeStandardError(), 0));
    }

    /** What the points of the survey share of their errors; empty without a survey. */
    default Optional<MeasuredSharing> sharing() {
        return Optional.empty();
    }

    /** The quadratic fitted over a disc about the point; empty without a survey there. */
    default Optional<BendFit> bendAt(MapPoint point, double discRadiusMetres) {
        return Optional.empty();
    }

    /**
     * Standard error of a height difference between neighbouring points (about a metre apart), m; NaN without a
     * survey.
     */
    default double heightStandardErrorMetres() {
        return Double.NaN;
    }

    /** Residual standard deviation of the survey's heights (σ_z), m; NaN without a survey. */
    default double surveySigmaMetres() {
        return Double.NaN;
    }
}
