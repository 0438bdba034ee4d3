package org.cupwright.app.storage;

import java.util.function.Consumer;

/** Writing where nobody waits for an answer. */
public final class Writes {
    private Writes() {}

    public static void to(DataFolder folder, Consumer<Stores> work) {
        folder.write(stores -> {
            work.accept(stores);
            return folder;
        });
    }
}
