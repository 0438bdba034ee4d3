package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Supplier;

/**
 * Who may be in a data folder at once: any number that write, or one alone that makes, upgrades or replaces the data
 * file.
 *
 * <p>The database orders single transactions by itself; this is for what takes several. Between processes it is a lock
 * on a file that the system lets go when its holder dies; within one process, where such locks do not count, it is a
 * lock of the language. Those that only read need not ask.
 */
final class FolderLock {
    /** Longest wait, s: our choice; an upgrade of a large folder takes seconds. */
    private static final long LONGEST_SECONDS = 60;

    private static final long PAUSE_MILLISECONDS = 10;
    private static final Map<Path, FolderLock> LOCKS = new ConcurrentHashMap<>();

    private final Path file;
    private final ReentrantReadWriteLock here = new ReentrantReadWriteLock(true);
    private FileChannel shared;
    private int writers;

    private FolderLock(Path folder) {
        this.file = folder.resolve("cupwright.lock");
    }

    static FolderLock of(Path folder) {
        return LOCKS.computeIfAbsent(folder, FolderLock::new);
    }

    /** Leave to be in the folder; closing it gives the leave back. */
    interface Pass extends AutoCloseable {
        @Override
        void close();
    }

    /** The file of the lock. It stays in the folder, but for one that is taken away as a whole. */
    Path file() {
        return file;
    }

    Pass toWrite() {
        return pass(here.readLock(), this::oneMoreWriter);
    }

    Pass alone() {
        return pass(here.writeLock(), () -> {
            FileChannel channel = locked(false);
            return () -> close(channel);
        });
    }

    /** The lock within this process comes first and goes last. */
    private Pass pass(Lock lock, Supplier<Pass> amongProcesses) {
        enter(lock);
        try {
            Pass pass = amongProcesses.get();
            return () -> {
                try {
                    pass.close();
                } finally {
                    lock.unlock();
                }
            };
        } catch (RuntimeException refused) {
            lock.unlock();
            throw refused;
        }
    }

    private void enter(Lock lock) {
        try {
            if (!lock.tryLock(LONGEST_SECONDS, TimeUnit.SECONDS)) {
                throw StoreProblems.about("busy", file);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw StoreProblems.about("busy", file);
        }
    }

    private synchronized Pass oneMoreWriter() {
        if (writers == 0) {
            shared = locked(true);
        }
        writers++;
        return this::oneWriterLess;
    }

    private synchronized void oneWriterLess() {
        writers--;
        if (writers == 0) {
            close(shared);
        }
    }

    private FileChannel locked(boolean withOthers) {
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_SECONDS);
        try {
            while (System.nanoTime() < deadline) {
                FileChannel channel = open();
                if (holds(channel, withOthers)) {
                    return channel;
                }
                channel.close();
                Thread.sleep(PAUSE_MILLISECONDS);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (IOException refused) {
            throw StoreProblems.about("folderNotWritable", file.getParent());
        }
        throw StoreProblems.about("busy", file);
    }

    private FileChannel open() throws IOException {
        return FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    }

    /**
     * Whether the lock was got, on the file that has the name now: another process may have taken it away meanwhile.
     */
    private boolean holds(FileChannel channel, boolean withOthers) throws IOException {
        Object before = key();
        FileLock lock = channel.tryLock(0, Long.MAX_VALUE, withOthers);
        return lock != null && before != null && before.equals(key());
    }

    private Object key() throws IOException {
        try {
            Object key = Files.readAttributes(file, BasicFileAttributes.class).fileKey();
            return key == null ? file : key; // file systems without keys do not let an open file be taken away
        } catch (NoSuchFileException gone) {
            return null;
        }
    }

    private static void close(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException broken) {
            throw new IllegalStateException("the lock of the data folder cannot be let go", broken);
        }
    }
}
