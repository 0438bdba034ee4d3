package org.cupwright.green.spline;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.green.Sharing;

/**
 * What errors that points share do to a fitted spline: directions in the space of its coefficients, each the effect of
 * one independent standard normal part.
 *
 * <p>Heights that are off by h put the coefficients off by (B'B+λP)⁻¹B'h: the fit smooths shared errors as it smooths
 * the ground. The sum of the products d d' is the covariance that is added to that of the fit.
 */
final class SharedDirections {
    private SharedDirections() {}

    static List<double[]> of(FittedSpline fitted, Sharing sharing) {
        if (sharing.isNone()) {
            return List.of();
        }
        NormalEquations equations = fitted.equations;
        double[][] responses = sharing.alongWalk()
                ? rows(WalkedDrift.parts(equations.points, sharing).stream()
                        .map(equations::response)
                        .toList())
                : equations.responseToSurfaces(rows(SharedField.parts(equations.grid, sharing)));
        new ManySolutions(fitted.factor).solve(responses);
        return columns(responses);
    }

    /** A row for each coefficient, a column for each direction. */
    static double[][] rows(List<double[]> directions) {
        double[][] rows = new double[directions.get(0).length][directions.size()];
        for (int column = 0; column < directions.size(); column++) {
            double[] direction = directions.get(column);
            for (int row = 0; row < rows.length; row++) {
                rows[row][column] = direction[row];
            }
        }
        return rows;
    }

    private static List<double[]> columns(double[][] rows) {
        return IntStream.range(0, rows[0].length)
                .mapToObj(column ->
                        Arrays.stream(rows).mapToDouble(row -> row[column]).toArray())
                .toList();
    }

    /** The same directions with amplitudes so many times as great. */
    static List<double[]> times(double factor, List<double[]> directions) {
        return directions.stream().map(direction -> times(factor, direction)).toList();
    }

    static double[] times(double factor, double[] direction) {
        double[] product = new double[direction.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = factor * direction[i];
        }
        return product;
    }
}
