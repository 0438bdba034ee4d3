package org.cupwright.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
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
final class Upgrade {
    /** Held so that the level set on it is kept: the log manager forgets loggers that nobody holds. */
    private static final Logger FLYWAY_LOG = Logger.getLogger("org.flywaydb");

    private final Database database;
    private final Clock clock;

    Upgrade(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** Answers whether there was no file before. */
    boolean bringUpToDate() throws SQLException {
        if (!database.exists()) {
            make();
            return true;
        }
        int format = database.format();
        if (format < Database.FORMAT) {
            keepBefore(format);
            migrate(database);
        }
        return false;
    }

    private void make() throws SQLException {
        Path file = database.file();
        Database fresh = Database.at(file.resolveSibling(file.getFileName() + ".new"));
        try {
            delete(fresh);
            migrate(fresh);
            Snapshot.sync(fresh.file());
            Files.move(fresh.file(), file, StandardCopyOption.ATOMIC_MOVE);
            Snapshot.syncFolder(file.getParent());
        } catch (IOException refused) {
            throw StoreProblems.of(refused, file);
        } finally {
            deleteQuietly(fresh);
        }
    }

    private static void delete(Database database) throws IOException {
        for (Path path : database.files()) {
            Files.deleteIfExists(path);
        }
    }

    /**
     * What cannot be deleted now is deleted by the next that makes a file; the failure that led here is told instead.
     */
    private static void deleteQuietly(Database database) {
        for (Path path : database.files()) {
            path.toFile().delete();
        }
    }

    private void keepBefore(int format) {
        Path folder = database.file().getParent();
        Path copy = Snapshot.name(folder, "backup-format" + format, clock.instant());
        try {
            Snapshot.write(database, copy);
        } catch (SQLException refused) {
            throw notBackedUp(copy, StoreProblems.of(refused, copy));
        } catch (IOException refused) {
            throw notBackedUp(copy, StoreProblems.of(refused, copy));
        } catch (Problem refused) {
            throw notBackedUp(copy, refused);
        }
    }

    private static RuntimeException notBackedUp(Path copy, RuntimeException why) {
        return why instanceof Problem problem ? StoreProblems.notBackedUp(copy, problem) : why;
    }

    private static void migrate(Database database) {
        FLYWAY_LOG.setLevel(Level.WARNING);
        Flyway.configure()
                .dataSource(database.source())
                .locations("classpath:db/migration/sqlite")
                .load()
                .migrate();
    }
}
