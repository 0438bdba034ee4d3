package org.cupwright.app.storage;

import java.util.function.Consumer;
import java.util.function.Function;
import org.cupwright.app.storage.upkeep.FolderUpkeep;

/** Where everything that is known of the courses is kept. */
public interface DataFolder {
    /** Reads what is kept; a folder that does not exist or holds nothing reads as empty and is left as it is. */
    <T> T read(Function<Stores, T> work);

    /** Changes what is kept, all of it or nothing; the folder is made when it is not there. */
    void write(Consumer<Stores> work);

    /** What need not be computed twice. */
    ResultCache cache();

    /** What is done to the folder as a whole. */
    FolderUpkeep upkeep();
}
