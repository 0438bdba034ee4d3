package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cupwright.app.storage.upkeep.FolderReport.Damage;
import org.cupwright.app.store.SqlFailure;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Problem;
import org.flywaydb.core.api.FlywayException;
import org.sqlite.SQLiteException;

/** What can go wrong with a data folder, or with its backup, and a person can mend. */
final class StoreProblems {
    /** What the database says of a file whose head or schema is not as in every file of ours. */
    private static final Pattern LACKING =
            Pattern.compile("no such (table|column)|malformed database schema|unsupported file format");

    private StoreProblems() {}

    /** A piece of work on the database. */
    interface Work<T> {
        T run() throws SQLException, IOException;
    }

    /** Does a piece of work on a file; errors come out as problems where a person can mend them. */
    static <T> T telling(Path file, Work<T> work) {
        try {
            return work.run();
        } catch (SQLException | SqlFailure | IOException | FlywayException error) {
            throw of(error, file);
        }
    }

    /** A problem with a file or folder, by the name of what is said of it. */
    static Problem about(String kind, Path place) {
        return about(kind, place, "");
    }

    static Problem about(String kind, Path place, String value) {
        return Problem.of(Message.of("problem.store." + kind), where(place), value, Message.of("try.store." + kind));
    }

    /** The same for a backup that is written or put in place. */
    static Problem aboutBackup(String kind, Path place) {
        return aboutBackup(kind, place, "");
    }

    static Problem aboutBackup(String kind, Path place, String value) {
        return Problem.of(Message.of("problem.upkeep." + kind), where(place), value, Message.of("try.upkeep." + kind));
    }

    static boolean isAbout(RuntimeException error, String kind) {
        return error instanceof Problem problem && problem.what().key().equals("problem.store." + kind);
    }

    /** The backup that goes before an upgrade could not be written. */
    static Problem notBackedUp(Path copy, Problem why) {
        return new Problem(Message.of("problem.store.notBackedUp"), List.of(where(copy)), why.value(), why.tryThis());
    }

    /** A backup in which something is damaged: what, and where in it. */
    static Problem backupDamaged(Path backup, Damage damage) {
        return new Problem(
                Message.of("problem.upkeep.backupDamaged"),
                List.of(where(backup)),
                new Said(Stream.of(damage.what(), damage.where())
                        .filter(said -> !said.key().equals("where.place")) // which stands before it
                        .toList()),
                Message.of("try.upkeep.backupDamaged"));
    }

    static Problem newer(Path file, int found, int known) {
        return new Problem(
                Message.of("problem.store.newer", new Count(found), new Count(known)),
                List.of(where(file)),
                new Count(found),
                Message.of("try.store.newer"));
    }

    /** The problem behind an error, or the error itself as a defect when nobody outside can mend it. */
    static RuntimeException of(Exception error, Path file) {
        if (error instanceof SqlFailure failure) {
            return of(failure.error(), file);
        }
        if (error instanceof IOException refused) {
            return ofFiles(refused, file);
        }
        for (Throwable cause = error; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql) {
                String kind = sql instanceof SQLiteException sqlite ? kind(sqlite) : "";
                if (!kind.isEmpty()) {
                    return about(kind, file, sql.getMessage());
                }
            }
        }
        if (error instanceof FlywayException) { // migrations are not written down as they were done
            return about(
                    "damaged",
                    file,
                    String.valueOf(error.getMessage()).lines().findFirst().orElse(""));
        }
        return error instanceof RuntimeException defect ? defect : new IllegalStateException(error);
    }

    private static Problem ofFiles(IOException error, Path file) {
        String said = error instanceof FileSystemException told && told.getReason() != null
                ? told.getReason()
                : String.valueOf(error.getMessage());
        boolean full = said.toLowerCase(Locale.ROOT).contains("space");
        return about(full ? "full" : "folderNotWritable", file, said);
    }

    /** A backup could not be written: what to try is another thing than where the data themselves have no room. */
    static Problem ofTarget(IOException error, Path target) {
        boolean full = isAbout(of(error, target), "full");
        String kind = full ? "targetFull" : "targetNotWritable";
        return aboutBackup(kind, target, String.valueOf(error.getMessage()));
    }

    /** As {@link #of}, for a file that was to be a backup of a data folder. */
    static RuntimeException ofSource(Exception error, Path source) {
        RuntimeException known = error instanceof Problem problem ? problem : of(error, source);
        return switch (known instanceof Problem problem ? problem.what().key() : "") {
            case "problem.store.damaged" -> aboutBackup("backupDamaged", source, text(((Problem) known).value()));
            case "problem.store.notOurs" -> aboutBackup("notABackup", source);
            case "problem.store.folderNotWritable" -> aboutBackup("backupNotReadable", source);
            default -> known;
        };
    }

    private static String text(Argument value) {
        return value instanceof Name name ? name.text() : "";
    }

    private static String kind(SQLException error) {
        if (LACKING.matcher(String.valueOf(error.getMessage())).find()) {
            return "damaged";
        }
        String name =
                error instanceof SQLiteException sqlite ? sqlite.getResultCode().name() : "";
        if (name.startsWith("SQLITE_FULL") || name.startsWith("SQLITE_IOERR")) {
            return "full";
        }
        if (name.startsWith("SQLITE_READONLY")
                || name.startsWith("SQLITE_CANTOPEN")
                || name.startsWith("SQLITE_PERM")) {
            return "folderNotWritable";
        }
        if (name.startsWith("SQLITE_NOTADB") || name.startsWith("SQLITE_CORRUPT")) {
            return "damaged";
        }
        return name.startsWith("SQLITE_BUSY") || name.startsWith("SQLITE_LOCKED") ? "busy" : "";
    }

    private static Message where(Path place) {
        return Message.of("where.place", new Name(place.toString()));
    }
}
