package org.cupwright.turf.water;

/**
 * Reference evapotranspiration from temperatures alone, {@code 0.0023·(T_mean + 17.8)·√(T_max − T_min)·R_a}.
 *
 * <p>Source: Hargreaves and Samani 1985; FAO-56 equation 52.
 */
public final class Hargreaves {
    /** Radiation in MJ/m² and day to the water it evaporates, mm (FAO-56 equation 20). */
    private static final double MILLIMETRES_PER_MEGAJOULE = 0.408;

    private Hargreaves() {}

    /**
     * @param extraterrestrialMillimetres radiation above the atmosphere, as the water it would evaporate, mm/day
     * @return mm/day, never below 0
     */
    public static double etoMillimetres(
            double highestCelsius, double lowestCelsius, double extraterrestrialMillimetres) {
        double mean = (highestCelsius + lowestCelsius) / 2;
        double eto = 0.0023 * (mean + 17.8) * Math.sqrt(highestCelsius - lowestCelsius) * extraterrestrialMillimetres;
        return Math.max(0, eto);
    }

    /** The same for a place and a day of the year. */
    public static double etoMillimetres(
            double highestCelsius, double lowestCelsius, double latitudeDegrees, int dayOfYear) {
        double above = Fao56.extraterrestrialRadiation(latitudeDegrees, dayOfYear);
        return etoMillimetres(highestCelsius, lowestCelsius, MILLIMETRES_PER_MEGAJOULE * above);
    }
}
