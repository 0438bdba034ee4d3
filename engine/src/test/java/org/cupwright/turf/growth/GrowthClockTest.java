package org.cupwright.turf.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.policy.Policy;
import org.cupwright.turf.GrassKind;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSeries;
import org.cupwright.turf.weather.WeatherSource;
import org.junit.jupiter.api.Test;

class GrowthClockTest {
    private static final LocalDate START = LocalDate.of(2024, 2, 20);
    private static final GrowthClock REST = GrowthClock.wearRest(Policy.defaults());

    /** Invented weather: the same mean temperature day after day. */
    private static GrowthSeries steady(double celsius, int days) {
        List<WeatherDay> weather = new ArrayList<>();
        for (int i = 0; i < days; i++) {
            weather.add(WeatherDay.of(START.plusDays(i), celsius + 5, celsius - 5));
        }
        return GrowthSeries.over(
                WeatherOutlook.of(WeatherSeries.of(weather)), GrassKind.COOL_SEASON, START, START.plusDays(90));
    }

    @Test
    void runsAtItsShorterLengthWhileTheGrassGrows() {
        ClockEnd end = REST.endFrom(START, steady(20, 60));
        assertThat(end.days()).isEqualTo(14);
        assertThat(end.lastDay()).isEqualTo(LocalDate.of(2024, 3, 4)); // over the leap day
        assertThat(end.meanGrowth()).isCloseTo(1, within(1e-12));
        assertThat(end.restsOn()).isEqualTo(WeatherSource.OBSERVED);
    }

    @Test
    void runsAtItsLongerLengthWhereNothingGrowsAndNeverBeyond() {
        assertThat(REST.endFrom(START, steady(-10, 60)).days()).isEqualTo(28);
        Policy capped = Policy.defaults().with(TurfPolicy.WEAR_REST_CAP_DAYS, 18);
        assertThat(GrowthClock.wearRest(capped).endFrom(START, steady(-10, 60)).days())
                .isEqualTo(18);
        Policy veryShort = Policy.defaults().with(TurfPolicy.WEAR_REST_CAP_DAYS, 10);
        assertThat(GrowthClock.wearRest(veryShort)
                        .endFrom(START, steady(20, 60))
                        .days())
                .isEqualTo(10);
    }

    @Test
    void stretchesStraightInBetween() {
        assertThat(REST.daysAt(0.5)).isEqualTo(14);
        assertThat(REST.daysAt(0.3)).isCloseTo(21, within(1e-9));
        assertThat(REST.daysAt(0.1)).isCloseTo(28, within(1e-9));
        assertThat(REST.daysAt(0.0)).isEqualTo(28);
        GrowthClock plug = GrowthClock.plug(Policy.defaults());
        assertThat(plug.daysAt(0.3)).isCloseTo(14, within(1e-9));
        // between two whole days the next one is the first that is enough
        assertThat(REST.endFrom(START, steady(11.5, 60)).days())
                .isEqualTo((int) Math.ceil(REST.daysAt(GrowthPotential.of(GrassKind.COOL_SEASON, 11.5))));
    }

    @Test
    void saysWhatItRestsOn() {
        assertThat(REST.endFrom(START, steady(20, 12)).restsOn()).isEqualTo(WeatherSource.CLIMATE);
        assertThat(REST.endFrom(START, steady(20, 3)).restsOn()).isEqualTo(WeatherSource.RECENT);
        GrowthSeries nothing = GrowthSeries.over(
                WeatherOutlook.of(WeatherSeries.empty()), GrassKind.WARM_SEASON, START, START.plusDays(40));
        assertThat(REST.endFrom(START, nothing).restsOn()).isEqualTo(WeatherSource.ASSUMED);
        assertThat(REST.endFrom(START, nothing).days()).isEqualTo(14);
    }

    @Test
    void refusesDaysItWasNotMadeFor() {
        assertThatThrownBy(() -> steady(20, 12).on(START.minusDays(1))).hasMessageContaining("2024-02-19");
    }
}
