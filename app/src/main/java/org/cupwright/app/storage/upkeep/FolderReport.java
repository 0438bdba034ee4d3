package org.cupwright.app.storage.upkeep;

import java.nio.file.Path;
import java.util.List;
import org.cupwright.message.Message;

/**
 * What a look through a data folder came to.
 *
 * @param file the data file
 * @param exists whether there is one
 * @param format its data format
 * @param journal how changes are written: {@code wal} as it should be
 * @param synchronous how surely they are on the disk when they are said to be kept: 2 is for certain
 * @param holds how much is kept
 * @param damages what is wrong; empty when all is sound
 */
public record FolderReport(
        Path file,
        boolean exists,
        int format,
        String journal,
        int synchronous,
        FolderCounts holds,
        List<Damage> damages) {
    public FolderReport {
        damages = List.copyOf(damages);
    }

    /** Something that is wrong, where, and what to try. */
    public record Damage(Message what, Message where, Message tryThis) {}

    public boolean sound() {
        return damages.isEmpty();
    }
}
