package org.cupwright.app.storage.upkeep;

import java.nio.file.Path;

/** What is done to a data folder as a whole. Others may write to it meanwhile; a restore lets them wait. */
public interface FolderUpkeep {
    /**
     * Copies all that is kept, as it is at one moment, into one file: whole or not at all.
     *
     * @param replace whether a file of that name may be replaced
     * @throws org.cupwright.message.Problem if there is nothing to copy, the file is there already, or it cannot be
     *     written
     */
    BackupDone backup(Path target, boolean replace);

    /**
     * Puts a backup in the place of all that is kept, whole or not at all. What was there is copied first, and the copy
     * stays beside it.
     *
     * @throws org.cupwright.message.Problem if the file is no sound backup, or the folder cannot be had alone or
     *     written
     */
    RestoreDone restore(Path source);

    /** Looks through all that is kept and changes none of it. */
    FolderReport check();
}
