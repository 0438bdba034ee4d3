package org.cupwright.green.spline;

/**
 * Covariances over a disc in two parts.
 *
 * @param whole with what points share of their errors
 * @param own what they would be if points shared nothing
 */
record CovarianceParts(DiscCovariances whole, DiscCovariances own) {}
