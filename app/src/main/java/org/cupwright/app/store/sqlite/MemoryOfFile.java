package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.function.Supplier;
import org.cupwright.app.storage.Memory;

/**
 * What is remembered of one database file: rows are numbered anew in the file that a restore puts in its place, so that
 * a number names other rows there.
 */
record MemoryOfFile(Memory memory, Path file) implements Memory {
    @Override
    public <T> T of(Object key, Supplier<T> work) {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return memory.of(List.of(file, String.valueOf(now.fileKey()), now.creationTime(), key), work);
        } catch (IOException notThere) {
            return work.get();
        }
    }
}
