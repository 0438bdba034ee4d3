package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.attribute.BasicFileAttributes;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The connection by which a process reads, kept open from one reading to the next. Nothing is held between readings: no
 * lock, and no moment to which the database would have to keep its journal. Where another file has taken the name, it
 * is opened anew.
 */
final class ReadingConnection implements AutoCloseable {
    private final Database database;
    private final ReentrantLock oneAtATime = new ReentrantLock();
    private Connection connection;
    private boolean asItLies;
    private volatile boolean wasReadAsItLies;
    private Optional<Object> file = Optional.empty();

    ReadingConnection(Database database) {
        this.database = database;
    }

    /** Whether the file is of an older format than this program reads; it is closed then. */
    boolean isOlder() throws SQLException {
        oneAtATime.lock();
        try {
            if (oneAtATime.getHoldCount() > 1) {
                return false;
            }
            open();
            boolean older = database.format(connection) < Database.FORMAT;
            if (older) {
                close();
            }
            return older;
        } finally {
            oneAtATime.unlock();
        }
    }

    /** Whether the disk had no room for what reading makes for its time, so that the file was read as it lies. */
    boolean wasReadAsItLies() {
        return wasReadAsItLies;
    }

    /** A reading on the connection. */
    interface Work<T> {
        T on(Connection connection) throws SQLException;
    }

    /** Reads all of it as it is at one moment; a reading within a reading is of the same moment. */
    <T> T read(Work<T> work) throws SQLException {
        boolean within = oneAtATime.isHeldByCurrentThread();
        oneAtATime.lock();
        try {
            return within ? work.on(connection) : atOneMoment(work);
        } finally {
            oneAtATime.unlock();
        }
    }

    private <T> T atOneMoment(Work<T> work) throws SQLException {
        open();
        try {
            Database.run(connection, "BEGIN DEFERRED");
            try {
                database.format(connection); // the first thing read is the moment
                return work.on(connection);
            } finally {
                Database.run(connection, "ROLLBACK");
            }
        } finally {
            if (asItLies || !database.folderIsWritable()) {
                close(); // what lies fixed is read as it lies, and would be taken not to change
            }
        }
    }

    private void open() throws SQLException {
        Optional<Object> now = key();
        if (connection != null && !now.equals(file)) {
            close();
        }
        if (connection == null) {
            asItLies = false;
            connection = database.openToRead(() -> asItLies = true);
            wasReadAsItLies |= asItLies;
            file = now;
        }
    }

    /** Tells one file from another that had or has the same name; empty where the system cannot. */
    private Optional<Object> key() {
        try {
            return Optional.ofNullable(Files.readAttributes(database.file(), BasicFileAttributes.class)
                    .fileKey());
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    @Override
    public void close() {
        oneAtATime.lock();
        try {
            if (connection != null) {
                Database.closeKept(connection);
                connection = null;
            }
        } finally {
            oneAtATime.unlock();
        }
    }
}
