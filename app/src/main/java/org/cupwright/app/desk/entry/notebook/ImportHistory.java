package org.cupwright.app.desk.entry.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.CutWay;
import org.cupwright.cupchange.CupWork.FoundBy;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.CupWork.Soil;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.NotRead;
import org.cupwright.formats.table.NotReadLine;
import org.cupwright.formats.table.Reading;
import org.cupwright.formats.table.Table;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/**
 * Takes an old notebook of hole locations into the logbook.
 *
 * <p>An entry's id follows from the course, the day, the hole and the place, so that a notebook taken in twice adds
 * nothing.
 */
public final class ImportHistory {
    /** Cups are changed before play (our choice; only the day matters). */
    private static final LocalTime MORNING = LocalTime.of(5, 0);

    private final Session session;

    public ImportHistory(Session session) {
        this.session = session;
    }

    /**
     * What reads of a notebook.
     *
     * @param read lines that read
     * @param roughly those among them that know no more of the place than the part of the green
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
     * @param farDaysAreRight whether days far from all others are meant
     */
    public Answer read(SourceFile file, boolean farDaysAreRight, boolean keep) {
        Notebook notebook = session.read(this::notebook);
        Reading<Fact> reading = FileReading.read(file, notebook::read);
        if (!farDaysAreRight) {
            reading.withoutFarDays(notebook::day);
        }
        List<Fact> facts = reading.values();
        int added = keep ? session.decide(Right.RECORD, stores -> added(stores, facts)) : 0;
        List<LocalDate> days = facts.stream().map(notebook::day).sorted().toList();
        return new Answer(
                notebook.course,
                facts.size(),
                (int) facts.stream()
                        .filter(fact -> fact.payload() instanceof CutSomewhere)
                        .count(),
                days.stream().findFirst(),
                days.stream().reduce((earlier, later) -> later),
                reading.notRead(),
                reading.unended(),
                keep,
                added,
                keep ? facts.size() - added : 0);
    }

    /** How many entries are new. */
    private static int added(Stores stores, List<Fact> facts) {
        int added = 0;
        for (Fact fact : facts) {
            added += stores.facts().add(fact) == FactStore.Kept.NEW ? 1 : 0;
        }
        return added;
    }

    private Notebook notebook(Stores stores) {
        Course course = session.course(stores);
        LocalDate today = CourseToday.of(course, session.clock());
        return new Notebook(
                course,
                stores.policies().history(course.id()).at(today),
                today,
                session.person().name());
    }

    /** What lines are read with, and which holes of which days have been. */
    private static final class Notebook {
        private final Course course;
        private final Policy policy;
        private final LocalDate today;
        private final String person;
        private final Set<String> taken = new HashSet<>();

        private Notebook(Course course, Policy policy, LocalDate today, String person) {
            this.course = course;
            this.policy = policy;
            this.today = today;
            this.person = person;
        }

        private Reading<Fact> read(InputStream in) throws IOException {
            Table table = Table.of(in);
            Layout layout = HistoryLine.layout(table);
            return table.read(line -> read(HistoryLine.of(layout, line, table.separator())));
        }

        private Fact read(HistoryLine line) throws NotRead {
            try {
                return fact(line);
            } catch (Problem problem) {
                throw new NotRead(problem.what(), problem.tryThis());
            }
        }

        private LocalDate day(Fact fact) {
            return LocalDate.ofInstant(fact.happenedAt(), course.frame().zone());
        }

        private Fact fact(HistoryLine line) throws NotRead {
            Hole hole = HoleChoice.hole(course, line.hole());
            if (line.day().isAfter(today)) {
                throw HistoryLine.not("future", line.day().toString());
            }
            Payload payload = payload(hole, line.place());
            if (!taken.add(line.day() + " " + hole.id())) {
                throw HistoryLine.not("twice", hole.id());
            }
            return fact(line, hole, payload);
        }

        /** What the line says; of a place of which only the part of the green is known, no more than that. */
        private Payload payload(Hole hole, NotebookPlace place) {
            if (place instanceof NotebookPlace.PartOf part) {
                return new CutSomewhere(part.depth(), part.across());
            }
            return place instanceof NotebookPlace.Paced paced
                    ? cut(SpotOnGreen.of(hole, policy, paced.spot()))
                    : new LeftInOldHole(Optional.empty());
        }

        private static CupChanged cut(MapPoint at) {
            return new CupChanged(
                    Optional.empty(),
                    at,
                    FoundBy.PACES,
                    Optional.empty(),
                    CutWay.ONE_PIECE,
                    Soil.NONE,
                    false,
                    false,
                    Optional.empty());
        }

        private Fact fact(HistoryLine line, Hole hole, Payload payload) {
            Instant morning =
                    line.day().atTime(MORNING).atZone(course.frame().zone()).toInstant();
            return new Fact(
                    id(line, hole),
                    Fact.CURRENT_VERSION,
                    morning,
                    morning,
                    Optional.empty(),
                    person,
                    course.id(),
                    Optional.of(hole.id()),
                    payload);
        }

        private UUID id(HistoryLine line, Hole hole) {
            String name = String.join(
                    " ",
                    "notebook",
                    course.id(),
                    line.day().toString(),
                    hole.id(),
                    line.place().name());
            return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        }
    }
}
