package org.cupwright.turf.growth;

import java.time.LocalDate;
import org.cupwright.turf.weather.WeatherSource;

/**
 * When a clock runs out.
 *
 * @param lastDay the last day that still counts
 * @param days how many days that are, the first included
 * @param meanGrowth mean growth potential over them
 * @param restsOn the weakest weather it was computed from
 */
public record ClockEnd(LocalDate lastDay, int days, double meanGrowth, WeatherSource restsOn) {}
