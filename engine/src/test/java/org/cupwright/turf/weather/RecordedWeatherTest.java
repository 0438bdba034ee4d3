package org.cupwright.turf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.cupwright.cupchange.MadeFacts.on;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.DayReading.WeatherForecast;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.ImpossibleFact;
import org.cupwright.message.Message.PlainNumber;
import org.cupwright.policy.Policy;
import org.cupwright.turf.water.WaterBalance;
import org.cupwright.turf.water.WaterStatus;
import org.cupwright.turf.water.WeatherStation;
import org.junit.jupiter.api.Test;

/** On an invented logbook. */
class RecordedWeatherTest {
    private static final LocalDate DAY = LocalDate.of(2024, 5, 10);

    private static WeatherEntered entered(LocalDate day, double highest, double rain, boolean trace) {
        return new WeatherEntered(
                day,
                highest,
                5,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(3),
                OptionalInt.of(90),
                OptionalDouble.of(14.5),
                OptionalDouble.of(4.25),
                OptionalDouble.of(rain),
                trace);
    }

    private static Fact heard(String moment, LocalDate day, double highest) {
        return on(moment, "", WeatherForecast.of(entered(day, highest, 30, false)));
    }

    @Test
    void theForecastHeardLastCountsAndNoneOnceTheDayIsEntered() {
        List<Fact> facts = new ArrayList<>(List.of(
                heard("2024-05-08T05:00:00Z", DAY, 20),
                heard("2024-05-09T05:00:00Z", DAY, 24),
                heard("2024-05-09T05:00:00Z", DAY.plusDays(1), 19)));
        WeatherOutlook before = RecordedWeather.of(facts).outlook();
        assertThat(before.find(DAY).orElseThrow().weather().highestCelsius()).isEqualTo(24);
        assertThat(before.find(DAY).orElseThrow().weather().sunshineHours()).hasValue(1.5);
        facts.add(on("2024-05-10T19:00:00Z", "", entered(DAY, 22, 0, true)));
        KnownWeather known = RecordedWeather.of(facts).outlook().find(DAY).orElseThrow();
        assertThat(known.source()).isEqualTo(WeatherSource.OBSERVED);
        assertThat(known.weather().rain()).contains(new Rain(0, true));
    }

    @Test
    void rainThatIsForetoldHasNotFallen() {
        List<Fact> facts = new ArrayList<>();
        for (int back = 1; back <= WaterBalance.DAYS_BACK; back++) {
            facts.add(on("2024-05-09T20:00:00Z", "", entered(DAY.minusDays(back), 20, back == 30 ? 80 : 0, false)));
        }
        facts.add(heard("2024-05-09T05:00:00Z", DAY, 20)); // 30 mm on the day before the one that is asked for
        WaterBalance balance = new WaterBalance(
                RecordedWeather.of(facts).outlook(), new WeatherStation(50, 100, 10), Policy.defaults());
        WaterStatus morning = balance.onMorning(DAY.plusDays(1), day -> OptionalDouble.of(0));
        assertThat(morning.deficitAtMostMillimetres()).isGreaterThan(20);
        assertThat(morning.unknownDays()).isEqualTo(1);
    }

    @Test
    void theBasisCountsEveryDayOnceByWhatItRestsOn() {
        List<Fact> facts = List.of(
                on("2024-05-06T20:00:00Z", "", entered(DAY.minusDays(4), 20, 0, false)),
                on("2024-05-08T20:00:00Z", "", entered(DAY.minusDays(2), 20, 0, false)),
                heard("2024-05-09T05:00:00Z", DAY, 20));
        WeatherBasis basis = WeatherBasis.of(RecordedWeather.of(facts).outlook(), DAY.minusDays(5), DAY.plusDays(1));
        assertThat(basis.all()).isEqualTo(7);
        assertThat(basis.days(WeatherSource.ASSUMED)).isEqualTo(1);
        assertThat(basis.days(WeatherSource.OBSERVED)).isEqualTo(2);
        assertThat(basis.days(WeatherSource.FILLED)).isEqualTo(1);
        assertThat(basis.days(WeatherSource.FORECAST)).isEqualTo(1);
        assertThat(basis.days(WeatherSource.RECENT)).isEqualTo(2);
        assertThat(basis.days(WeatherSource.CLIMATE)).isZero();
    }

    @Test
    void aForecastCannotBeWhatNoDayCan() {
        assertThatThrownBy(() -> new WeatherForecast(
                        DAY,
                        7,
                        18,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalInt.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()))
                .isInstanceOfSatisfying(ImpossibleFact.class, impossible -> {
                    assertThat(impossible.why().key()).isEqualTo("impossible.temperatures");
                    assertThat(impossible.why().arguments()).containsExactly(new PlainNumber(18), new PlainNumber(7));
                });
    }
}
