package org.cupwright.green;

/**
 * Errors of height that the points of a survey share with their neighbours, besides each point's own: a stationary
 * process with a standard deviation and a length.
 *
 * <p>Over the ground the covariance of two points d apart is σ²·exp(−d²/2ℓ²), so that a slope is off by about σ/ℓ along
 * either axis. Along a walk it is σ²·exp(−w/ℓ) with w metres walked between the two, in the order of the points.
 *
 * @param sigmaMetres standard deviation σ of the shared error; 0: points share nothing
 * @param lengthMetres ℓ
 * @param alongWalk whether the length is one along the walk from point to point, not over the ground
 */
public record Sharing(double sigmaMetres, double lengthMetres, boolean alongWalk) {
    /** Points share nothing. */
    public static final Sharing NONE = new Sharing(0, 1, false);

    public Sharing {
        if (!(sigmaMetres >= 0) || !(lengthMetres > 0)) {
            throw new IllegalArgumentException("no shared error: " + sigmaMetres + " m over " + lengthMetres + " m");
        }
    }

    public boolean isNone() {
        return sigmaMetres == 0;
    }
}
