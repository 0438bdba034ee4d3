package org.cupwright.turf.water;

import org.cupwright.turf.weather.WeatherDay;

/**
 * What a day takes out of the ground.
 *
 * @param etoMillimetres of the reference grass
 * @param etcMillimetres of the turf: ETc = Kc·ETo
 * @param method how it was computed
 */
public record WaterLoss(double etoMillimetres, double etcMillimetres, EtoMethod method) {
    /** By Penman–Monteith where the day has all it needs, else from the temperatures. */
    public static WaterLoss of(WeatherDay day, WeatherStation site, double cropCoefficient) {
        boolean full = PenmanMonteith.canUse(day);
        double eto = full
                ? PenmanMonteith.of(day, site).etoMillimetres()
                : Hargreaves.etoMillimetres(
                        day.highestCelsius(),
                        day.lowestCelsius(),
                        site.latitudeDegrees(),
                        day.day().getDayOfYear());
        return new WaterLoss(eto, cropCoefficient * eto, full ? EtoMethod.PENMAN_MONTEITH : EtoMethod.HARGREAVES);
    }
}
