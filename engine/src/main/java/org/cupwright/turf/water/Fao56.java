package org.cupwright.turf.water;

/**
 * The equations of FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith 1998) for a day; their numbers
 * stand beside them. Temperatures in °C, pressures in kPa, radiation in MJ/m² and day, as the paper has them.
 */
public final class Fao56 {
    /** Stefan–Boltzmann constant, MJ/(K⁴ m² day) (table 2.8). */
    private static final double STEFAN_BOLTZMANN = 4.903e-9;

    /** °C to K as equation 39 has it. */
    private static final double KELVIN = 273.16;

    private Fao56() {}

    /** Atmospheric pressure, kPa (equation 7). */
    public static double pressureKilopascals(double altitudeMetres) {
        return 101.3 * StrictMath.pow((293 - 0.0065 * altitudeMetres) / 293, 5.26);
    }

    /** Psychrometric constant, kPa/°C (equation 8). */
    public static double psychrometricConstant(double pressureKilopascals) {
        return 0.665e-3 * pressureKilopascals;
    }

    /** Saturation vapour pressure, kPa (equation 11). */
    public static double saturationKilopascals(double celsius) {
        return 0.6108 * StrictMath.exp(17.27 * celsius / (celsius + 237.3));
    }

    /**
     * The dew point at which air of a vapour pressure is saturated, °C: equation 11 turned round; the actual vapour
     * pressure is that of saturation at the dew point (equation 14).
     */
    public static double dewPointCelsius(double actualKilopascals) {
        double x = StrictMath.log(actualKilopascals / 0.6108);
        return 237.3 * x / (17.27 - x);
    }

    /** Slope of the saturation vapour pressure curve, kPa/°C (equation 13). */
    public static double saturationSlope(double celsius) {
        double offset = celsius + 237.3;
        return 4098 * saturationKilopascals(celsius) / (offset * offset);
    }

    /** Mean saturation vapour pressure of a day, kPa (equation 12). */
    public static double meanSaturationKilopascals(double highestCelsius, double lowestCelsius) {
        return (saturationKilopascals(highestCelsius) + saturationKilopascals(lowestCelsius)) / 2;
    }

    /** Actual vapour pressure, kPa (equation 17). */
    public static double actualKilopascals(
            double highestCelsius, double lowestCelsius, double highestPercent, double lowestPercent) {
        return (saturationKilopascals(lowestCelsius) * highestPercent / 100
                        + saturationKilopascals(highestCelsius) * lowestPercent / 100)
                / 2;
    }

    /** Wind at 2 m above the ground, m/s (equation 47). */
    public static double windAtTwoMetres(double windMetresPerSecond, double heightMetres) {
        return windMetresPerSecond * 4.87 / StrictMath.log(67.8 * heightMetres - 5.42);
    }

    /** The sun's declination, rad (equation 24). */
    public static double declination(int dayOfYear) {
        return 0.409 * StrictMath.sin(2 * Math.PI / 365 * dayOfYear - 1.39);
    }

    /** Hour angle at sunset, rad (equation 25); 0 in the polar night, π where the sun does not set. */
    public static double sunsetHourAngle(double latitudeDegrees, int dayOfYear) {
        double cosine = -StrictMath.tan(Math.toRadians(latitudeDegrees)) * StrictMath.tan(declination(dayOfYear));
        return StrictMath.acos(Math.max(-1, Math.min(1, cosine)));
    }

    /** Radiation above the atmosphere (equations 21 and 23). */
    public static double extraterrestrialRadiation(double latitudeDegrees, int dayOfYear) {
        double latitude = Math.toRadians(latitudeDegrees);
        double nearness = 1 + 0.033 * StrictMath.cos(2 * Math.PI / 365 * dayOfYear);
        double declination = declination(dayOfYear);
        double sunset = sunsetHourAngle(latitudeDegrees, dayOfYear);
        return 24
                * 60
                / Math.PI
                * 0.0820
                * nearness
                * (sunset * StrictMath.sin(latitude) * StrictMath.sin(declination)
                        + StrictMath.cos(latitude) * StrictMath.cos(declination) * StrictMath.sin(sunset));
    }

    /** Hours of daylight (equation 34). */
    public static double daylightHours(double latitudeDegrees, int dayOfYear) {
        return 24 / Math.PI * sunsetHourAngle(latitudeDegrees, dayOfYear);
    }

    /** Solar radiation from hours of sunshine, by the paper's own coefficients 0.25 and 0.50 (equation 35). */
    public static double solarRadiation(double sunshineHours, double daylightHours, double extraterrestrial) {
        double share = daylightHours == 0 ? 0 : Math.min(1, sunshineHours / daylightHours);
        return (0.25 + 0.50 * share) * extraterrestrial;
    }

    /** Solar radiation under a clear sky (equation 37). */
    public static double clearSkyRadiation(double altitudeMetres, double extraterrestrial) {
        return (0.75 + 2e-5 * altitudeMetres) * extraterrestrial;
    }

    /** Net shortwave radiation of grass, albedo 0.23 (equation 38). */
    public static double netShortwave(double solarRadiation) {
        return (1 - 0.23) * solarRadiation;
    }

    /** Net longwave radiation, outgoing (equation 39); the relative radiation is taken as 1 at most. */
    public static double netLongwave(
            double highestCelsius, double lowestCelsius, double actualKilopascals, double solar, double clearSky) {
        double warm = highestCelsius + KELVIN;
        double cold = lowestCelsius + KELVIN;
        double emitted = STEFAN_BOLTZMANN * (warm * warm * warm * warm + cold * cold * cold * cold) / 2;
        double relative = clearSky == 0 ? 1 : Math.min(1, solar / clearSky);
        return emitted * (0.34 - 0.14 * Math.sqrt(actualKilopascals)) * (1.35 * relative - 0.35);
    }

    /**
     * Reference evapotranspiration, mm/day (equation 6); never below 0.
     *
     * @param available net radiation less what warms the soil, R_n − G
     * @param deficitKilopascals mean saturation vapour pressure less the actual one
     */
    public static double etoMillimetres(
            double slope,
            double available,
            double psychrometric,
            double meanCelsius,
            double windAtTwoMetres,
            double deficitKilopascals) {
        double driedByWind = psychrometric * 900 / (meanCelsius + 273) * windAtTwoMetres * deficitKilopascals;
        double eto = (0.408 * slope * available + driedByWind) / (slope + psychrometric * (1 + 0.34 * windAtTwoMetres));
        return Math.max(0, eto);
    }
}
