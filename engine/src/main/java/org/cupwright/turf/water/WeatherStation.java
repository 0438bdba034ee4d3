package org.cupwright.turf.water;

import org.cupwright.policy.Policy;
import org.cupwright.turf.TurfPolicy;

/**
 * Where the weather is measured.
 *
 * @param latitudeDegrees north positive, south negative
 * @param altitudeMetres above the sea
 * @param windHeightMetres height of the wind gauge above the ground
 */
public record WeatherStation(double latitudeDegrees, double altitudeMetres, double windHeightMetres) {
    public WeatherStation {
        if (!(Math.abs(latitudeDegrees) <= 90)) {
            throw new IllegalArgumentException("latitude " + latitudeDegrees + " is outside -90 to 90");
        }
        if (!(windHeightMetres >= 1)) {
            throw new IllegalArgumentException("wind gauge at " + windHeightMetres + " m; it must be 1 m or higher");
        }
    }

    public static WeatherStation at(double latitudeDegrees, Policy policy) {
        return new WeatherStation(
                latitudeDegrees, policy.get(TurfPolicy.ALTITUDE_METRES), policy.get(TurfPolicy.WIND_HEIGHT_METRES));
    }
}
