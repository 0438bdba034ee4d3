package org.cupwright.green.spline;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Errors of the fitted heights themselves: at a spot, and of a weighted sum of heights over many spots (a volume).
 * Level readings count as they do in the fit. An error that all points of a survey share (its datum) is in none of
 * them.
 */
public final class HeightErrors {
    private final FittedSpline fitted;
    private final SelectedInverse inverse;
    private final double variance;
    private final List<double[]> shared;
    private final List<double[]> directions;

    HeightErrors(FittedSpline fitted, double variance, List<double[]> shared, List<double[]> directions) {
        this.fitted = fitted;
        this.inverse = new SelectedInverse(fitted.factor, fitted.equations.grid.halfBandwidth(3));
        this.variance = variance;
        this.shared = shared.stream().map(HeightErrors::aboutMean).toList();
        this.directions = directions;
    }

    /** Less what it adds to all heights alike: that is a matter of the datum. */
    private static double[] aboutMean(double[] direction) {
        double mean = Arrays.stream(direction).average().orElse(0);
        return Arrays.stream(direction).map(value -> value - mean).toArray();
    }

    /** Standard error of the height at a spot, m. */
    public double atMetres(double east, double north) {
        Map<Integer, Double> weights = new HashMap<>();
        addWeights(east, north, 1, weights);
        double sum = 0;
        for (Map.Entry<Integer, Double> one : weights.entrySet()) {
            for (Map.Entry<Integer, Double> other : weights.entrySet()) {
                sum += one.getValue() * other.getValue() * inverse.get(one.getKey(), other.getKey());
            }
        }
        return Math.sqrt(Math.max(0, variance * sum + squares(shared, weights) - squares(directions, weights)));
    }

    /**
     * Standard error of a weighted sum of heights.
     *
     * @param weights one for each spot
     */
    public double ofSum(double[] east, double[] north, double[] weights) {
        Map<Integer, Double> byCoefficient = new HashMap<>();
        for (int i = 0; i < weights.length; i++) {
            addWeights(east[i], north[i], weights[i], byCoefficient);
        }
        double[] vector = new double[fitted.coefficients.length];
        byCoefficient.forEach((index, weight) -> vector[index] = weight);
        double[] solved = fitted.factor.solve(vector);
        double sum = 0;
        for (int i = 0; i < vector.length; i++) {
            sum += vector[i] * solved[i];
        }
        return Math.sqrt(
                Math.max(0, variance * sum + squares(shared, byCoefficient) - squares(directions, byCoefficient)));
    }

    /** What shared errors add to the variance, or level readings have taken off it. */
    private static double squares(List<double[]> directions, Map<Integer, Double> weights) {
        double squares = 0;
        for (double[] direction : directions) {
            double share = 0;
            for (Map.Entry<Integer, Double> weight : weights.entrySet()) {
                share += weight.getValue() * direction[weight.getKey()];
            }
            squares += share * share;
        }
        return squares;
    }

    private void addWeights(double east, double north, double times, Map<Integer, Double> weights) {
        KnotGrid grid = fitted.equations.grid;
        double x = grid.cellsFromWest(east);
        double y = grid.cellsFromSouth(north);
        int cellEast = grid.cellEast(x);
        int cellNorth = grid.cellNorth(y);
        double[] basisEast = new double[4];
        double[] basisNorth = new double[4];
        CubicBasis.values(x - cellEast, basisEast);
        CubicBasis.values(y - cellNorth, basisNorth);
        for (int a = 0; a < 16; a++) {
            double weight = times * basisEast[a / 4] * basisNorth[a % 4];
            weights.merge(grid.index(cellEast + a / 4, cellNorth + a % 4), weight, Double::sum);
        }
    }
}
