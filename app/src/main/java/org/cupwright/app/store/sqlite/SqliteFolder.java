package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.cupwright.app.storage.DamagedRow;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.Memory;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.upkeep.FolderUpkeep;
import org.cupwright.app.store.EngineBuild;
import org.cupwright.app.store.FileCache;
import org.cupwright.app.store.Sql;
import org.cupwright.app.store.SqlStores;
import org.cupwright.app.store.sqlite.FolderLock.Pass;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Said;

/**
 * A data folder with one SQLite file in it.
 *
 * <p>Every piece of work is one transaction. Reading makes no file; a first write that fails takes away what it made.
 */
public final class SqliteFolder implements DataFolder {
    private final Path folder;
    private final Database database;
    private final ReadingConnection reading;
    private final FolderLock lock;
    private final Clock clock;
    private final Memory memory;
    private final Set<DamagedRow> leftOut = Collections.synchronizedSet(new LinkedHashSet<>());

    /**
     * @param folder the data folder; need not exist
     * @param clock tells when something was recorded
     */
    public SqliteFolder(Path folder, Clock clock) {
        this(folder, clock, Memory.NONE);
    }

    /** The same, for those that stay and remember. */
    public SqliteFolder(Path folder, Clock clock, Memory memory) {
        this.folder = folder.toAbsolutePath().normalize();
        this.database = Database.in(this.folder);
        this.reading = new ReadingConnection(database);
        this.lock = FolderLock.of(this.folder);
        this.clock = clock;
        this.memory = memory;
    }

    @Override
    public Set<Message> remarks() {
        Set<Message> remarks = new LinkedHashSet<>();
        if (reading.wasReadAsItLies()) {
            remarks.add(Message.of("store.asItLies"));
        }
        for (DamagedRow row : List.copyOf(leftOut)) {
            remarks.add(Message.of("store.leftOut", new Said(row.where())));
        }
        return remarks;
    }

    @Override
    public boolean holds(Path file) {
        return database.isAmidst(file);
    }

    @Override
    public ResultCache cache() {
        return new FileCache(folder, EngineBuild.current(), clock, new MemoryOfFile(memory, database.file()));
    }

    private Stores stores(Connection connection) {
        return new SqlStores(new Sql(connection), new SqliteDialect(), cache(), clock, leftOut);
    }

    @Override
    public void close() {
        reading.close();
    }

    @Override
    public FolderUpkeep upkeep() {
        return new SqliteUpkeep(database, lock, clock);
    }

    @Override
    public <T> T read(Function<Stores, T> work) {
        return StoreProblems.telling(database.file(), () -> {
            if (!database.exists()) {
                try (Connection nothing = EmptyDatabase.open()) {
                    return work.apply(stores(nothing));
                }
            }
            if (reading.isOlder()) {
                bringUpToDate();
            }
            return reading.read(connection -> work.apply(stores(connection)));
        });
    }

    @Override
    public <T> T write(Function<Stores, T> work) {
        Deque<Path> made = makeFolder();
        boolean absent = !database.exists();
        try {
            return StoreProblems.telling(database.file(), () -> written(work));
        } catch (RuntimeException failed) {
            if (absent) {
                takeAway(made, failed);
            }
            throw failed;
        }
    }

    /** Does the work, as soon as the file is made and up to date. */
    @SuppressWarnings("try") // the pass is held, not used
    private <T> T written(Function<Stores, T> work) throws SQLException, IOException {
        while (true) {
            try (Pass among = lock.toWrite()) {
                LeftBehind.tidy(folder);
                Optional<Connection> connection = openUpToDate();
                if (connection.isPresent()) {
                    return inTransaction(connection.get(), work);
                }
            }
            bringUpToDate();
        }
    }

    /** Opens the file, unless it has to be made or upgraded first. */
    private Optional<Connection> openUpToDate() throws SQLException {
        if (!database.exists()) {
            return Optional.empty();
        }
        Connection connection = database.openToWrite();
        boolean upToDate = false;
        try {
            upToDate = database.format(connection) == Database.FORMAT;
            return upToDate ? Optional.of(connection) : Optional.empty();
        } finally {
            if (!upToDate) {
                connection.close();
            }
        }
    }

    @SuppressWarnings("try") // the pass is held, not used
    private boolean bringUpToDate() throws SQLException, IOException {
        if (!Files.isWritable(folder)) {
            throw StoreProblems.about("olderNotWritable", folder);
        }
        try (Pass alone = lock.alone()) {
            return new Upgrade(database, clock).bringUpToDate();
        }
    }

    private <T> T inTransaction(Connection connection, Function<Stores, T> work) throws SQLException {
        try {
            connection.setAutoCommit(false);
            T answer = work.apply(stores(connection));
            connection.commit();
            closeKept(connection);
            return answer;
        } catch (RuntimeException | SQLException failed) {
            rollBack(connection, failed);
            throw failed;
        }
    }

    private static void rollBack(Connection connection, Exception because) {
        try (connection) {
            connection.rollback();
        } catch (SQLException also) {
            because.addSuppressed(also);
        }
    }

    /** What is committed goes from the journal into the file, so that no reader that stays keeps it out. */
    private static void closeKept(Connection connection) {
        try {
            connection.setAutoCommit(true); // within a transaction the journal cannot be copied
            Database.run(connection, "PRAGMA busy_timeout = 0"); // whoever reads at this moment is not waited for
            Database.run(connection, "PRAGMA wal_checkpoint(TRUNCATE)");
        } catch (SQLException journalStays) {
            System.getLogger(SqliteFolder.class.getName())
                    .log(System.Logger.Level.DEBUG, "the journal is copied later", journalStays);
        }
        Database.closeKept(connection);
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
            throw StoreProblems.about("folderNotWritable", folder);
        }
        if (!Files.isWritable(folder)) {
            throw StoreProblems.about("folderNotWritable", folder);
        }
        return missing;
    }

    /** Takes away what a failed first write made, unless another process has kept something there meanwhile. */
    @SuppressWarnings("try") // the pass is held, not used
    private void takeAway(Deque<Path> made, RuntimeException because) {
        try (Pass alone = lock.alone()) {
            if (database.exists() && FolderContents.anythingIn(database)) {
                return;
            }
            database.delete();
            Files.deleteIfExists(lock.file());
            for (Path path : made) {
                Files.deleteIfExists(path);
            }
        } catch (IOException | SQLException | RuntimeException also) {
            because.addSuppressed(also);
        }
    }
}
