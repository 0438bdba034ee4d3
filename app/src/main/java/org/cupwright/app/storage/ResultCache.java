package org.cupwright.app.storage;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Keeps results by name. What was kept may be gone at any time, and is never the answer to another name, or of another
 * build of the program. Safe for use by several threads and processes.
 */
public interface ResultCache {
    /** What was kept under the name, if it is still there. */
    Optional<byte[]> find(String name);

    /** Keeps a result if there is room and leave to write; nobody is told when there is not. */
    void keep(String name, byte[] result);

    /**
     * What was worked out under a key in this process, as long as it is remembered; else what the work answers.
     *
     * @param key holds all that the work rests on, and is compared by value
     */
    default <T> T remembered(Object key, Supplier<T> work) {
        return work.get();
    }

    /** Forgets all that was kept, as far as it can be taken away. */
    void clear();
}
