package org.cupwright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What the command {@code demo} comes to within a test's process: the folder {@code data} with the invented course, its
 * season and the day's plan, its paper, and what was answered.
 */
public final class MadeMorning {
    private MadeMorning() {}

    /** The folder that has them, which nobody may change. */
    public static Path folder() throws IOException {
        return MadeOnce.folder("morning", MadeMorning::fill);
    }

    /** What was answered, as JSON. */
    public static String told() throws IOException {
        return Files.readString(folder().resolve("told.json"));
    }

    /** Puts a copy of the data into a folder that is not there yet. */
    public static void copyTo(Path data) throws IOException {
        MadeOnce.copy(folder().resolve("data"), data);
    }

    private static void fill(Path folder) throws IOException {
        InProcess.Result told =
                new InProcess(folder.resolve("data")).run("demo", "--json", "--out", folder.resolve("paper"));
        if (told.status() != 0) {
            throw new IllegalStateException(told.err());
        }
        Files.writeString(folder.resolve("told.json"), told.out());
    }
}
