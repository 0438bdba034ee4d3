/**
 * The numerics behind {@link org.cupwright.green.surveyed.SurveyedGround}: penalised tensor-product cubic B-splines
 * (P-splines; Eilers and Marx, Statistical Science 11(2), 1996), their penalty by restricted maximum likelihood, and
 * the covariances of what is read off the fitted surface. Only {@code green} uses it.
 *
 * <p>The banded Cholesky factor and the selected inverse are our own: no library of the kind offers a selected inverse
 * wide enough for the disc functionals, and sparse factors without one cost a solve for every position.
 */
package org.cupwright.green.spline;
