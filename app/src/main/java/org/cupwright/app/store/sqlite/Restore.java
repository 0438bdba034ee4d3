package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.upkeep.RestoreDone;
import org.cupwright.app.store.Sql;
import org.cupwright.app.store.SqlFailure;
import org.cupwright.app.store.sqlite.FolderLock.Pass;
import org.cupwright.app.store.sqlite.StoreProblems.Work;
import org.cupwright.message.Problem;

/**
 * Puts a backup in place of what is kept.
 *
 * <p>The backup is first copied beside the data file, which also tells whether it is sound. Then, with every writer
 * kept waiting, what was kept is copied aside, and the contents are exchanged in one transaction of the data file, so
 * that those that read meanwhile see all of the old or all of the new. Only a data file that the database gives up on
 * is exchanged as a file.
 */
record Restore(Database database, FolderLock lock, Clock clock) {
    RestoreDone from(Path source) {
        if (!Files.isRegularFile(source)) {
            throw StoreProblems.aboutBackup("noSuchBackup", source);
        }
        if (isData(source)) {
            throw StoreProblems.aboutBackup("sourceIsData", source);
        }
        Path folder = database.file().getParent();
        Database ready =
                new Database(database.beside("." + ProcessHandle.current().pid() + ".restoring"));
        try {
            return StoreProblems.telling(folder, () -> {
                // before anything is made: a backup that is none leaves no trace
                telling(source, () -> {
                    Soundness.refuseDamaged(new Database(source));
                    return null;
                });
                Files.createDirectories(folder);
                LeftBehind.tidy(folder);
                telling(source, () -> Snapshot.write(new Database(source), ready.file()));
                return exchanged(source, ready);
            });
        } finally {
            ready.deleteQuietly();
        }
    }

    private boolean isData(Path source) {
        try {
            return database.exists() && Files.isSameFile(source, database.file());
        } catch (IOException unreadable) {
            throw StoreProblems.aboutBackup("backupNotReadable", source, String.valueOf(unreadable.getMessage()));
        }
    }

    /** What keeps a backup from being used is told of the backup; what keeps the folder from being written is not. */
    private static void telling(Path source, Work<?> work) throws IOException {
        try {
            work.run();
        } catch (SQLException | SqlFailure | Problem unusable) {
            throw StoreProblems.ofSource(unusable, source);
        }
    }

    @SuppressWarnings("try") // the pass is held, not used
    private RestoreDone exchanged(Path source, Database ready) {
        try (Pass alone = lock.alone()) {
            return StoreProblems.telling(database.file(), () -> {
                boolean sound = database.exists() && isSound();
                Optional<Path> before = database.exists() ? Optional.of(keepBefore(sound)) : Optional.empty();
                if (sound) {
                    exchangeContents(ready);
                } else {
                    exchangeFile(ready);
                }
                return new RestoreDone(source, SqliteUpkeep.counts(database), before);
            });
        }
    }

    /** A file that is damaged is answered with false; whatever else is wrong is told. */
    private boolean isSound() {
        try {
            return StoreProblems.telling(
                    database.file(), () -> Snapshot.damage(database).isEmpty());
        } catch (Problem problem) {
            if (StoreProblems.isAbout(problem, "damaged")) {
                return false;
            }
            throw problem;
        }
    }

    /** A copy of what is there; of a damaged file, its very bytes. */
    private Path keepBefore(boolean sound) throws SQLException {
        Path copy = Snapshot.nameBeside(database, "before-restore", clock.instant());
        try {
            return sound ? Snapshot.write(database, copy) : copyBytes(copy);
        } catch (IOException refused) {
            throw StoreProblems.aboutBackup("beforeNotKept", copy, String.valueOf(refused.getMessage()));
        }
    }

    private Path copyBytes(Path copy) throws IOException {
        List<Path> from = database.files();
        List<Path> to = new Database(copy).files();
        for (int i = 0; i < 2; i++) { // the file and its journal; the third is made anew
            if (Files.exists(from.get(i))) {
                Files.copy(from.get(i), to.get(i));
                Snapshot.sync(to.get(i));
            }
        }
        return copy;
    }

    private void exchangeFile(Database ready) throws IOException {
        List<Path> old = database.files();
        for (Path beside : old.subList(1, old.size())) {
            Files.deleteIfExists(beside);
        }
        Files.move(ready.file(), database.file(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        Snapshot.syncFolder(database.file().getParent());
    }

    private void exchangeContents(Database ready) throws SQLException {
        try (Connection connection = database.openToExchange()) {
            Database.run(connection, "ATTACH " + Snapshot.quoted(ready.file()) + " AS restored");
            connection.setAutoCommit(false);
            try {
                exchange(connection);
                connection.commit();
            } catch (SQLException failed) {
                connection.rollback();
                throw failed;
            }
        }
    }

    private static void exchange(Connection connection) throws SQLException {
        for (String kind : List.of("trigger", "view", "table")) { // the first two are none of ours
            for (String name : names(connection, "main", kind)) {
                Database.run(connection, "DROP " + kind + " \"" + name.replace("\"", "\"\"") + "\"");
            }
        }
        for (String made : schema(connection, "table")) {
            Database.run(connection, made);
        }
        for (String table : names(connection, "restored", "table")) {
            Database.run(connection, "INSERT INTO main.\"" + table + "\" SELECT * FROM restored.\"" + table + "\"");
        }
        for (String made : schema(connection, "index")) {
            Database.run(connection, made);
        }
        Database.run(connection, "PRAGMA main.user_version = " + Database.pragma(connection, "restored.user_version"));
    }

    private static List<String> names(Connection connection, String schema, String kind) {
        return new Sql(connection)
                .texts(
                        "SELECT name FROM " + schema
                                + ".sqlite_schema WHERE type = ? AND name NOT LIKE 'sqlite_%' ORDER BY rowid",
                        kind);
    }

    private static List<String> schema(Connection connection, String type) {
        return new Sql(connection)
                .texts(
                        "SELECT sql FROM restored.sqlite_schema WHERE type = ? AND sql IS NOT NULL"
                                + " AND name NOT LIKE 'sqlite_%' ORDER BY rowid",
                        type);
    }
}
