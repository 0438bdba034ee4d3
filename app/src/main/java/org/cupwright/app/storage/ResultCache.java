package org.cupwright.app.storage;

import java.util.Optional;

/**
 * Keeps results by name. What was kept may be gone at any time, and is never the answer to another name, or of another
 * build of the program. Safe for use by several threads and processes.
 */
public interface ResultCache {
    /** What was kept under the name, if it is still there. */
    Optional<byte[]> find(String name);

    /** Keeps a result if there is room and leave to write; nobody is told when there is not. */
    void keep(String name, byte[] result);

    /** Forgets all that was kept, as far as it can be taken away. */
    void clear();
}
