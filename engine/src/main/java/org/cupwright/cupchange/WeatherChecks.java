package org.cupwright.cupchange;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/** What no day's weather can be, whether it was measured or foretold. The bounds are wider than any course has seen (our choice). */
final class WeatherChecks {
    private WeatherChecks() {}

    static void temperatures(double highestCelsius, double lowestCelsius) {
        Checks.between("highest temperature", highestCelsius, -60, 60, "°C");
        Checks.between("lowest temperature", lowestCelsius, -60, 60, "°C");
        Checks.notAbove("the lowest temperature", lowestCelsius, "the highest", highestCelsius, "°C");
    }

    static void humidity(OptionalDouble highestPercent, OptionalDouble lowestPercent) {
        Checks.between("highest humidity", highestPercent, 0, 100, "%");
        Checks.between("lowest humidity", lowestPercent, 0, 100, "%");
        Checks.notAbove("the lowest humidity", lowestPercent.orElse(0), "the highest", highestPercent.orElse(100), "%");
    }

    static void sky(OptionalDouble windMetresPerSecond, OptionalInt sunshineMinutes, OptionalDouble rainMillimetres) {
        Checks.between("wind", windMetresPerSecond, 0, 100, "m/s");
        Checks.between("rain", rainMillimetres, 0, 2000, "mm");
        sunshineMinutes.ifPresent(minutes -> Checks.between("sunshine", minutes, 0, 1440, "min"));
    }
}
