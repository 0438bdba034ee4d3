package org.cupwright.turf.water;

import org.cupwright.turf.weather.WeatherDay;

/**
 * Reference evapotranspiration of a day by FAO-56 Penman–Monteith, with every step on the way, so that it can be
 * checked by hand. Soil heat flux is 0, as the paper takes it for a day. Units as in {@link Fao56}.
 */
public record PenmanMonteith(
        double windAtTwoMetres,
        double psychrometricConstant,
        double saturationSlope,
        double meanSaturationKilopascals,
        double actualKilopascals,
        double extraterrestrialRadiation,
        double daylightHours,
        double solarRadiation,
        double clearSkyRadiation,
        double netShortwave,
        double netLongwave,
        double netRadiation,
        double etoMillimetres) {
    /** Whether a day has all that the equation needs: humidity or dew point, wind, and radiation or sunshine. */
    public static boolean canUse(WeatherDay day) {
        boolean humidity = day.highestHumidityPercent().isPresent()
                && day.lowestHumidityPercent().isPresent();
        return (humidity || day.dewPointCelsius().isPresent())
                && day.windMetresPerSecond().isPresent()
                && (day.radiationMegajoules().isPresent() || day.sunshineHours().isPresent());
    }

    /**
     * @throws IllegalArgumentException if the day lacks something ({@link #canUse})
     */
    public static PenmanMonteith of(WeatherDay day, WeatherStation site) {
        if (!canUse(day)) {
            throw new IllegalArgumentException(
                    day.day() + " lacks humidity, wind, or radiation; take Hargreaves from the temperatures");
        }
        double highest = day.highestCelsius();
        double lowest = day.lowestCelsius();
        int dayOfYear = day.day().getDayOfYear();
        double above = Fao56.extraterrestrialRadiation(site.latitudeDegrees(), dayOfYear);
        double daylight = Fao56.daylightHours(site.latitudeDegrees(), dayOfYear);
        double solar = day.radiationMegajoules().isPresent()
                ? day.radiationMegajoules().getAsDouble()
                : Fao56.solarRadiation(day.sunshineHours().orElseThrow(), daylight, above);
        double clearSky = Fao56.clearSkyRadiation(site.altitudeMetres(), above);
        double actual = actualKilopascals(day);
        double shortwave = Fao56.netShortwave(solar);
        double longwave = Fao56.netLongwave(highest, lowest, actual, solar, clearSky);
        double wind = Fao56.windAtTwoMetres(day.windMetresPerSecond().orElseThrow(), site.windHeightMetres());
        double gamma = Fao56.psychrometricConstant(Fao56.pressureKilopascals(site.altitudeMetres()));
        double slope = Fao56.saturationSlope(day.meanCelsius());
        double saturation = Fao56.meanSaturationKilopascals(highest, lowest);
        double eto =
                Fao56.etoMillimetres(slope, shortwave - longwave, gamma, day.meanCelsius(), wind, saturation - actual);
        return new PenmanMonteith(
                wind,
                gamma,
                slope,
                saturation,
                actual,
                above,
                daylight,
                solar,
                clearSky,
                shortwave,
                longwave,
                shortwave - longwave,
                eto);
    }

    /** From the dew point where it is known, the paper's first choice; else from the humidities. */
    private static double actualKilopascals(WeatherDay day) {
        return day.dewPointCelsius().isPresent()
                ? Fao56.saturationKilopascals(day.dewPointCelsius().getAsDouble())
                : Fao56.actualKilopascals(
                        day.highestCelsius(),
                        day.lowestCelsius(),
                        day.highestHumidityPercent().orElseThrow(),
                        day.lowestHumidityPercent().orElseThrow());
    }
}
