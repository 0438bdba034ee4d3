package org.cupwright.app.desk.weather;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.cupwright.app.desk.CourseChoice;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.DataFolder;
import org.cupwright.app.desk.FileReading;
import org.cupwright.app.desk.SourceFile;
import org.cupwright.app.desk.Stores;
import org.cupwright.app.desk.log.LastWord;
import org.cupwright.app.desk.log.NotRead;
import org.cupwright.app.desk.log.NotReadLine;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.DayReading.WeatherEntered;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.Payload;
import org.cupwright.green.survey.Excerpt;
import org.cupwright.green.survey.Finding;
import org.cupwright.green.survey.FindingKind;
import org.cupwright.green.survey.TextLines;
import org.cupwright.green.survey.Where;
import org.cupwright.message.Message.Count;

/**
 * Takes the weather of past days into the logbook from a table, one line a day. A day that is there with other values is corrected;
 * the same table taken in twice adds nothing.
 */
public final class ImportWeather {
    /** Fifty years of days come to 2 MB (our choice of bounds). */
    private static final long MOST_BYTES = 16L << 20;

    /** A day's weather is known in the evening (our choice; only the day matters). */
    private static final LocalTime EVENING = LocalTime.of(21, 0);

    private final DataFolder folder;
    private final Clock clock;

    public ImportWeather(DataFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * What is wanted.
     *
     * @param course the course; empty: the only one there is
     * @param file the table
     * @param columns by {@link WeatherColumn#typed()}: what the table calls it, where it is none of the usual names
     * @param units by {@link WeatherColumn#typed()}: its unit, where the table does not say
     * @param person who is named as the one who says so
     * @param keep whether to keep what reads
     */
    public record Request(
            Optional<String> course,
            SourceFile file,
            Map<String, String> columns,
            Map<String, String> units,
            String person,
            boolean keep) {}

    /**
     * What reads of a table.
     *
     * @param units by {@link WeatherColumn#typed()}: the unit in which the column was read
     * @param read days that read
     * @param first the first of them
     * @param last the last
     * @param missing days between those two of which the table says nothing that reads; the turf's clocks fill them, and count that
     * @param noRain days that read without their rain, which counts as unknown
     * @param added days that are new to the logbook
     * @param changed days that are in it with other values, which the table's replace
     * @param known days that are in it with the same values
     * @param notRead lines that do not read
     * @param kept whether anything was kept: not for a dry run
     */
    public record Answer(
            Course course,
            Map<String, String> units,
            int read,
            Optional<LocalDate> first,
            Optional<LocalDate> last,
            long missing,
            int noRain,
            int added,
            int changed,
            int known,
            List<NotReadLine> notRead,
            boolean kept) {}

    /** Reads a table, and keeps what reads when that is wanted. */
    public Answer read(Request request) {
        Logged logged = folder.read(stores -> Logged.of(stores, request.course(), clock));
        Table table = new Table(logged.today());
        FileReading.read(request.file(), in -> {
            table.read(in, new WeatherFormat.Said(request.columns(), request.units()));
            return table;
        });
        List<Fact> facts = new ArrayList<>();
        int known = 0;
        for (WeatherEntered weather : table.days.values()) {
            Optional<Fact> fact = logged.news(weather, request.person(), clock.instant());
            fact.ifPresent(facts::add);
            known += fact.isPresent() ? 0 : 1;
        }
        if (request.keep() && !facts.isEmpty()) {
            folder.write(stores -> facts.forEach(stores.facts()::add));
        }
        int changed = (int) facts.stream()
                .filter(fact -> fact.payload() instanceof Correction)
                .count();
        return table.answer(logged.course(), facts.size() - changed, changed, known, request.keep());
    }

    /** The weather that the logbook has, by day. */
    private record Logged(Course course, LocalDate today, Map<LocalDate, Fact> days, List<Fact> all) {
        static Logged of(Stores stores, Optional<String> courseId, Clock clock) {
            Course course = CourseChoice.course(stores, courseId);
            List<Fact> all = stores.facts().all(course.id());
            Map<LocalDate, Fact> days = new HashMap<>();
            for (Fact fact : Logbook.of(all).facts()) {
                if (fact.payload() instanceof WeatherEntered weather) {
                    days.put(weather.day(), fact);
                }
            }
            return new Logged(course, CourseToday.of(course, clock), days, all);
        }

        /** The entry that makes the logbook say what the table says; empty when it does. */
        Optional<Fact> news(WeatherEntered weather, String person, Instant now) {
            Fact there = days.get(weather.day());
            if (there == null) {
                Instant evening = weather.day()
                        .atTime(EVENING)
                        .atZone(course.frame().zone())
                        .toInstant();
                return Optional.of(fact(id(weather, ""), evening, evening, person, weather));
            }
            if (there.payload().equals(weather)) {
                return Optional.empty();
            }
            Instant recorded = LastWord.on(there, all, now);
            UUID id = id(weather, " " + there.id() + " " + recorded);
            return Optional.of(fact(id, there.happenedAt(), recorded, person, Correction.to(there.id(), weather)));
        }

        private Fact fact(UUID id, Instant happened, Instant recorded, String person, Payload payload) {
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

        private UUID id(WeatherEntered weather, String more) {
            String name = "weather " + course.id() + " " + weather + more;
            return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** What has been read so far. */
    private static final class Table {
        private final LocalDate today;
        private final SortedMap<LocalDate, WeatherEntered> days = new TreeMap<>();
        private final List<NotReadLine> notRead = new ArrayList<>();
        private Map<String, String> units = Map.of();

        private Table(LocalDate today) {
            this.today = today;
        }

        private void read(InputStream in, WeatherFormat.Said said) throws IOException {
            TextLines lines = new TextLines(in, MOST_BYTES);
            Optional<String> header = lines.next();
            if (header.isEmpty()) {
                throw Finding.of(FindingKind.EMPTY_FILE, Where.file(), new Count(lines.number()))
                        .failure();
            }
            WeatherFormat format = WeatherFormat.of(header.get(), said);
            units = format.unitNames();
            for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
                try {
                    take(WeatherLine.read(format, line.get()));
                } catch (NotRead why) {
                    notRead.add(new NotReadLine(lines.number(), Excerpt.of(line.get()), why.what(), why.tryThis()));
                }
            }
        }

        private void take(WeatherEntered weather) throws NotRead {
            if (!weather.day().isBefore(today)) {
                throw WeatherLine.not("notOver", weather.day().toString());
            }
            if (days.putIfAbsent(weather.day(), weather) != null) {
                throw WeatherLine.not("twice", weather.day().toString());
            }
        }

        private Answer answer(Course course, int added, int changed, int known, boolean kept) {
            Optional<LocalDate> first = days.isEmpty() ? Optional.empty() : Optional.of(days.firstKey());
            Optional<LocalDate> last = days.isEmpty() ? Optional.empty() : Optional.of(days.lastKey());
            long span = days.isEmpty()
                    ? 0
                    : days.lastKey().toEpochDay() - days.firstKey().toEpochDay() + 1;
            int noRain = (int) days.values().stream()
                    .filter(weather -> weather.rainMillimetres().isEmpty())
                    .count();
            return new Answer(
                    course,
                    units,
                    days.size(),
                    first,
                    last,
                    span - days.size(),
                    noRain,
                    added,
                    changed,
                    known,
                    List.copyOf(notRead),
                    kept);
        }
    }
}
