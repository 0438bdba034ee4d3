package org.cupwright.app.store;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.flywaydb.core.api.FlywayException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What can go wrong with a data folder and a person can mend. */
final class StoreProblems {
    private StoreProblems() {}

    /** A piece of work on the database. */
    interface Work<T> {
        T run() throws SQLException;
    }

    /** Does a piece of work; errors of the database come out as problems where a person can mend them. */
    static <T> T telling(Path file, Work<T> work) {
        try {
            return work.run();
        } catch (SQLException error) {
            throw of(error, file);
        } catch (SqlFailure failure) {
            throw of(failure.error(), file);
        } catch (FlywayException failure) {
            throw of(failure, file);
        }
    }

    static Problem busy(Path file) {
        return about("busy", file, "");
    }

    static Problem olderNotWritable(Path folder) {
        return about("olderNotWritable", folder, "");
    }

    static Problem copyDamaged(Path file, String said) {
        return about("damaged", file, said);
    }

    /** The backup that goes before an upgrade could not be written. */
    static Problem notBackedUp(Path copy, Problem why) {
        return new Problem(Message.of("problem.store.notBackedUp"), List.of(where(copy)), why.value(), why.tryThis());
    }

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

    /** The problem behind an error of the file system. */
    static Problem of(IOException error, Path file) {
        String said = error instanceof FileSystemException told && told.getReason() != null
                ? told.getReason()
                : String.valueOf(error.getMessage());
        boolean full = said.toLowerCase(Locale.ROOT).contains("space");
        return about(full ? "full" : "folderNotWritable", file, said);
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
