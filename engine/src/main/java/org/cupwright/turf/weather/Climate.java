package org.cupwright.turf.weather;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;

/**
 * What a record has at a time of year: the mean temperatures of all its days within a week of the calendar day,
 * whatever their year. It knows no hemisphere: the record does.
 */
public final class Climate implements WeatherProvider {
    /** Half the window, days (our choice). */
    private static final int WINDOW_DAYS = 7;

    /** Fewer days than this in the window say nothing (our choice). */
    private static final int FEWEST_DAYS = 5;

    private static final int LEAP_YEAR = 2000;
    private static final int DAYS = 366;

    private final double[] highestSum = new double[DAYS];
    private final double[] lowestSum = new double[DAYS];
    private final int[] count = new int[DAYS];

    public Climate(WeatherSeries record) {
        for (WeatherDay day : record.days()) {
            int centre = slot(day.day());
            for (int off = -WINDOW_DAYS; off <= WINDOW_DAYS; off++) {
                int slot = Math.floorMod(centre + off, DAYS);
                highestSum[slot] += day.highestCelsius();
                lowestSum[slot] += day.lowestCelsius();
                count[slot]++;
            }
        }
    }

    @Override
    public Optional<WeatherDay> find(LocalDate day) {
        int slot = slot(day);
        if (count[slot] < FEWEST_DAYS) {
            return Optional.empty();
        }
        return Optional.of(WeatherDay.of(day, highestSum[slot] / count[slot], lowestSum[slot] / count[slot]));
    }

    private static int slot(LocalDate day) {
        return MonthDay.from(day).atYear(LEAP_YEAR).getDayOfYear() - 1;
    }
}
