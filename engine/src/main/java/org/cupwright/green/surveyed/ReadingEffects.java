package org.cupwright.green.surveyed;

import org.cupwright.course.MapPoint;
import org.cupwright.green.spline.SlopeTies;

/**
 * What a level reading that nobody has taken yet would tell: how the slope at one spot of a surveyed green hangs
 * together with the slope at others.
 *
 * <p>A reading takes C(V+R)⁻¹C' off another spot's covariance, with V the covariance at its own spot, R that of the
 * reading and C what {@link At#with} gives. Immutable, safe for use by several threads.
 */
public final class ReadingEffects {
    private final SlopeTies ties;

    ReadingEffects(SlopeTies ties) {
        this.ties = ties;
    }

    /** The effects of a reading at a surveyed spot. */
    public At at(MapPoint place) {
        return new At(ties.of(place.east(), place.north()));
    }

    /** The effects of a reading at one spot. */
    public static final class At {
        private final SlopeTies.Spot spot;

        private At(SlopeTies.Spot spot) {
            this.spot = spot;
        }

        /**
         * Covariances of another spot's gradient (rise per metre) with the one at the reading: other east with
         * reading's east and north, other north with reading's east and north.
         */
        public double[] with(MapPoint other) {
            return spot.with(other.east(), other.north());
        }
    }
}
