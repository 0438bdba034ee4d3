package org.cupwright.turf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.testing.MadeWeather;
import org.cupwright.turf.GrassKind;
import org.cupwright.turf.growth.GrowthSeries;
import org.junit.jupiter.api.Test;

/** On invented weather. */
class WeatherOutlookTest {
    private static final LocalDate DAY = LocalDate.of(2024, 2, 28);

    private static WeatherSource source(WeatherOutlook outlook, LocalDate day) {
        return outlook.find(day).orElseThrow().source();
    }

    @Test
    void fillsAShortGapBetweenItsNeighboursAndCountsIt() {
        WeatherOutlook outlook = WeatherOutlook.of(
                WeatherSeries.of(List.of(MadeWeather.raining(DAY, 10, 0, 3), WeatherDay.of(DAY.plusDays(3), 16, 6))));
        KnownWeather leapDay = outlook.find(DAY.plusDays(1)).orElseThrow();
        assertThat(leapDay.source()).isEqualTo(WeatherSource.FILLED);
        assertThat(leapDay.weather().day()).isEqualTo(LocalDate.of(2024, 2, 29));
        assertThat(leapDay.weather().highestCelsius()).isCloseTo(12, within(1e-12));
        assertThat(leapDay.weather().rain()).isEmpty();
        GrowthSeries growth = GrowthSeries.over(outlook, GrassKind.COOL_SEASON, DAY, DAY.plusDays(3));
        assertThat(growth.days(WeatherSource.FILLED, DAY, DAY.plusDays(4))).isEqualTo(2);
    }

    @Test
    void doesNotBridgeALongGap() {
        WeatherOutlook outlook = WeatherOutlook.of(
                WeatherSeries.of(List.of(WeatherDay.of(DAY, 10, 0), WeatherDay.of(DAY.plusDays(7), 16, 6))));
        assertThat(source(outlook, DAY.plusDays(3))).isEqualTo(WeatherSource.RECENT);
        assertThat(outlook.find(DAY.minusDays(1))).isEmpty();
        assertThat(outlook.find(DAY.plusDays(60))).isEmpty();
    }

    @Test
    void takesTheForecastBeforeTheSeason() {
        List<WeatherDay> year = new ArrayList<>();
        for (int i = 1; i <= 366; i++) {
            double celsius = 15 - 10 * Math.cos(2 * Math.PI * i / 366);
            year.add(WeatherDay.of(DAY.minusDays(i), celsius + 4, celsius - 4));
        }
        WeatherProvider forecast =
                day -> day.isBefore(DAY.plusDays(3)) ? Optional.of(WeatherDay.of(day, 30, 20)) : Optional.empty();
        WeatherOutlook outlook = WeatherOutlook.of(WeatherSeries.of(year), forecast);
        assertThat(source(outlook, DAY.minusDays(1))).isEqualTo(WeatherSource.OBSERVED);
        assertThat(source(outlook, DAY.plusDays(2))).isEqualTo(WeatherSource.FORECAST);
        assertThat(source(outlook, DAY.plusDays(3))).isEqualTo(WeatherSource.CLIMATE);
        assertThat(outlook.find(DAY.plusDays(183)).orElseThrow().weather().meanCelsius())
                .isCloseTo(25, within(0.5)); // half a year on, the other end of the invented wave
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> WeatherDay.of(DAY, 3, 8)).hasMessageContaining("lowest");
        assertThatThrownBy(() -> WeatherDay.of(DAY, Double.NaN, 8)).hasMessageContaining("lowest");
        assertThatThrownBy(() -> MadeWeather.humid(WeatherDay.of(DAY, 8, 3), 50, 60))
                .hasMessageContaining("humidity");
        assertThatThrownBy(() -> new Rain(2, true)).hasMessageContaining("trace");
    }
}
