package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.cupwright.message.Problem;
import org.flywaydb.core.Flyway;

/**
 * Makes the data file, and brings one of an older format up to date. Only for whoever is alone in the folder.
 *
 * <p>A new file is made under another name and gets its own when it is whole. An older one is copied first, and the
 * copy kept: without it nothing is changed.
 */
record Upgrade(Database database, Clock clock) {
    /** The format from which on rows have check sums. */
    static final int SUMS = 6;

    /** Held so that the level set on it is kept: the log manager forgets loggers that nobody holds. */
    private static final Logger FLYWAY_LOG = Logger.getLogger("org.flywaydb");

    /** Answers whether there was no file before. */
    boolean bringUpToDate() throws SQLException, IOException {
        if (!database.exists()) {
            make();
            return true;
        }
        int format = database.format();
        if (format < Database.FORMAT) {
            upgrade(format, keepBefore(format));
        }
        return false;
    }

    /** A file of ours that nothing was ever written down in is not an older one: to fill it would hide what is gone. */
    private void refuseUnlessWhole(int format) throws SQLException {
        try (Connection connection = database.openToRead()) {
            if (EmptyDatabase.differences(connection, format).containsAll(EmptyDatabase.HISTORY)) {
                throw StoreProblems.about("damaged", database.file(), String.join(", ", EmptyDatabase.HISTORY));
            }
        }
    }

    /** Where nothing comes of it, as in a file that names another format than it has, the copy is not kept either. */
    private void upgrade(int format, Path copy) throws SQLException, IOException {
        try {
            refuseUnlessWhole(format);
            migrate(database);
            if (database.format() < Database.FORMAT) {
                throw StoreProblems.about("damaged", database.file(), "user_version " + format);
            }
        } catch (RuntimeException failed) {
            if (database.format() == format) {
                Files.deleteIfExists(copy);
            }
            throw failed;
        }
    }

    private void make() throws IOException {
        Database fresh = new Database(database.beside(".new"));
        try {
            fresh.delete();
            migrate(fresh);
            Snapshot.sync(fresh.file());
            Files.move(fresh.file(), database.file(), StandardCopyOption.ATOMIC_MOVE);
            Snapshot.syncFolder(database.file().getParent());
        } finally {
            fresh.deleteQuietly();
        }
    }

    private Path keepBefore(int format) {
        Path copy = Snapshot.nameBeside(database, "backup-format" + format, clock.instant());
        try {
            return StoreProblems.telling(copy, () -> Snapshot.write(database, copy));
        } catch (Problem refused) {
            throw StoreProblems.notBackedUp(copy, refused);
        }
    }

    private static void migrate(Database database) {
        FLYWAY_LOG.setLevel(Level.WARNING);
        Flyway.configure()
                .dataSource(database.source())
                .locations("classpath:db/migration/sqlite")
                .callbacks(new RowSums())
                .load()
                .migrate();
    }
}
