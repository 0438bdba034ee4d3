package org.cupwright.app.desk.weather;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.cupwright.course.Course;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Problem;

/** What the logbook has of the weather, and how what a table says of a day goes into it. */
abstract class WeatherEntries {
    private final Course course;
    private final List<Fact> all;
    private final Map<LocalDate, Fact> byDay = new HashMap<>();

    /**
     * @param day the day that an entry speaks of; empty for entries of other kinds
     */
    WeatherEntries(Course course, List<Fact> all, Function<Payload, Optional<LocalDate>> day) {
        this.course = course;
        this.all = all;
        for (Fact fact : Logbook.of(all).facts()) {
            day.apply(fact.payload()).ifPresent(said -> byDay.put(said, fact));
        }
    }

    /**
     * An entry that makes the logbook say what a table says.
     *
     * @param fact the entry
     * @param instead whether the logbook said something else of the day
     */
    record News(Fact fact, boolean instead) {}

    /** Empty when the logbook says it already. */
    abstract Optional<News> news(WeatherEntered weather, String person, Instant now);

    /** @throws Problem for a day of which a table may not speak */
    abstract void check(LocalDate day);

    Course course() {
        return course;
    }

    List<Fact> all() {
        return all;
    }

    /** What counts of a day. */
    Optional<Fact> find(LocalDate day) {
        return Optional.ofNullable(byDay.get(day));
    }

    /** An entry whose id follows from what it says, so that the same table taken in twice adds nothing. */
    Fact fact(String name, Instant happened, Instant recorded, String person, Payload payload) {
        UUID id = UUID.nameUUIDFromBytes((name + " " + course.id() + " " + payload).getBytes(StandardCharsets.UTF_8));
        return new Fact(
                id,
                Fact.CURRENT_VERSION,
                happened,
                recorded,
                Optional.empty(),
                person,
                course.id(),
                Optional.empty(),
                payload);
    }
}
