package org.cupwright.democourse;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.cupwright.cupchange.DayReading.WeatherEntered;

/**
 * An invented maritime spring: mild, windy, rain on two days in five, wet and dry spells that hold for some days. A few
 * days were never written down.
 */
final class SeasonWeather {
    private static final double MEAN_AT_FIRST_CELSIUS = 9.5;
    private static final double MEAN_AT_LAST_CELSIUS = 16.5;

    private final SeasonLog log;
    private final Random random;
    private boolean wet;
    private double warmer;

    private SeasonWeather(SeasonLog log, Random random) {
        this.log = log;
        this.random = random;
    }

    static void write(DemoCourse demo, SeasonLog log) {
        SeasonWeather weather = new SeasonWeather(log, new Random(demo.seed() * 31 + 4));
        int days = 0;
        for (LocalDate day : DemoSeason.days()) {
            WeatherEntered entered = weather.next(day, (double) days / DemoSeason.DAYS);
            boolean forgotten = days % 41 == 17 || days % 53 == 30;
            if (!forgotten) {
                log.all(day, LocalTime.of(20, 20), SeasonLog.HEAD, entered);
            }
            days++;
        }
    }

    private WeatherEntered next(LocalDate day, double share) {
        wet = random.nextDouble() < (wet ? 0.6 : 0.25);
        warmer = 0.7 * warmer + 2.4 * (random.nextDouble() - 0.5);
        double mean = MEAN_AT_FIRST_CELSIUS
                + (MEAN_AT_LAST_CELSIUS - MEAN_AT_FIRST_CELSIUS) * share * (0.6 + 0.4 * share)
                + warmer;
        double half = wet ? 1.6 + random.nextDouble() : 2.6 + 1.6 * random.nextDouble();
        double rain = wet ? tenths(0.3 + 14 * random.nextDouble() * random.nextDouble()) : 0;
        int sunshine = (int) ((wet ? 160 : 420) * random.nextDouble() * (0.7 + 0.5 * share)) + (wet ? 0 : 120);
        int driest = (wet ? 72 : 54) + random.nextInt(12);
        return new WeatherEntered(
                day,
                tenths(mean + half),
                tenths(mean - half),
                OptionalDouble.of(Math.min(100, driest + 18 + random.nextInt(10))),
                OptionalDouble.of(driest),
                OptionalDouble.of(tenths(3 + 5 * random.nextDouble() + (wet ? 2 : 0))),
                OptionalInt.of(sunshine),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(rain),
                !wet && random.nextInt(12) == 0);
    }

    private static double tenths(double value) {
        return Math.rint(10 * value) / 10;
    }
}
