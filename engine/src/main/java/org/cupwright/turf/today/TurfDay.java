package org.cupwright.turf.today;

import java.time.LocalDate;
import org.cupwright.policy.Policy;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.turf.growth.GrowthSeries;
import org.cupwright.turf.state.HolesOnGreen;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.weather.WeatherOutlook;

/**
 * All that the lists of a day, and the ground on the days after it, are computed from.
 *
 * @param state what was done, up to this day
 * @param day the day itself: "today"
 * @param outlook the weather as far as it is known, and beyond
 * @param growth growth from well before the day to well after it
 * @param policy the settings of the day
 */
public record TurfDay(TurfState state, LocalDate day, WeatherOutlook outlook, GrowthSeries growth, Policy policy) {
    /** How far ahead ground can be asked for: a season's plan, and the longest clock after it. */
    public static final int DAYS_AHEAD = 200;

    public static TurfDay of(TurfState state, LocalDate day, WeatherOutlook outlook, Policy policy) {
        GrowthSeries growth = GrowthSeries.over(
                outlook,
                policy.get(TurfPolicy.GRASS),
                day.minusDays(2L * HolesOnGreen.KEPT_DAYS),
                day.plusDays(DAYS_AHEAD));
        return new TurfDay(state, day, outlook, growth, policy);
    }
}
