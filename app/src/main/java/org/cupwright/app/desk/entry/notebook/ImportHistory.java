package org.cupwright.app.desk.entry.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DayRange;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Line;
import org.cupwright.formats.table.NotReadLine;
import org.cupwright.formats.table.Reading;
import org.cupwright.formats.table.Table;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;

/**
 * Takes an old notebook of hole locations into the logbook.
 *
 * <p>An entry's id follows from the course, the day, the hole and the place, so that a notebook taken in twice adds
 * nothing.
 */
public record ImportHistory(Session session) {
    private static final List<Column<?>> DAYS = List.of(HistoryLine.DATE);

    /**
     * What reads of a notebook.
     *
     * @param read lines that read
     * @param roughly those among them that know no more of the place than the part of the green
     * @param order in which order day and month stand, where strokes part them
     * @param first the first day among them
     * @param last the last day
     * @param notRead lines that do not
     * @param unended the last line, where the file ends within it
     * @param kept whether anything was kept: not for a dry run
     * @param added entries that are kept now; 0 for a dry run
     * @param known lines whose entries were kept already
     */
    public record Answer(
            Course course,
            int read,
            int roughly,
            Optional<DayOrder> order,
            Optional<LocalDate> first,
            Optional<LocalDate> last,
            List<NotReadLine> notRead,
            Optional<String> unended,
            boolean kept,
            int added,
            int known) {}

    /**
     * Reads a notebook, and keeps what reads when that is wanted.
     *
     * @param order in which order day and month stand where strokes part them; empty to go by the notebook
     * @param farDaysAreRight whether days far from all others are meant
     */
    public Answer read(SourceFile file, Optional<DayOrder> order, boolean farDaysAreRight, boolean keep) {
        Notebook notebook = session.read(this::notebook);
        Read read = FileReading.read(file, in -> notebook.read(in, order));
        Reading<Fact> reading = read.lines();
        if (!farDaysAreRight) {
            reading.withoutFarDays(notebook::day);
        }
        List<Fact> facts = reading.values();
        int added = keep ? session.decide(Right.RECORD, stores -> added(stores, facts)) : 0;
        List<LocalDate> days = facts.stream().map(notebook::day).sorted().toList();
        return new Answer(
                notebook.course(),
                facts.size(),
                (int) facts.stream()
                        .filter(fact -> fact.payload() instanceof CutSomewhere)
                        .count(),
                read.order(),
                days.stream().findFirst(),
                days.stream().reduce((earlier, later) -> later),
                reading.notRead(),
                reading.unended(),
                keep,
                added,
                keep ? facts.size() - added : 0);
    }

    /** What has to be asked of a person about the order of day and month before the notebook can be read. */
    public Optional<Message> question(SourceFile file) {
        return FileReading.read(file, in -> {
            Table table = Table.of(in);
            return DayOrder.question(DayOrder.written(table, HistoryLine.layout(table), DAYS));
        });
    }

    private record Read(Reading<Fact> lines, Optional<DayOrder> order) {}

    /** How many entries are new. */
    private static int added(Stores stores, List<Fact> facts) {
        return (int) facts.stream()
                .filter(fact -> stores.facts().add(fact) == FactStore.Kept.NEW)
                .count();
    }

    private Notebook notebook(Stores stores) {
        Course course = session.course(stores);
        LocalDate today = CourseToday.of(course, session.clock());
        Policy policy = stores.policies().history(course.id()).at(today);
        return new Notebook(course, policy, today, session.person().name(), new HashSet<>());
    }

    /**
     * What lines are read with.
     *
     * @param taken which holes of which days have been
     */
    private record Notebook(Course course, Policy policy, LocalDate today, String person, Set<String> taken) {
        Read read(InputStream in, Optional<DayOrder> said) throws IOException {
            Table table = Table.of(in);
            Layout layout = HistoryLine.layout(table);
            Optional<DayOrder> order = DayOrder.of(DayOrder.written(table, layout, DAYS), said);
            Reading<Fact> lines = table.read(line -> {
                Line plain = DayOrder.plain(line, layout, DAYS, order);
                return fact(HistoryLine.of(layout, plain, table.separator()));
            });
            return new Read(lines, order);
        }

        LocalDate day(Fact fact) {
            return LocalDate.ofInstant(fact.happenedAt(), course.frame().zone());
        }

        Fact fact(HistoryLine line) {
            Hole hole = HoleChoice.hole(course, line.hole());
            if (line.day().isAfter(today)) {
                throw HistoryLine.not("future", line.day().toString());
            }
            DayRange.upTo(today).within(line.day(), "date");
            Payload payload = line.place().payload(hole, policy);
            if (!taken.add(line.day() + " " + hole.id())) {
                throw HistoryLine.not("twice", hole.id());
            }
            Instant morning = DayLog.morning(line.day(), course.frame().zone());
            String name = "notebook " + course.id() + " " + line.day() + " " + hole.id() + " "
                    + line.place().name();
            return new Fact(
                    UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)),
                    Fact.CURRENT_VERSION,
                    morning,
                    morning,
                    Optional.empty(),
                    person,
                    course.id(),
                    Optional.of(hole.id()),
                    payload);
        }
    }
}
