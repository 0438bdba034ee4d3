package org.cupwright.turf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.testing.MadeWeather;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The last day, degree or millimetre that still counts, and the first that does not; on invented weather. */
class WeatherBoundsTest {
    private static final LocalDate DAY = LocalDate.of(2023, 6, 10);

    private static WeatherSeries days(LocalDate first, int count, double highest, double lowest) {
        List<WeatherDay> days = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            days.add(WeatherDay.of(first.plusDays(i), highest, lowest));
        }
        return WeatherSeries.of(days);
    }

    private static Optional<WeatherSource> source(WeatherSeries record, LocalDate day) {
        return WeatherOutlook.of(record).find(day).map(KnownWeather::source);
    }

    @Test
    void aGapOfFiveDaysIsFilledBothTemperaturesInProportion() {
        WeatherSeries record =
                WeatherSeries.of(List.of(WeatherDay.of(DAY, 10, 0), WeatherDay.of(DAY.plusDays(6), 22, 6)));
        assertThat(WeatherOutlook.of(record).find(DAY.plusDays(2)))
                .contains(new KnownWeather(WeatherDay.of(DAY.plusDays(2), 14, 2), WeatherSource.FILLED));
    }

    @Test
    void theLastDaysStandForSixWeeksAfterThem() {
        WeatherSeries record = days(DAY, 1, 20, 10);
        assertThat(source(record, DAY.plusDays(42))).contains(WeatherSource.RECENT);
        assertThat(source(record, DAY.plusDays(43))).isEmpty();
    }

    @Test
    void fiveDaysWithinAWeekOfTheDateAreAClimate() {
        WeatherSeries five = days(DAY, 5, 20, 10);
        // a year on: the 10th to the 14th of June lie within a week of the 7th to the 17th
        assertThat(source(five, LocalDate.of(2024, 6, 7))).contains(WeatherSource.CLIMATE);
        assertThat(source(five, LocalDate.of(2024, 6, 6))).isEmpty();
        assertThat(source(five, LocalDate.of(2024, 6, 17))).contains(WeatherSource.CLIMATE);
        assertThat(source(five, LocalDate.of(2024, 6, 18))).isEmpty();
        assertThat(source(days(DAY, 4, 20, 10), LocalDate.of(2024, 6, 11))).isEmpty();
    }

    @Test
    void aClimateReachesOverTheTurnOfTheYear() {
        WeatherSeries record = days(LocalDate.of(2022, 12, 29), 6, 5, -3);
        for (LocalDate day : List.of(LocalDate.of(2024, 12, 31), LocalDate.of(2024, 1, 1))) {
            assertThat(WeatherOutlook.of(record).find(day))
                    .contains(new KnownWeather(WeatherDay.of(day, 5, -3), WeatherSource.CLIMATE));
        }
    }

    @Test
    void twentyDaysOfEitherSeasonSaySomething() {
        assertThat(seasons(20, 20)).contains(new Seasons(15, 5));
        assertThat(seasons(19, 20)).isEmpty();
        assertThat(seasons(20, 19)).isEmpty();
    }

    private static Optional<Seasons> seasons(int ofSummer, int ofWinter) {
        List<WeatherDay> both =
                new ArrayList<>(days(LocalDate.of(2023, 1, 1), ofWinter, 8, 2).days());
        both.addAll(days(LocalDate.of(2023, 7, 1), ofSummer, 20, 10).days());
        return Seasons.of(WeatherSeries.of(both));
    }

    @ParameterizedTest
    @CsvSource({"18, -23.4, true", "18, -23.3, false", "13, -23.4, false", "13.1, -50, true", "18, 50, false"})
    void whatIsWarmerInItsWinterByMoreThanThreeDegreesOutsideTheTropicsContradicts(
            double middle, double latitude, boolean contradicts) {
        assertThat(new Seasons(middle, 10).contradict(latitude)).isEqualTo(contradicts);
    }

    @Test
    void extremesAreWeatherAndWhatIsBeyondThemIsNot() {
        WeatherDay mild = WeatherDay.of(DAY, 20, 10);
        assertThatCode(() -> WeatherDay.of(DAY, 65, -90)).doesNotThrowAnyException();
        assertThatCode(() -> WeatherDay.of(DAY, 10, 10)).doesNotThrowAnyException();
        assertThatThrownBy(() -> WeatherDay.of(DAY, 65.1, 10)).hasMessageContaining("65.1");
        assertThatThrownBy(() -> WeatherDay.of(DAY, 20, -90.1)).hasMessageContaining("-90.1");
        assertThatCode(() -> MadeWeather.humid(mild, 100, 0)).doesNotThrowAnyException();
        assertThatThrownBy(() -> MadeWeather.humid(mild, 100.5, 0)).hasMessageContaining("highest humidity");
        assertThatThrownBy(() -> MadeWeather.humid(mild, 100, -1)).hasMessageContaining("lowest humidity");
        assertThatCode(() -> MadeWeather.windy(mild, 100)).doesNotThrowAnyException();
        assertThatThrownBy(() -> MadeWeather.windy(mild, 101)).hasMessageContaining("wind");
        assertThatCode(() -> MadeWeather.sunny(mild, 24)).doesNotThrowAnyException();
        assertThatThrownBy(() -> MadeWeather.sunny(mild, 24.1)).hasMessageContaining("sunshine");
        assertThatCode(() -> MadeWeather.measured(mild, 50, 5)).doesNotThrowAnyException();
        assertThatThrownBy(() -> MadeWeather.measured(mild, 51, 5)).hasMessageContaining("radiation");
        assertThat(Rain.of(2000).millimetres()).isEqualTo(2000);
        assertThatThrownBy(() -> Rain.of(2000.5)).hasMessageContaining("2000.5");
        assertThatThrownBy(() -> Rain.of(-0.1)).hasMessageContaining("-0.1");
    }

    @Test
    void rainIsKnownAsItWasEntered() {
        assertThat(rain(OptionalDouble.of(12.5), false)).contains(Rain.of(12.5));
        assertThat(rain(OptionalDouble.of(0), false)).contains(Rain.NONE);
        assertThat(rain(OptionalDouble.empty(), true)).contains(new Rain(0, true));
        assertThat(rain(OptionalDouble.empty(), false)).isEmpty();
    }

    private static Optional<Rain> rain(OptionalDouble millimetres, boolean trace) {
        OptionalDouble unknown = OptionalDouble.empty();
        WeatherEntered entered = new WeatherEntered(
                DAY, 20, 10, unknown, unknown, unknown, OptionalInt.empty(), unknown, unknown, millimetres, trace);
        return RecordedWeather.of(List.of(MadeFacts.on("2023-06-10T20:00:00Z", "", entered)))
                .outlook()
                .find(DAY)
                .orElseThrow()
                .weather()
                .rain();
    }
}
