package org.cupwright.democourse;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cupwright.cupchange.Fact;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.published.SeattleWeather;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.testing.Suite;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/**
 * Four years of hole changes on the invented course in the weather of a real place (vega-datasets, seattle-weather.csv): each day is
 * planned on the ground that the days before have left, with no more of the weather than was known on its morning.
 *
 * <p>Holes are changed daily from April to October and three times a week otherwise (our choice of a club's habit).
 */
class FourYearsIT {
    private static final LocalDate FIRST = LocalDate.of(2012, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2015, 12, 31);
    private static final Set<Month> DAILY = EnumSet.range(Month.APRIL, Month.OCTOBER);
    private static final Set<DayOfWeek> IN_WINTER =
            EnumSet.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY, DayOfWeek.SATURDAY);

    /** Every other spot of the lattice along and across: a year takes minutes, and the plan has less to choose from. */
    private static final int EVERY = 2;

    @Test
    void aFullPlanOnEveryDayAndRulesAreSeldomSetAside() {
        List<LocalDate> changes =
                FIRST.datesUntil(LAST.plusDays(1)).filter(FourYearsIT::isChange).toList();
        int days = Suite.count("days of hole changes in four years", changes.size(), 2);
        DemoPlans plans = new DemoPlans(EVERY);
        List<WeatherDay> weather = List.copyOf(SeattleWeather.read().days());
        TurfState state = TurfState.empty(DemoPlans.ZONE);
        Map<String, Integer> daysByConcession = new TreeMap<>();
        int daysConceded = 0;
        for (LocalDate day : changes.subList(0, days)) {
            DemoPlans.Planned planned = plans.plan(day, state, known(weather, day));
            assertThat(planned.plan().holes().stream().map(PlannedHole::hole))
                    .as("holes planned on %s, conceded %s, seed %d", day, planned.conceded(), Suite.seed())
                    .hasSize(18);
            Set<String> conceded = planned.conceded().values().stream()
                    .flatMap(List::stream)
                    .map(ConcessionStep::concession)
                    .map(Enum::name)
                    .collect(Collectors.toSet());
            conceded.forEach(concession -> daysByConcession.merge(concession, 1, Integer::sum));
            daysConceded += conceded.isEmpty() ? 0 : 1;
            if (day.plusDays(1).getDayOfMonth() == 1) {
                System.out.printf("four years: planned up to %s, set aside on %d days%n", day, daysConceded);
            }
            state = TurfFold.fold(
                    state,
                    planned.plan().holes().stream()
                            .map(hole -> DemoPlans.cut(day, hole))
                            .sorted(Fact.ORDER)
                            .toList());
        }
        System.out.printf(
                Locale.ROOT,
                "four years: days with anything set aside: %d of %d, by rule %s%n",
                daysConceded,
                days,
                daysByConcession);
        assertThat(daysConceded).as("of %d days: %s", days, daysByConcession).isLessThanOrEqualTo(days / 20);
    }

    private static boolean isChange(LocalDate day) {
        return DAILY.contains(day.getMonth()) || IN_WINTER.contains(day.getDayOfWeek());
    }

    private static WeatherOutlook known(List<WeatherDay> weather, LocalDate morning) {
        return WeatherOutlook.of(WeatherSeries.of(
                weather.stream().filter(day -> day.day().isBefore(morning)).toList()));
    }
}
