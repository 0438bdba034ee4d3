package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Month;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.cupwright.policy.Policy;
import org.cupwright.turf.GrassKind;
import org.cupwright.turf.growth.ClockEnd;
import org.cupwright.turf.growth.GrowthClock;
import org.cupwright.turf.growth.GrowthSeries;
import org.cupwright.turf.water.EtoMethod;
import org.cupwright.turf.water.WaterLoss;
import org.cupwright.turf.water.WeatherStation;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSeries;
import org.cupwright.turf.weather.WeatherSource;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The clocks on four years of real weather (vega-datasets, seattle-weather.csv: 1,461 days, no gap). */
class SeattleWeatherPublishedTest {
    private static final LocalDate FIRST = LocalDate.of(2012, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2015, 12, 31);
    private static final WeatherSeries RECORD = SeattleWeather.read();
    private static final GrowthSeries GROWTH =
            GrowthSeries.over(WeatherOutlook.of(RECORD), GrassKind.COOL_SEASON, FIRST, LAST.plusDays(60));

    @Test
    @DisplayName("The record is whole: 1,461 days")
    void whole() {
        assertThat(RECORD.days()).hasSize(1461);
        assertThat(GROWTH.days(WeatherSource.OBSERVED, FIRST, LAST.plusDays(1))).isEqualTo(1461);
    }

    @Test
    @DisplayName("No clock ever runs beyond its cap, nor below its shorter length, in any season")
    void clocksKeepTheirBounds() {
        GrowthClock rest = GrowthClock.wearRest(Policy.defaults());
        GrowthClock plug = GrowthClock.plug(Policy.defaults());
        Map<Month, int[]> rests = new EnumMap<>(Month.class);
        for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
            ClockEnd rested = rest.endFrom(day, GROWTH);
            ClockEnd knit = plug.endFrom(day, GROWTH);
            assertThat(rested.days()).as("rest from %s", day).isBetween(14, 28);
            assertThat(knit.days()).as("plug from %s", day).isBetween(7, 21);
            int[] sums = rests.computeIfAbsent(day.getMonth(), month -> new int[3]);
            sums[0] += rested.days();
            sums[1] += knit.days();
            sums[2]++;
        }
        rests.forEach((month, sums) -> System.out.printf(
                Locale.ROOT,
                "%-9s rest %4.1f days, plug %4.1f days%n",
                month,
                (double) sums[0] / sums[2],
                (double) sums[1] / sums[2]));
        assertThat(rests.get(Month.JULY)[0] / (double) rests.get(Month.JULY)[2]).isLessThan(15);
        assertThat(rests.get(Month.JANUARY)[0] / (double) rests.get(Month.JANUARY)[2])
                .isGreaterThan(27);
    }

    @Test
    @DisplayName("Growing days by month: days of full growth, cool season, mean of four years")
    void growingDaysByMonth() {
        Map<Month, Double> growing = new TreeMap<>();
        for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
            growing.merge(day.getMonth(), GROWTH.on(day) / 4, Double::sum);
        }
        growing.forEach((month, days) -> System.out.printf(Locale.ROOT, "%-9s %5.1f growing days%n", month, days));
        assertThat(growing.get(Month.JULY)).isBetween(20.0, 31.0);
        assertThat(growing.get(Month.JANUARY)).isBetween(0.0, 3.0);
    }

    @Test
    @DisplayName("Without humidity and radiation the loss is by Hargreaves, small in winter and large in summer")
    void loss() {
        WeatherStation site = new WeatherStation(47.45, 130, 10);
        double[] ofMonth = new double[13];
        RECORD.days().forEach(day -> {
            WaterLoss loss = WaterLoss.of(day, site, 0.8);
            assertThat(loss.method()).isEqualTo(EtoMethod.HARGREAVES);
            assertThat(loss.etoMillimetres()).as("%s", day.day()).isBetween(0.0, 10.0);
            ofMonth[day.day().getMonthValue()] += loss.etoMillimetres() / 4;
        });
        assertThat(ofMonth[7]).isBetween(110.0, 200.0);
        assertThat(ofMonth[1]).isBetween(5.0, 30.0);
    }
}
