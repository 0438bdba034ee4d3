package org.cupwright.turf.weather;

import java.time.LocalDate;
import java.time.Month;
import java.util.OptionalDouble;
import java.util.Set;

/** Whether a record of weather has its summer when a place has it: a table of another place, or of the other half of the earth, has not. */
public final class Seasons {
    private static final Set<Month> MIDDLE_OF_YEAR = Set.of(Month.JUNE, Month.JULY, Month.AUGUST);
    private static final Set<Month> TURN_OF_YEAR = Set.of(Month.DECEMBER, Month.JANUARY, Month.FEBRUARY);

    /** So many days of either season say something (our choice). */
    private static final int FEWEST_DAYS = 20;

    /** A smaller difference of means, °C, may be chance (our choice). */
    private static final double LEAST_DIFFERENCE_CELSIUS = 3;

    /** Nearer to the equator the sun stands overhead twice a year, and summer is not where it is elsewhere: the tropics, degrees. */
    private static final double TROPICS_DEGREES = 23.4;

    private Seasons() {}

    /**
     * Whether the record is clearly warmer in the half of the year that is winter at a latitude. Too few days of either season, or a
     * place in the tropics, contradict nothing.
     *
     * @param latitudeDegrees south is negative
     */
    public static boolean contradict(WeatherSeries record, double latitudeDegrees) {
        OptionalDouble middle = mean(record, MIDDLE_OF_YEAR);
        OptionalDouble turn = mean(record, TURN_OF_YEAR);
        if (Math.abs(latitudeDegrees) < TROPICS_DEGREES || middle.isEmpty() || turn.isEmpty()) {
            return false;
        }
        double warmerInNorthernSummer = middle.getAsDouble() - turn.getAsDouble();
        return -Math.signum(latitudeDegrees) * warmerInNorthernSummer > LEAST_DIFFERENCE_CELSIUS;
    }

    private static OptionalDouble mean(WeatherSeries record, Set<Month> months) {
        double sum = 0;
        int days = 0;
        for (WeatherDay day : record.days()) {
            LocalDate date = day.day();
            if (months.contains(date.getMonth())) {
                sum += day.meanCelsius();
                days++;
            }
        }
        return days < FEWEST_DAYS ? OptionalDouble.empty() : OptionalDouble.of(sum / days);
    }
}
