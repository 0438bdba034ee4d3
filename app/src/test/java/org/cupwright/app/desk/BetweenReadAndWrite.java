package org.cupwright.app.desk;

import java.nio.file.Path;
import java.util.Set;
import java.util.function.Function;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.upkeep.FolderUpkeep;
import org.cupwright.message.Message;

/**
 * A folder in which somebody else does something once, right after the first thing was read, or else before anything is
 * written.
 */
final class BetweenReadAndWrite implements DataFolder {
    private final DataFolder folder;
    private final Runnable somebodyElse;
    private boolean done;

    BetweenReadAndWrite(DataFolder folder, Runnable somebodyElse) {
        this.folder = folder;
        this.somebodyElse = somebodyElse;
    }

    private void once() {
        if (!done) {
            done = true;
            somebodyElse.run();
        }
    }

    @Override
    public <T> T read(Function<Stores, T> work) {
        T answer = folder.read(work);
        once();
        return answer;
    }

    @Override
    public <T> T write(Function<Stores, T> work) {
        once();
        return folder.write(work);
    }

    @Override
    public void close() {
        folder.close();
    }

    @Override
    public Set<Message> remarks() {
        return folder.remarks();
    }

    @Override
    public boolean holds(Path file) {
        return folder.holds(file);
    }

    @Override
    public ResultCache cache() {
        return folder.cache();
    }

    @Override
    public FolderUpkeep upkeep() {
        return folder.upkeep();
    }
}
