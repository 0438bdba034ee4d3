package org.cupwright.green.spline;

import java.util.List;
import org.cupwright.green.MeasuredSharing;

/**
 * A fit after slopes were measured on the spot: what they measure of shared errors, and the coefficients conditioned on
 * them.
 *
 * @param measured what points share
 * @param whole conditioned with what points share among the errors
 * @param own conditioned as if they shared nothing
 */
record ObservedFit(SharedMeasure.Measured measured, Conditioning whole, Conditioning own) {
    /**
     * @param variance σ² of the heights
     * @param sharing what points share before
     */
    static ObservedFit of(
            FittedSpline fitted,
            double variance,
            double discRadiusMetres,
            List<SlopeObservation> observations,
            MeasuredSharing sharing) {
        ObservedSlopes slopes = new ObservedSlopes(fitted, discRadiusMetres, observations);
        List<double[]> before = SharedDirections.of(fitted, sharing.counts());
        SharedMeasure.Measured measured = SharedMeasure.of(fitted, variance, slopes, before, sharing);
        Conditioning whole = new Conditioning(fitted, variance, slopes, measured.directions());
        Conditioning own =
                measured.directions().isEmpty() ? whole : new Conditioning(fitted, variance, slopes, List.of());
        return new ObservedFit(measured, whole, own);
    }

    CovarianceParts parts(DiscCovariances ofFit) {
        return new CovarianceParts(
                ofFit.plus(measured.directions()).less(whole.directions), ofFit.less(own.directions));
    }
}
