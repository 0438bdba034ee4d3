package org.cupwright.app.storage;

import java.nio.file.Path;
import java.util.Set;
import java.util.function.Function;
import org.cupwright.app.storage.upkeep.FolderUpkeep;
import org.cupwright.message.Message;

/** Where everything that is known of the courses is kept. */
public interface DataFolder extends AutoCloseable {
    /**
     * Reads what is kept, all of it as it is at one moment; a folder that does not exist or holds nothing reads as
     * empty and is left as it is.
     */
    <T> T read(Function<Stores, T> work);

    /**
     * Changes what is kept, all of it or nothing, and answers what the work does; the folder is made when it is not
     * there.
     */
    <T> T write(Function<Stores, T> work);

    /** Nothing more is asked of it; what was opened for asking is closed. */
    @Override
    void close();

    /** What has to be known of what was read, before it is told: rows that are damaged, and that it therefore lacks. */
    Set<Message> remarks();

    /** Whether a file lies where the data is kept, or is part of it: nothing else may be written there. */
    boolean holds(Path file);

    /** What need not be computed twice. */
    ResultCache cache();

    /** What is done to the folder as a whole. */
    FolderUpkeep upkeep();
}
