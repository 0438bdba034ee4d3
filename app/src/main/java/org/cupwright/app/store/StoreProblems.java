package org.cupwright.app.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import org.cupwright.app.desk.Problem;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What can go wrong with a data folder and a person can mend. */
final class StoreProblems {
    private StoreProblems() {}

    static Problem cannotMake(Path folder) {
        return about("folderNotWritable", folder, "");
    }

    static Problem notOurs(Path file) {
        return about("notOurs", file, "");
    }

    static Problem newer(Path file, int found, int known) {
        return new Problem(
                Message.of("problem.store.newer", new Message.Count(found), new Message.Count(known)),
                List.of(where(file)),
                new Message.Count(found),
                Message.of("try.store.newer"));
    }

    /** The problem behind an error of the database, or the error itself as a defect when nobody outside can mend it. */
    static RuntimeException of(SQLException error, Path file) {
        String kind = error instanceof SQLiteException sqlite ? kind(sqlite.getResultCode()) : "";
        return kind.isEmpty() ? new IllegalStateException(error) : about(kind, file, error.getMessage());
    }

    /** As {@link #of}, for an error that came up inside another library: its cause decides. */
    static RuntimeException of(RuntimeException error, Path file) {
        for (Throwable cause = error.getCause(); cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql) {
                RuntimeException known = of(sql, file);
                return known instanceof Problem ? known : error;
            }
        }
        return error;
    }

    private static String kind(SQLiteErrorCode code) {
        String name = code.name().toUpperCase(Locale.ROOT);
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

    private static Problem about(String kind, Path place, String value) {
        return Problem.of(Message.of("problem.store." + kind), where(place), value, Message.of("try.store." + kind));
    }

    private static Message where(Path place) {
        return Message.of("where.place", new Name(place.toString()));
    }
}
