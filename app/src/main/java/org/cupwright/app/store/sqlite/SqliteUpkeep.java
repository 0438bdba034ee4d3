package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import org.cupwright.app.storage.upkeep.BackupDone;
import org.cupwright.app.storage.upkeep.FolderCounts;
import org.cupwright.app.storage.upkeep.FolderReport;
import org.cupwright.app.storage.upkeep.FolderUpkeep;
import org.cupwright.app.storage.upkeep.RestoreDone;
import org.cupwright.app.store.Sql;
import org.cupwright.app.store.SqlFailure;
import org.cupwright.message.Problem;

/** Backup, restore and check of a folder's data file. */
record SqliteUpkeep(Database database, FolderLock lock, Clock clock) implements FolderUpkeep {
    @Override
    public BackupDone backup(Path target, boolean replace) {
        Path file = target.toAbsolutePath().normalize();
        if (!database.exists()) {
            throw StoreProblems.aboutBackup("nothingToBackUp", database.file().getParent());
        }
        refuseTarget(file, replace);
        return StoreProblems.telling(database.file(), () -> {
            try {
                LeftBehind.tidy(file.getParent());
                Snapshot.write(database, file);
                return done(file);
            } catch (IOException refused) {
                throw StoreProblems.ofTarget(refused, file);
            } catch (SQLException | SqlFailure refused) {
                if (StoreProblems.isAbout(StoreProblems.of(refused, file), "full")) {
                    throw StoreProblems.aboutBackup("targetFull", file, refused.getMessage());
                }
                throw refused;
            }
        });
    }

    private static BackupDone done(Path file) throws SQLException, IOException {
        try (Connection connection = new Database(file).openToRead()) {
            FolderContents contents = new FolderContents(connection);
            return new BackupDone(file, Files.size(file), contents.counts(), Soundness.damages(connection, file));
        }
    }

    /** Refuses a target that is there, or that a backup cannot be written to. */
    private void refuseTarget(Path target, boolean replace) {
        Path folder = target.getParent();
        if (database.isAmidst(target)) {
            throw StoreProblems.aboutBackup("targetIsData", target);
        }
        if (Files.isDirectory(target)) {
            throw StoreProblems.aboutBackup("targetIsFolder", target);
        }
        if (Files.exists(target) && !replace) {
            throw StoreProblems.aboutBackup("targetExists", target);
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw StoreProblems.aboutBackup("targetFolderMissing", target);
        }
        if (!Files.isWritable(folder)) {
            throw StoreProblems.aboutBackup("targetNotWritable", target);
        }
    }

    @Override
    public RestoreDone restore(Path source) {
        return new Restore(database, lock, clock).from(source.toAbsolutePath().normalize());
    }

    static FolderCounts counts(Database database) throws SQLException {
        try (Connection connection = database.openToRead()) {
            return new FolderContents(connection).counts();
        }
    }

    @Override
    public FolderReport check() {
        if (!database.exists()) {
            return new FolderReport(database.file(), false, 0, "", 0, FolderCounts.NONE, List.of());
        }
        try (Connection connection = database.openToRead()) {
            return report(connection);
        } catch (SQLException | SqlFailure error) {
            return damaged(StoreProblems.of(error, database.file()));
        }
    }

    private FolderReport report(Connection connection) throws SQLException {
        return new FolderReport(
                database.file(),
                true,
                Database.pragma(connection, "user_version"),
                new Sql(connection).texts("PRAGMA journal_mode").get(0),
                Database.pragma(connection, "synchronous"),
                new FolderContents(connection).counts(),
                Soundness.damages(connection, database.file()));
    }

    /** A file so damaged that the database gives up on it; anything else that keeps it from being read is a problem. */
    private FolderReport damaged(RuntimeException why) {
        if (why instanceof Problem problem && StoreProblems.isAbout(why, "damaged")) {
            return new FolderReport(
                    database.file(),
                    true,
                    0,
                    "",
                    0,
                    FolderCounts.NONE,
                    List.of(Soundness.damage(problem.what(), database.file())));
        }
        throw why;
    }
}
