package org.cupwright.turf.growth;

import org.cupwright.turf.GrassKind;

/**
 * Growth potential: how much of its best growth a grass shows at a mean daily temperature, {@code exp(-½((T -
 * T_o)/s)²)}.
 *
 * <p>Source: Gelernter and Stowell, Golf Course Management, March 2005. Cool-season T_o 20 °C, s 5.5; warm-season T_o
 * 31 °C, s 7, and 1 above 31 °C.
 */
public final class GrowthPotential {
    private static final double COOL_OPTIMUM_CELSIUS = 20;
    private static final double COOL_SPREAD_CELSIUS = 5.5;
    private static final double WARM_OPTIMUM_CELSIUS = 31;
    private static final double WARM_SPREAD_CELSIUS = 7;

    private GrowthPotential() {}

    /** From 0 to 1. */
    public static double of(GrassKind grass, double meanCelsius) {
        return switch (grass) {
            case COOL_SEASON -> bell((meanCelsius - COOL_OPTIMUM_CELSIUS) / COOL_SPREAD_CELSIUS);
            case WARM_SEASON ->
                meanCelsius > WARM_OPTIMUM_CELSIUS
                        ? 1
                        : bell((meanCelsius - WARM_OPTIMUM_CELSIUS) / WARM_SPREAD_CELSIUS);
        };
    }

    private static double bell(double x) {
        return StrictMath.exp(-x * x / 2);
    }
}
