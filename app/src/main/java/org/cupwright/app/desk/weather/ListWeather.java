package org.cupwright.app.desk.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.log.DaySpan;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.turf.weather.KnownWeather;
import org.cupwright.turf.weather.RecordedWeather;
import org.cupwright.turf.weather.WeatherBasis;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSeries;
import org.cupwright.turf.weather.WeatherSource;

/** The weather day by day, and what each day's rests on. */
public record ListWeather(Session session) {
    /** How many days are listed where nobody says: our choice, two weeks. */
    private static final int USUAL_DAYS = 14;

    /**
     * A day.
     *
     * @param known its weather, as well as it is known; empty when nothing is
     */
    public record Day(LocalDate day, Optional<KnownWeather> known) {}

    /**
     * The weather of a stretch of days.
     *
     * @param basis how many days rest on what
     * @param gaps days before today of which nobody entered anything
     * @param days all of them, in order
     */
    public record Answer(Course course, WeatherBasis basis, int gaps, List<Day> days) {}

    /**
     * The days that are wanted.
     *
     * @param from the first day; empty: two weeks up to today, or up to the last where that is earlier
     * @param to the last day; empty: the last that is foretold, or today
     */
    public Answer of(Optional<LocalDate> from, Optional<LocalDate> to) {
        return session.read(stores -> listed(stores, from, to));
    }

    private Answer listed(Stores stores, Optional<LocalDate> from, Optional<LocalDate> upTo) {
        Course course = session.course(stores);
        LocalDate today = CourseToday.of(course, session.clock());
        RecordedWeather recorded = RecordedWeather.of(new FactsInEffect(stores.facts(), course.id())
                .ofKinds(RecordedWeather.KINDS, FactStore.LONG_AGO, FactStore.LONG_HENCE));
        LocalDate to = upTo.orElseGet(() -> lastForetold(recorded.forecasts(), today));
        LocalDate last = to.isBefore(today) ? to : today;
        DaySpan span =
                DaySpan.of(from.orElse(last.minusDays(USUAL_DAYS - 1)), to).shown();
        WeatherOutlook outlook = recorded.outlook();
        List<Day> days = new ArrayList<>();
        int gaps = 0;
        for (LocalDate day = span.from(); !day.isAfter(span.to()); day = day.plusDays(1)) {
            Optional<KnownWeather> known = outlook.find(day);
            days.add(new Day(day, known));
            boolean entered = known.filter(weather -> weather.source() == WeatherSource.OBSERVED)
                    .isPresent();
            gaps += day.isBefore(today) && !entered ? 1 : 0;
        }
        return new Answer(course, WeatherBasis.of(outlook, span.from(), span.to()), gaps, List.copyOf(days));
    }

    private static LocalDate lastForetold(WeatherSeries forecasts, LocalDate today) {
        return forecasts.days().stream()
                .map(WeatherDay::day)
                .filter(day -> day.isAfter(today))
                .max(LocalDate::compareTo)
                .orElse(today);
    }
}
