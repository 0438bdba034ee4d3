package org.cupwright.turf.weather;

import java.time.Month;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How warm a record is in the two halves of the year: it tells a table of another place, or of the other half of the
 * earth.
 *
 * @param middleCelsius mean from June to August
 * @param turnCelsius mean from December to February
 */
public record Seasons(double middleCelsius, double turnCelsius) {
    private static final Set<Month> MIDDLE_OF_YEAR = Set.of(Month.JUNE, Month.JULY, Month.AUGUST);
    private static final Set<Month> TURN_OF_YEAR = Set.of(Month.DECEMBER, Month.JANUARY, Month.FEBRUARY);

    /** So many days of either season say something (our choice). */
    private static final int FEWEST_DAYS = 20;

    /** A smaller difference of means, °C, may be chance (our choice). */
    private static final double LEAST_DIFFERENCE_CELSIUS = 3;

    /**
     * The tropics: nearer to the equator the sun stands overhead twice a year, and the warm season is not where it is
     * elsewhere.
     */
    private static final double TROPICS_DEGREES = 23.4;

    /** Empty when the record has too few days of either season. */
    public static Optional<Seasons> of(WeatherSeries record) {
        OptionalDouble middle = mean(record, MIDDLE_OF_YEAR);
        OptionalDouble turn = mean(record, TURN_OF_YEAR);
        return middle.isEmpty() || turn.isEmpty()
                ? Optional.empty()
                : Optional.of(new Seasons(middle.getAsDouble(), turn.getAsDouble()));
    }

    /**
     * Whether the record is clearly warmer in what is winter at a latitude; in the tropics nothing is contradicted.
     *
     * @param latitudeDegrees south is negative
     */
    public boolean contradict(double latitudeDegrees) {
        double warmerInItsWinter = -Math.signum(latitudeDegrees) * (middleCelsius - turnCelsius);
        return Math.abs(latitudeDegrees) >= TROPICS_DEGREES && warmerInItsWinter > LEAST_DIFFERENCE_CELSIUS;
    }

    private static OptionalDouble mean(WeatherSeries record, Set<Month> months) {
        double[] means = record.days().stream()
                .filter(day -> months.contains(day.day().getMonth()))
                .mapToDouble(WeatherDay::meanCelsius)
                .toArray();
        return means.length < FEWEST_DAYS
                ? OptionalDouble.empty()
                : Arrays.stream(means).average();
    }
}
