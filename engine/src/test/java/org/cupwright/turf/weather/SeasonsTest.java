package org.cupwright.turf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** On invented years: a wave of temperatures with its summit in July. */
class SeasonsTest {
    private static WeatherSeries year(int fromDay, int days, double swing) {
        List<WeatherDay> record = new ArrayList<>();
        for (int i = 0; i < days; i++) {
            LocalDate day = LocalDate.of(2023, 1, 1).plusDays(fromDay + i);
            double mean = 12 - swing * StrictMath.cos(2 * StrictMath.PI * (day.getDayOfYear() - 15) / 365);
            record.add(WeatherDay.of(day, mean + 5, mean - 5));
        }
        return WeatherSeries.of(record);
    }

    private static boolean contradicts(WeatherSeries record, double latitude) {
        return Seasons.of(record).orElseThrow().contradict(latitude);
    }

    @Test
    void aNorthernYearContradictsTheSouthAndTheOtherWayRound() {
        WeatherSeries northern = year(0, 365, 8);
        WeatherSeries southern = year(0, 365, -8);
        assertThat(Seasons.of(northern).orElseThrow().middleCelsius()).isCloseTo(19.2, within(0.1));
        assertThat(contradicts(northern, -35)).isTrue();
        assertThat(contradicts(northern, 52)).isFalse();
        assertThat(contradicts(southern, 52)).isTrue();
        assertThat(contradicts(southern, -35)).isFalse();
    }

    @Test
    void theTropicsAndAnEvenYearContradictNothing() {
        assertThat(contradicts(year(0, 365, 8), -20)).isFalse();
        assertThat(contradicts(year(0, 365, 1), -35)).isFalse();
    }

    @Test
    void halfAYearSaysNothing() {
        assertThat(Seasons.of(year(100, 150, 8))).isEmpty();
        assertThat(Seasons.of(WeatherSeries.empty())).isEmpty();
    }
}
