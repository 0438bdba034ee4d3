package org.cupwright.green.spline;

import java.util.List;
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
        if (sharing.alongWalk()) {
            return WalkedDrift.parts(equations.points, sharing).stream()
                    .map(equations::response)
                    .map(fitted.factor::solve)
                    .toList();
        }
        return SharedField.parts(equations.grid, sharing).stream()
                .map(equations::responseToSurface)
                .map(fitted.factor::solve)
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
