package org.cupwright.app.wiring;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.FactStore.Kept;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.cupchange.CrewNote.NoteToNext;
import org.cupwright.cupchange.Fact;

/**
 * A plain process that keeps invented facts, {@link #TOGETHER} in one piece of work, and says so after each: the line
 * {@code begin N} when a piece of work begins, {@code kept N} when it is acknowledged.
 *
 * <p>Arguments: the data folder, a name, how many pieces of work.
 */
public final class FactWriter {
    static final String COURSE = "made";

    /** Facts in one piece of work: all of them are kept or none. */
    static final int TOGETHER = 3;

    private static final Instant START = Instant.parse("2026-06-20T05:00:00Z");

    private FactWriter() {}

    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        SqliteFolder folder = new SqliteFolder(Path.of(arguments[0]), Clock.fixed(START, ZoneOffset.UTC));
        int pieces = Integer.parseInt(arguments[2]);
        for (int piece = 0; piece < pieces; piece++) {
            List<Fact> facts = facts(arguments[1], piece);
            out.println("begin " + piece);
            Writes.to(folder, stores -> {
                for (Fact fact : facts) {
                    if (stores.facts().add(fact) != Kept.NEW) {
                        throw new IllegalStateException(fact.id() + " was there already");
                    }
                }
            });
            out.println("kept " + piece);
        }
    }

    /** The facts of one piece of work of the writer of that name. */
    static List<Fact> facts(String name, int piece) {
        List<Fact> facts = new ArrayList<>();
        for (int i = 0; i < TOGETHER; i++) {
            facts.add(new Fact(
                    id(name, piece, i),
                    Fact.CURRENT_VERSION,
                    START.plusSeconds(60L * piece + i),
                    START.plusSeconds(60L * piece + i),
                    Optional.empty(),
                    name,
                    COURSE,
                    Optional.empty(),
                    new NoteToNext("invented note " + piece + " " + i)));
        }
        return facts;
    }

    static UUID id(String name, int piece, int fact) {
        return UUID.nameUUIDFromBytes((name + " " + piece + " " + fact).getBytes(StandardCharsets.UTF_8));
    }

    /** Starts the process; what it says goes to its output. */
    static Process start(Path folder, String name, int pieces) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> line = List.of(
                java,
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                FactWriter.class.getName(),
                folder.toString(),
                name,
                Integer.toString(pieces));
        return new ProcessBuilder(line)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
