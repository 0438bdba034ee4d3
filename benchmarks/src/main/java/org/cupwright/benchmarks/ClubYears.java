package org.cupwright.benchmarks;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.cupwright.published.SeattleWeather;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSeries;

/**
 * Four years of an invented club's mornings in the weather of a real place (vega-datasets, seattle-weather.csv,
 * 2012–2015). Holes are changed daily from April to October and three times a week otherwise (our choice of a habit).
 */
final class ClubYears {
    static final LocalDate FIRST = LocalDate.of(2012, 1, 1);
    static final LocalDate END = LocalDate.of(2016, 1, 1);
    static final int YEARS = 4;

    private static final Set<Month> DAILY = EnumSet.range(Month.APRIL, Month.OCTOBER);
    private static final Set<DayOfWeek> IN_WINTER =
            EnumSet.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY, DayOfWeek.SATURDAY);

    private final List<WeatherDay> weather = List.copyOf(SeattleWeather.read().days());

    /** All days on which holes are changed. */
    List<LocalDate> days() {
        return FIRST.datesUntil(END).filter(ClubYears::isChange).toList();
    }

    private static boolean isChange(LocalDate day) {
        return DAILY.contains(day.getMonth()) || IN_WINTER.contains(day.getDayOfWeek());
    }

    /** The weather as far as it was known on a morning. */
    WeatherOutlook known(LocalDate morning) {
        return WeatherOutlook.of(WeatherSeries.of(
                weather.stream().filter(day -> day.day().isBefore(morning)).toList()));
    }
}
