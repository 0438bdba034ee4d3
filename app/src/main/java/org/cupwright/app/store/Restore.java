package org.cupwright.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.upkeep.RestoreDone;
import org.cupwright.app.store.FolderLock.Pass;
import org.cupwright.message.Problem;

/**
 * Puts a backup in place of what is kept.
 *
 * <p>The backup is first copied beside the data file, which also tells whether it is sound. Then, with every writer
 * kept waiting, what was kept is copied aside, and the contents are exchanged in one transaction of the data file, so
 * that those that read meanwhile see all of the old or all of the new. Only a data file that the database gives up on
 * is exchanged as a file.
 */
final class Restore {
    private final Database database;
    private final FolderLock lock;
    private final Clock clock;

    Restore(Database database, FolderLock lock, Clock clock) {
        this.database = database;
        this.lock = lock;
        this.clock = clock;
    }

    RestoreDone from(Path source) {
        if (!Files.isRegularFile(source)) {
            throw UpkeepProblems.noSuchBackup(source);
        }
        if (source.equals(database.file())) {
            throw UpkeepProblems.sourceIsData(source);
        }
        Path folder = database.file().getParent();
        Database ready = Database.at(
                folder.resolve("cupwright.db." + ProcessHandle.current().pid() + ".restoring"));
        try {
            refuseUnsound(source);
            Files.createDirectories(folder);
            copyOf(source, ready);
            return exchanged(source, ready);
        } catch (IOException refused) {
            throw StoreProblems.of(refused, folder);
        } finally {
            for (Path left : ready.files()) {
                left.toFile().delete();
            }
        }
    }

    /** Before anything is made: a backup that is none leaves no trace. */
    private static void refuseUnsound(Path source) {
        try {
            List<String> damage = Snapshot.damage(Database.at(source));
            if (!damage.isEmpty()) {
                throw StoreProblems.copyDamaged(source, damage.get(0));
            }
        } catch (SQLException error) {
            throw UpkeepProblems.unusable(StoreProblems.of(error, source), source);
        } catch (Problem problem) {
            throw UpkeepProblems.unusable(problem, source);
        }
    }

    private static void copyOf(Path source, Database ready) throws IOException {
        try {
            Snapshot.write(Database.at(source), ready.file());
        } catch (SQLException error) {
            throw UpkeepProblems.unusable(StoreProblems.of(error, source), source);
        } catch (Problem problem) {
            throw UpkeepProblems.unusable(problem, source);
        }
    }

    @SuppressWarnings("try") // the pass is held, not used
    private RestoreDone exchanged(Path source, Database ready) throws IOException {
        try (Pass alone = lock.alone()) {
            return StoreProblems.telling(database.file(), () -> {
                Optional<Path> before = database.exists() ? Optional.of(keepBefore()) : Optional.empty();
                if (before.isPresent() && isSound()) {
                    exchangeContents(ready);
                } else {
                    exchangeFile(ready);
                }
                return new RestoreDone(source, SqliteUpkeep.counts(database), before);
            });
        }
    }

    private boolean isSound() throws SQLException {
        try {
            return Snapshot.damage(database).isEmpty();
        } catch (SQLException error) {
            return notDamage(error);
        }
    }

    /** A file that is damaged is answered with false; whatever else is wrong is told. */
    private boolean notDamage(SQLException error) throws SQLException {
        RuntimeException known = StoreProblems.of(error, database.file());
        if (known instanceof Problem problem && problem.what().key().equals("problem.store.damaged")) {
            return false;
        }
        throw error;
    }

    /** A copy of what is there; of a damaged file, its very bytes. */
    private Path keepBefore() throws SQLException {
        Path copy = Snapshot.name(database.file().getParent(), "before-restore", clock.instant());
        try {
            if (isSound()) {
                Snapshot.write(database, copy);
            } else {
                copyBytes(copy);
            }
            return copy;
        } catch (IOException refused) {
            throw UpkeepProblems.notKept(copy, refused);
        }
    }

    private void copyBytes(Path copy) throws IOException {
        List<Path> from = database.files();
        List<Path> to = Database.at(copy).files();
        for (int i = 0; i < 2; i++) { // the file and its journal; the third is made anew
            if (Files.exists(from.get(i))) {
                Files.copy(from.get(i), to.get(i));
                Snapshot.sync(to.get(i));
            }
        }
    }

    private void exchangeFile(Database ready) throws SQLException {
        try {
            List<Path> old = database.files();
            for (Path beside : old.subList(1, old.size())) {
                Files.deleteIfExists(beside);
            }
            Files.move(
                    ready.file(), database.file(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            Snapshot.syncFolder(database.file().getParent());
        } catch (IOException refused) {
            throw StoreProblems.of(refused, database.file());
        }
    }

    private void exchangeContents(Database ready) throws SQLException {
        try (Connection connection = database.openToExchange()) {
            run(connection, "ATTACH " + Snapshot.quoted(ready.file()) + " AS restored");
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
        for (String table : names(connection, "main")) {
            run(connection, "DROP TABLE \"" + table + "\"");
        }
        for (String made : schema(connection, "table")) {
            run(connection, made);
        }
        for (String table : names(connection, "restored")) {
            run(connection, "INSERT INTO main.\"" + table + "\" SELECT * FROM restored.\"" + table + "\"");
        }
        for (String made : schema(connection, "index")) {
            run(connection, made);
        }
        run(connection, "PRAGMA main.user_version = " + Database.pragma(connection, "restored.user_version"));
    }

    private static List<String> names(Connection connection, String schema) {
        return new Sql(connection)
                .list(
                        row -> row.getString(1),
                        "SELECT name FROM " + schema
                                + ".sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY rowid");
    }

    private static List<String> schema(Connection connection, String type) {
        return new ArrayList<>(new Sql(connection)
                .list(
                        row -> row.getString(1),
                        "SELECT sql FROM restored.sqlite_schema WHERE type = ? AND sql IS NOT NULL"
                                + " AND name NOT LIKE 'sqlite_%' ORDER BY rowid",
                        type));
    }

    private static void run(Connection connection, String statementText) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(statementText);
        }
    }
}
