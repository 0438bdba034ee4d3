package org.cupwright.turf.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeWeather;
import org.cupwright.turf.TurfPolicy;
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

    /** Ten days of no rain and no irrigation after a soaking, then one in which both came. */
    @Test
    void rainAndIrrigationOfOneDayFillTheGroundTogether() {
        List<WeatherDay> days = new ArrayList<>();
        for (int back = 1; back <= WaterBalance.DAYS_BACK; back++) {
            double rain = back == 11 ? 60 : back == 1 ? 2 : 0;
            days.add(MadeWeather.raining(DAY.minusDays(back), 18, 8, rain));
        }
        WaterBalance balance = new WaterBalance(WeatherOutlook.of(WeatherSeries.of(days)), SITE, Policy.defaults());
        Function<LocalDate, OptionalDouble> dry = day -> OptionalDouble.of(0);
        Function<LocalDate, OptionalDouble> threeYesterday =
                day -> OptionalDouble.of(day.equals(DAY.minusDays(1)) ? 3 : 0);
        double without = balance.onMorning(DAY, dry).deficitMillimetres().orElseThrow();
        WaterStatus with = balance.onMorning(DAY, threeYesterday);
        assertThat(without).isGreaterThan(5);
        assertThat(with.deficitMillimetres().orElseThrow()).isCloseTo(without - 3, within(1e-9));
        assertThat(with.deficitAtLeastMillimetres()).isCloseTo(without - 3, within(1e-9));
        assertThat(with.unknownDays()).isZero();
    }

    @Test
    void rainThatWasForetoldHasNotFallen() {
        List<WeatherDay> observed = new ArrayList<>();
        List<WeatherDay> foretold = new ArrayList<>();
        for (int back = 1; back <= WaterBalance.DAYS_BACK; back++) {
            WeatherDay day = MadeWeather.raining(DAY.minusDays(back), 18, 8, back == 20 || back == 2 ? 60 : 0);
            (back > 3 ? observed : foretold).add(day);
        }
        WeatherOutlook outlook = WeatherOutlook.of(WeatherSeries.of(observed), WeatherSeries.of(foretold));
        WaterStatus status =
                new WaterBalance(outlook, SITE, Policy.defaults()).onMorning(DAY, day -> OptionalDouble.of(0));
        double loss =
                WaterLoss.of(WeatherDay.of(DAY.minusDays(5), 18, 8), SITE, 0.8).etcMillimetres();
        assertThat(status.unknownDays()).isEqualTo(3);
        assertThat(status.filledDays()).isZero();
        assertThat(status.deficitAtLeastMillimetres()).isZero();
        assertThat(status.deficitAtMostMillimetres()).isCloseTo(19 * loss, within(0.5));
    }

    @Test
    void daysBetweenNeighboursAreCountedAsFilled() {
        List<WeatherDay> days = new ArrayList<>();
        for (int back = 1; back <= WaterBalance.DAYS_BACK + 1; back++) {
            if (back != 5 && back != 6) {
                days.add(MadeWeather.raining(DAY.minusDays(back), 18, 8, 0));
            }
        }
        WaterStatus status = new WaterBalance(WeatherOutlook.of(WeatherSeries.of(days)), SITE, Policy.defaults())
                .onMorning(DAY, day -> OptionalDouble.of(0));
        assertThat(status.filledDays()).isEqualTo(2);
        assertThat(status.unknownDays()).isEqualTo(2);
    }

    @Test
    void boundsHalfAMillimetreApartAreAsGoodAsOne() {
        assertThat(new WaterStatus(DAY, Optional.empty(), 3, 3.5, 0, 0).deficitMillimetres())
                .hasValue(3.5);
        assertThat(new WaterStatus(DAY, Optional.empty(), 3, 3.51, 0, 0).deficitMillimetres())
                .isEmpty();
    }

    @Test
    void withoutHumidityWindOrSunTheTemperaturesHaveToDo() {
        WeatherDay full = new WeatherDay(
                DAY,
                18,
                8,
                OptionalDouble.of(80),
                OptionalDouble.of(50),
                OptionalDouble.of(2),
                OptionalDouble.of(6),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
        assertThat(PenmanMonteith.canUse(full)).isTrue();
        assertThat(WaterLoss.of(full, SITE, 0.8).method()).isEqualTo(EtoMethod.PENMAN_MONTEITH);
        WeatherDay temperatures = WeatherDay.of(DAY, 18, 8);
        WeatherDay dampAndSunny = MadeWeather.sunny(MadeWeather.humid(temperatures, 80, 50), 6);
        WeatherDay windyAndSunny = MadeWeather.sunny(MadeWeather.windy(temperatures, 2), 6);
        WeatherDay dampAndWindy = MadeWeather.windy(MadeWeather.humid(temperatures, 80, 50), 2);
        WeatherDay dewy = new WeatherDay(
                DAY,
                18,
                8,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(2),
                OptionalDouble.of(6),
                OptionalDouble.empty(),
                OptionalDouble.of(7),
                Optional.empty());
        assertThat(PenmanMonteith.canUse(dewy)).isTrue();
        for (WeatherDay lacking : List.of(temperatures, dampAndSunny, windyAndSunny, dampAndWindy)) {
            assertThat(PenmanMonteith.canUse(lacking)).isFalse();
            assertThat(WaterLoss.of(lacking, SITE, 0.8).method()).isEqualTo(EtoMethod.HARGREAVES);
            assertThatThrownBy(() -> PenmanMonteith.of(lacking, SITE)).hasMessageContaining("2024-07-01 lacks");
        }
    }

    @Test
    void measuredRadiationIsTakenBeforeTheHoursOfSun() {
        WeatherDay measured = new WeatherDay(
                DAY,
                18,
                8,
                OptionalDouble.of(80),
                OptionalDouble.of(50),
                OptionalDouble.of(2),
                OptionalDouble.of(6),
                OptionalDouble.of(7.5),
                OptionalDouble.empty(),
                Optional.empty());
        PenmanMonteith steps = PenmanMonteith.of(measured, SITE);
        assertThat(steps.solarRadiation()).isEqualTo(7.5);
        assertThat(steps.netShortwave()).isCloseTo(0.77 * 7.5, within(1e-12));
        assertThat(WaterLoss.of(measured, SITE, 0.8).etcMillimetres())
                .isCloseTo(0.8 * steps.etoMillimetres(), within(1e-12));
    }

    @Test
    void aStationIsOnTheGlobeAndItsWindGaugeAMetreUpAtLeast() {
        assertThat(new WeatherStation(-90, 0, 1).windHeightMetres()).isEqualTo(1);
        assertThat(new WeatherStation(90, 0, 1).latitudeDegrees()).isEqualTo(90);
        assertThatThrownBy(() -> new WeatherStation(-90.1, 0, 10)).hasMessageContaining("-90.1");
        assertThatThrownBy(() -> new WeatherStation(48, 0, 0.9)).hasMessageContaining("0.9 m");
        Policy policy =
                Policy.defaults().with(TurfPolicy.ALTITUDE_METRES, 650.0).with(TurfPolicy.WIND_HEIGHT_METRES, 2.0);
        assertThat(WeatherStation.at(48, policy)).isEqualTo(new WeatherStation(48, 650, 2));
    }
}
