package org.cupwright.app.desk.log;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.app.storage.json.UnreadableFact;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Fact;
import org.cupwright.formats.BoundedInput;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** The logbook as a file: one fact a line, as {@link FactJson} writes it, corrections among them. */
public record FactLines(Session session) {
    /** Ten busy years come to some 100 MB (our choice of bound). */
    private static final long MOST_BYTES = 256L << 20;

    /** A drawn area with a thousand corners has some 60,000 characters (our choice of bound). */
    private static final int LONGEST_LINE = 100_000;

    /** Twenty busy years (our choice of bound). */
    private static final int MOST_ENTRIES = 500_000;

    /** All facts of a course as they were recorded, a line each. */
    public List<String> export() {
        return session.read(stores -> stores.facts().all(session.course().idIn(stores)).stream()
                .map(FactJson::write)
                .toList());
    }

    /**
     * What became of the lines of a file.
     *
     * @param added facts that are kept now, or would be
     * @param known facts that were kept already
     * @param kept whether anything was kept: not for a dry run
     */
    public record Imported(Course course, int added, int known, boolean kept) {}

    /**
     * Reads the facts of a file, and keeps them when that is wanted: all of them or none.
     *
     * @throws Problem if a line is no fact of this course, or contradicts one of the same id
     */
    public Imported read(SourceFile file, boolean keep) {
        Course course = session.read(session::course);
        List<Fact> facts = FileReading.read(file, in -> facts(in, file, course));
        return session.decideIf(keep, Right.RECORD, stores -> {
            int added = unknown(stores.facts(), facts, file);
            if (keep) {
                facts.forEach(stores.facts()::add);
            }
            return new Imported(course, added, facts.size() - added, keep);
        });
    }

    /** How many of the facts are not kept yet. */
    private static int unknown(FactStore store, List<Fact> facts, SourceFile file) {
        Map<UUID, Fact> read = new HashMap<>();
        int unknown = 0;
        for (Fact fact : facts) {
            Optional<Fact> before =
                    Optional.ofNullable(read.putIfAbsent(fact.id(), fact)).or(() -> store.find(fact.id()));
            if (before.isPresent() && !before.get().receivedAt(Instant.EPOCH).equals(fact.receivedAt(Instant.EPOCH))) {
                throw bad("different", file, fact.id().toString());
            }
            unknown += before.isEmpty() ? 1 : 0;
        }
        return unknown;
    }

    private static List<Fact> facts(InputStream in, SourceFile file, Course course) throws IOException {
        List<Fact> facts = new ArrayList<>();
        BufferedReader lines = BoundedInput.text(in, MOST_BYTES);
        long number = 0;
        for (String line = next(lines, file, number + 1); line != null; line = next(lines, file, number + 1)) {
            number++;
            if (!line.isBlank()) {
                facts.add(fact(line, file, number, course));
                if (facts.size() > MOST_ENTRIES) {
                    throw bad("many", file, Integer.toString(MOST_ENTRIES));
                }
            }
        }
        return facts;
    }

    /** The next line, read sign by sign, so that a file without line ends is not read whole. */
    private static String next(BufferedReader reader, SourceFile file, long number) throws IOException {
        StringBuilder line = new StringBuilder();
        int sign = reader.read();
        if (sign < 0) {
            return null;
        }
        for (; sign >= 0 && sign != '\n'; sign = reader.read()) {
            if (line.length() >= LONGEST_LINE) {
                throw bad("long", file, Long.toString(number));
            }
            line.append((char) sign);
        }
        return line.toString();
    }

    private static Fact fact(String line, SourceFile file, long number, Course course) {
        try {
            Fact fact = FactJson.read(line);
            if (!fact.course().equals(course.id())) {
                Message what = Message.of("problem.log.otherCourse", new Name(fact.course()), new Name(course.id()));
                throw inLine("otherCourse", what, file, number, fact.course());
            }
            return fact;
        } catch (UnreadableFact unreadable) {
            Message what = Message.of("problem.log.lineNotRead", unreadable.why());
            throw inLine("lineNotRead", what, file, number, unreadable.where());
        }
    }

    private static Problem inLine(String kind, Message what, SourceFile file, long number, String value) {
        Message line = Message.of("survey.where.line", new Count(number));
        return new Problem(what, List.of(where(file), line), new Name(value), Message.of("try.log." + kind));
    }

    private static Problem bad(String kind, SourceFile file, String value) {
        return Problem.of(Message.of("problem.log." + kind), where(file), value, Message.of("try.log." + kind));
    }

    private static Message where(SourceFile file) {
        return Message.of("where.place", new Name(file.name()));
    }
}
