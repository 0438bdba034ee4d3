package org.cupwright.green;

/**
 * What the points of a survey share of their errors, and how that is known.
 *
 * @param set the process as it is set
 * @param counts the process that counts: as it is set, or with what was measured of it
 * @param sigmaErrorMetres standard error of its standard deviation; not a number where it was not measured
 * @param by how it is known
 * @param trended whether slopes read on the spot show that the whole survey is tilted or domed, which they then correct
 */
public record MeasuredSharing(Sharing set, Sharing counts, double sigmaErrorMetres, By by, boolean trended) {
    /** How it is known what points share. */
    public enum By {
        SETTING,
        /** Ground that the survey covers twice. */
        STRIPS,
        /** Slopes read with a level. */
        READINGS,
        STRIPS_AND_READINGS
    }

    public static MeasuredSharing asSet(Sharing sharing) {
        return new MeasuredSharing(sharing, sharing, Double.NaN, By.SETTING, false);
    }

    /** As strips of the survey have measured it. */
    public static MeasuredSharing byStrips(Sharing set, SharedAmplitude measured) {
        Sharing counts = new Sharing(measured.sigmaMetres(), measured.lengthMetres(), set.alongWalk());
        return new MeasuredSharing(set, counts, measured.errorMetres(), By.STRIPS, false);
    }

    /**
     * After slopes were read on the spot.
     *
     * @param factor amplitude they measured over the amplitude before
     * @param factorError standard error of the factor; not a number where they measured none
     */
    public MeasuredSharing withReadings(double factor, double factorError, boolean trend) {
        if (Double.isNaN(factorError)) {
            return new MeasuredSharing(set, counts, sigmaErrorMetres, by, trend);
        }
        double before = counts.sigmaMetres();
        Sharing after = new Sharing(factor * before, counts.lengthMetres(), counts.alongWalk());
        By both = by == By.STRIPS ? By.STRIPS_AND_READINGS : By.READINGS;
        return new MeasuredSharing(set, after, factorError * before, both, trend);
    }

    /** Standard deviation of the process that counts. */
    public double sigmaMetres() {
        return counts.sigmaMetres();
    }

    public boolean isMeasured() {
        return Double.isFinite(sigmaErrorMetres);
    }

    /**
     * How surely the square of the amplitude is known, as the shape of a gamma distribution about it: its mean squared
     * over its variance; 1, an exponential distribution, where it is only set.
     */
    public double shape() {
        double relative = 2 * sigmaErrorMetres / counts.sigmaMetres();
        return isMeasured() ? Math.max(1, 1 / (relative * relative)) : 1;
    }
}
