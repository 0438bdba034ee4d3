package org.cupwright.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.cupwright.app.desk.DataFolder;
import org.cupwright.app.desk.Stores;

/**
 * A data folder with one SQLite file in it.
 *
 * <p>Every piece of work is one transaction. Reading makes no file; a first write that fails takes away what it made.
 */
public final class SqliteFolder implements DataFolder {
    private static final List<String> FILES = List.of("cupwright.db", "cupwright.db-wal", "cupwright.db-shm");

    private final Path folder;
    private final Database database;
    private final Clock clock;

    /**
     * @param folder the data folder; need not exist
     * @param clock tells when something was recorded
     */
    public SqliteFolder(Path folder, Clock clock) {
        this.folder = folder.toAbsolutePath();
        this.database = new Database(this.folder);
        this.clock = clock;
    }

    @Override
    public <T> T read(Function<Stores, T> work) {
        if (!database.exists()) {
            return work.apply(new EmptyStores());
        }
        try (Connection connection = database.openToRead()) {
            return work.apply(new SqlStores(new Sql(connection), clock));
        } catch (SQLException error) {
            throw StoreProblems.of(error, database.file());
        } catch (SqlFailure failure) {
            throw StoreProblems.of(failure.error(), database.file());
        }
    }

    @Override
    public void write(Consumer<Stores> work) {
        boolean fresh = !database.exists();
        Deque<Path> made = makeFolder();
        try {
            inTransaction(work);
        } catch (RuntimeException failed) {
            if (fresh) {
                takeAway(made, failed);
            }
            throw failed;
        }
    }

    private void inTransaction(Consumer<Stores> work) {
        try (Connection connection = database.openToWrite()) {
            connection.setAutoCommit(false);
            try {
                work.accept(new SqlStores(new Sql(connection), clock));
                connection.commit();
            } catch (RuntimeException | SQLException failed) {
                rollBack(connection, failed);
                throw failed;
            }
        } catch (SQLException error) {
            throw StoreProblems.of(error, database.file());
        } catch (SqlFailure failure) {
            throw StoreProblems.of(failure.error(), database.file());
        } catch (org.flywaydb.core.api.FlywayException failure) {
            throw StoreProblems.of(failure, database.file());
        }
    }

    private static void rollBack(Connection connection, Exception because) {
        try {
            connection.rollback();
        } catch (SQLException also) {
            because.addSuppressed(also);
        }
    }

    /** Makes the folder and those above it; answers those that were not there, the deepest first. */
    private Deque<Path> makeFolder() {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path path = folder; path != null && !Files.exists(path); path = path.getParent()) {
            missing.addLast(path);
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException refused) {
            throw StoreProblems.cannotMake(folder);
        }
        if (!Files.isWritable(folder)) {
            throw StoreProblems.cannotMake(folder);
        }
        return missing;
    }

    private void takeAway(Deque<Path> made, RuntimeException because) {
        try {
            for (String name : FILES) {
                Files.deleteIfExists(folder.resolve(name));
            }
            for (Path path : made) {
                Files.deleteIfExists(path);
            }
        } catch (IOException also) {
            because.addSuppressed(also);
        }
    }
}
