package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.cupwright.app.store.Sql;
import org.cupwright.app.store.SqlFailure;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** One data file: opening it, and what it says of itself. */
record Database(Path file) {
    /** The data format this program writes; the newest migration sets it as the file's user_version. */
    static final int FORMAT = 13;

    /** The file's application_id, "CUPW". */
    static final int APPLICATION = 1129664599;

    private static final int BUSY_MILLISECONDS = 30_000;

    /** How often any data file was opened, so that a test can tell. */
    static final AtomicInteger OPENED = new AtomicInteger();

    static Database in(Path folder) {
        return new Database(folder.resolve("cupwright.db"));
    }

    /**
     * Whether there is the file.
     *
     * @throws org.cupwright.message.Problem if rights on a folder keep it from being seen: it is not taken for missing
     */
    boolean exists() {
        if (Files.exists(file)) {
            return true;
        }
        if (!Files.notExists(file)) {
            throw StoreProblems.about("hidden", file);
        }
        return false;
    }

    /** The file and what the database keeps beside it while it is open or after it was not closed. */
    List<Path> files() {
        return List.of(file, beside("-wal"), beside("-shm"));
    }

    Path beside(String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    /**
     * The data format of the file.
     *
     * @throws org.cupwright.message.Problem if it is another program's file, of a newer format, or says so and is not
     */
    int format() throws SQLException {
        try (Connection connection = readable()) {
            return format(connection);
        }
    }

    int format(Connection connection) {
        int version = pragma(connection, "user_version");
        if (pragma(connection, "application_id") != APPLICATION) {
            throw StoreProblems.about("notOurs", file);
        }
        if (version < 1 || (version > FORMAT && !EmptyDatabase.goesBeyond(connection, FORMAT))) {
            throw StoreProblems.about("damaged", file, "user_version " + version);
        }
        if (version > FORMAT) {
            throw StoreProblems.newer(file, version, FORMAT);
        }
        return version;
    }

    /** Opens the file for reading; it must exist. Nothing can be changed by way of the connection. */
    Connection openToRead() throws SQLException {
        return openToRead(() -> {});
    }

    /**
     * The same. On a disk without room for what reading makes beside the file for its time, the file is read as it
     * lies, if no journal of entries lies beside it.
     *
     * @param asItLies is told where that is so
     */
    Connection openToRead(Runnable asItLies) throws SQLException {
        try {
            return checked(readable(), "PRAGMA query_only = true");
        } catch (SQLException | SqlFailure noRoom) {
            if (!StoreProblems.isAbout(StoreProblems.of(noRoom, file), "full") || journalHoldsSomething()) {
                throw noRoom;
            }
            asItLies.run();
            SQLiteConfig config = config();
            config.setReadOnly(true);
            return checked(opened(config, "?immutable=1"), "PRAGMA query_only = true");
        }
    }

    /** Opens the file for copying it out: like reading, but the database itself may write the copy. */
    Connection openToCopy() throws SQLException {
        return checked(readable(), "PRAGMA query_only = false");
    }

    /**
     * Opens the file for writing; it must exist and be of the newest format. What is written over or taken away is
     * written over with zeros, so that an erased name or an old password's hash is not left in pages that are free.
     */
    Connection openToWrite() throws SQLException {
        Connection connection = checked(opened(config(), ""), "PRAGMA journal_mode = WAL");
        run(connection, "PRAGMA secure_delete = ON");
        return connection;
    }

    /** Opens the file for exchanging its tables, whatever its format; links between them are left alone meanwhile. */
    Connection openToExchange() throws SQLException {
        SQLiteConfig config = config();
        config.enforceForeignKeys(false);
        return checked(opened(config, ""), "PRAGMA journal_mode = WAL");
    }

    /**
     * On a folder that cannot be written the file is read as it lies, without the files that reading makes for its
     * time. Where a journal lies beside it, it holds entries that are kept: then it is read with it, for which the
     * system may want to write.
     */
    private Connection readable() throws SQLException {
        SQLiteConfig config = config();
        boolean fixed = !folderIsWritable();
        config.setReadOnly(fixed);
        return opened(config, fixed && !journalHoldsSomething() ? "?immutable=1" : "");
    }

    /** Whether a path leads into the folder of the file or to one of its files, by whatever links. */
    boolean isAmidst(Path path) {
        try {
            Path there = path.toAbsolutePath();
            while (!Files.exists(there)) {
                there = there.getParent();
            }
            for (Path up = there.toRealPath(); up != null; up = up.getParent()) {
                if (Files.exists(file.getParent()) && Files.isSameFile(up, file.getParent())) {
                    return true;
                }
            }
            for (Path own : files()) {
                if (Files.exists(own) && Files.isSameFile(there, own)) {
                    return true;
                }
            }
            return false;
        } catch (IOException unreadable) {
            throw StoreProblems.about("folderNotWritable", path, String.valueOf(unreadable.getMessage()));
        }
    }

    boolean folderIsWritable() {
        return Files.isWritable(file.getParent());
    }

    /**
     * Closing copies the journal into the file. Where that fails, as on a full disk, the journal stays, and what was
     * committed is in it and on the disk: it is read from there, so the work is done all the same.
     */
    static void closeKept(Connection connection) {
        try {
            connection.close();
        } catch (SQLException journalStays) {
            System.getLogger(Database.class.getName())
                    .log(System.Logger.Level.DEBUG, "the journal stays beside the data file", journalStays);
        }
    }

    void delete() throws IOException {
        for (Path path : files()) {
            Files.deleteIfExists(path);
        }
    }

    /** What cannot be deleted now is deleted by the next that makes it; what led here is told instead. */
    void deleteQuietly() {
        files().forEach(path -> path.toFile().delete());
    }

    private boolean journalHoldsSomething() {
        Path journal = beside("-wal");
        try {
            return Files.exists(journal) && Files.size(journal) > 0;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private Connection opened(SQLiteConfig config, String how) throws SQLException {
        OPENED.incrementAndGet();
        return config.createConnection("jdbc:sqlite:" + (how.isEmpty() ? file : file.toUri() + how));
    }

    private Connection checked(Connection connection, String first) throws SQLException {
        try {
            format(connection);
            run(connection, first);
            return connection;
        } catch (SQLException | RuntimeException refused) {
            connection.close();
            throw refused;
        }
    }

    /** Every connection is like this one: an entry that was committed is on the disk, not only on its way to it. */
    private static SQLiteConfig config() {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLISECONDS);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return config;
    }

    /** For migrations, which open connections themselves. */
    SQLiteDataSource source() {
        SQLiteConfig config = config();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    static int pragma(Connection connection, String name) {
        return (int) new Sql(connection).number("PRAGMA " + name);
    }

    static void run(Connection connection, String statementText) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(statementText);
        }
    }
}
