package org.cupwright.cupchange;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What no day's weather can be, whether it was measured or foretold. The bounds are wider than any course has seen
 * (our choice).
 */
final class WeatherChecks {
    private WeatherChecks() {}

    static void temperatures(double highestCelsius, double lowestCelsius) {
        Checks.between("highestTemperature", highestCelsius, -60, 60, "°C");
        Checks.between("lowestTemperature", lowestCelsius, -60, 60, "°C");
        notAbove("temperatures", lowestCelsius, highestCelsius);
    }

    static void humidity(OptionalDouble highestPercent, OptionalDouble lowestPercent) {
        Checks.between("highestHumidity", highestPercent, 0, 100, "%");
        Checks.between("lowestHumidity", lowestPercent, 0, 100, "%");
        notAbove("humidities", lowestPercent.orElse(0), highestPercent.orElse(100));
    }

    /** The air cannot be moister than saturated at the day's warmest. */
    static void station(OptionalDouble radiationMegajoules, OptionalDouble dewPointCelsius, double highestCelsius) {
        Checks.between("radiation", radiationMegajoules, 0, 50, "MJ/m²");
        Checks.between("dewPoint", dewPointCelsius, -60, 60, "°C");
        notAbove("dewPoints", dewPointCelsius.orElse(highestCelsius), highestCelsius);
    }

    private static void notAbove(String which, double lowest, double highest) {
        if (!(lowest <= highest)) {
            throw new ImpossibleFact(which, Checks.number(lowest), Checks.number(highest));
        }
    }

    static void sky(OptionalDouble windMetresPerSecond, OptionalInt sunshineMinutes, OptionalDouble rainMillimetres) {
        Checks.between("wind", windMetresPerSecond, 0, 100, "m/s");
        Checks.between("rain", rainMillimetres, 0, 2000, "mm");
        sunshineMinutes.ifPresent(minutes -> Checks.between("sunshine", minutes, 0, 1440, "min"));
    }
}
