package org.cupwright.app.desk.weather;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.course.Course;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.DayReading.WeatherForecast;
import org.cupwright.cupchange.Fact;

/** The weather as it is foretold: what is heard later stands beside what was heard before, and counts in its place. */
final class ComingWeather extends WeatherEntries {
    /** Nobody foretells single days beyond this; a day farther off is a slip of the pen (our choice). */
    private static final int FARTHEST_DAYS = 30;

    private final LocalDate today;

    ComingWeather(Course course, List<Fact> all, LocalDate today) {
        super(
                course,
                all,
                payload ->
                        payload instanceof WeatherForecast forecast ? Optional.of(forecast.day()) : Optional.empty());
        this.today = today;
    }

    @Override
    void check(LocalDate day) {
        if (day.isBefore(today)) {
            throw WeatherColumn.not("over", day.toString());
        }
        if (day.isAfter(today.plusDays(FARTHEST_DAYS))) {
            throw WeatherColumn.not("far", day.toString());
        }
    }

    @Override
    Optional<News> news(WeatherEntered weather, String person, Instant now) {
        WeatherForecast forecast = WeatherForecast.of(weather);
        Optional<Fact> there = find(forecast.day());
        if (there.filter(fact -> fact.payload().equals(forecast)).isPresent()) {
            return Optional.empty();
        }
        Instant heard = there.map(Fact::happenedAt)
                .map(before -> before.plusMillis(1))
                .filter(after -> after.isAfter(heard(now)))
                .orElse(heard(now));
        return Optional.of(new News(fact("forecast " + heard, heard, heard, person, forecast), there.isPresent()));
    }

    private Instant heard(Instant now) {
        ZoneId zone = course().frame().zone();
        boolean today = LocalDate.ofInstant(now, zone).equals(this.today);
        return today ? now : DayLog.morning(this.today, zone);
    }
}
