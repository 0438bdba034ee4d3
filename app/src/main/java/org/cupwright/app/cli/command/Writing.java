package org.cupwright.app.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.cupwright.app.desk.files.WholeFiles;
import picocli.CommandLine.Option;

/** What commands take that write files by the names that were given. */
public final class Writing {
    @Option(names = "--replace", description = "Replace files of that name.")
    private boolean replace;

    public boolean replaces() {
        return replace;
    }

    public void write(Task task, Path file, List<String> lines) {
        String end = System.lineSeparator();
        write(task, file, lines.isEmpty() ? "" : String.join(end, lines) + end);
    }

    public void write(Task task, Path file, String text) {
        write(task, Map.of(file, text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Writes all of them, or none. */
    public void write(Task task, Map<Path, byte[]> files) {
        WholeFiles.write(task.folder(), files, replace);
    }
}
