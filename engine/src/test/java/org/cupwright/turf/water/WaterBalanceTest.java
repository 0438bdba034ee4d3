package org.cupwright.turf.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeWeather;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** On invented weather. */
class WaterBalanceTest {
    private static final LocalDate DAY = LocalDate.of(2024, 7, 1);
    private static final WeatherStation SITE = new WeatherStation(-35, 100, 10); // the southern winter

    private static WaterStatus status(double rainTenDaysAgo, OptionalDouble irrigationSince) {
        List<WeatherDay> days = new ArrayList<>();
        for (int back = 1; back <= WaterBalance.DAYS_BACK; back++) {
            double rain = back == 10 ? rainTenDaysAgo : 0;
            days.add(MadeWeather.raining(DAY.minusDays(back), 18, 8, rain));
        }
        WaterBalance balance = new WaterBalance(WeatherOutlook.of(WeatherSeries.of(days)), SITE, Policy.defaults());
        return balance.onMorning(
                DAY, day -> day.isBefore(DAY.minusDays(10)) ? OptionalDouble.empty() : irrigationSince);
    }

    @Test
    void aSoakingClosesTheRangeAndTheDeficitGrowsFromThere() {
        WaterStatus status = status(60, OptionalDouble.of(0));
        double loss =
                WaterLoss.of(WeatherDay.of(DAY.minusDays(5), 18, 8), SITE, 0.8).etcMillimetres();
        assertThat(status.deficitMillimetres()).isPresent();
        assertThat(status.deficitMillimetres().getAsDouble()).isCloseTo(9 * loss, within(0.2));
        assertThat(status.unknownDays()).isEqualTo(WaterBalance.DAYS_BACK - 10);
    }

    @Test
    void irrigationNotEnteredIsUnknownNeverNothing() {
        WaterStatus status = status(60, OptionalDouble.empty());
        assertThat(status.deficitMillimetres()).isEmpty();
        assertThat(status.deficitAtLeastMillimetres()).isZero();
        assertThat(status.deficitAtMostMillimetres()).isGreaterThan(5);
        assertThat(status.unknownDays()).isEqualTo(WaterBalance.DAYS_BACK);
    }

    @Test
    void irrigationFillsTheGround() {
        assertThat(status(0, OptionalDouble.of(30)).deficitMillimetres()).hasValue(0);
    }

    @Test
    void withoutAnyWeatherNothingIsClaimed() {
        WaterBalance balance = new WaterBalance(WeatherOutlook.of(WeatherSeries.empty()), SITE, Policy.defaults());
        WaterStatus status = balance.onMorning(DAY, day -> OptionalDouble.of(0));
        assertThat(status.deficitMillimetres()).isEmpty();
        assertThat(status.loss()).isEmpty();
    }

    @Test
    void theSunStaysUpOrDownBeyondThePolarCircle() {
        assertThat(Fao56.daylightHours(80, 172)).isCloseTo(24, within(1e-9));
        assertThat(Fao56.extraterrestrialRadiation(80, 355)).isCloseTo(0, within(1e-9));
        assertThat(Hargreaves.etoMillimetres(-20, -30, 80, 355)).isZero();
    }
}
