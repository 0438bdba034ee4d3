package org.cupwright.app.desk.weather;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.log.MomentOfCorrection;
import org.cupwright.app.storage.DayRange;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.Fact;

/** The weather as it was: a day that is there with other values is corrected. */
final class PastWeather extends WeatherEntries {
    /** A day's weather is known in the evening (our choice; only the day matters). */
    private static final LocalTime EVENING = LocalTime.of(21, 0);

    private final LocalDate today;

    PastWeather(Course course, List<Fact> all, LocalDate today) {
        super(
                course,
                all,
                payload -> payload instanceof WeatherEntered weather ? Optional.of(weather.day()) : Optional.empty());
        this.today = today;
    }

    @Override
    void check(LocalDate day) {
        if (!day.isBefore(today)) {
            throw WeatherColumn.not("notOver", day.toString());
        }
        DayRange.upTo(today).within(day, "date");
    }

    @Override
    Optional<News> news(WeatherEntered weather, String person, Instant now) {
        Optional<Fact> there = find(weather.day());
        if (there.isEmpty()) {
            Instant evening = weather.day()
                    .atTime(EVENING)
                    .atZone(course().frame().zone())
                    .toInstant();
            return Optional.of(new News(fact("weather", evening, evening, person, weather), false));
        }
        return there.filter(fact -> !fact.payload().equals(weather))
                .map(fact -> new News(correction(fact, weather, person, now), true));
    }

    private Fact correction(Fact of, WeatherEntered weather, String person, Instant now) {
        Instant recorded = MomentOfCorrection.on(of, all(), now);
        String name = "weather " + of.id() + " " + recorded;
        return fact(name, of.happenedAt(), recorded, person, Correction.to(of.id(), weather));
    }
}
