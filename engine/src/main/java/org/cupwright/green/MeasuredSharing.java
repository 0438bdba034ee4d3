package org.cupwright.green;

/**
 * What the points of a survey share of their errors, and how that is known.
 *
 * @param set the process as it is set
 * @param sigmaMetres its standard deviation, as it is set or as slopes read on the spot have measured it
 * @param sigmaErrorMetres standard error of that; not a number where it was not measured
 * @param trended whether those slopes show that the whole survey is tilted or domed, which they then correct
 */
public record MeasuredSharing(Sharing set, double sigmaMetres, double sigmaErrorMetres, boolean trended) {
    public static MeasuredSharing asSet(Sharing sharing) {
        return new MeasuredSharing(sharing, sharing.sigmaMetres(), Double.NaN, false);
    }

    public boolean isMeasured() {
        return Double.isFinite(sigmaErrorMetres);
    }
}
