package org.cupwright.app.cli;

import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.desk.log.FactLines;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import tools.jackson.databind.node.ObjectNode;

/** Writes the logbook to a file. */
@Command(name = "export", description = "Writes every entry as it was recorded to a file, one a line, as JSON.")
final class LogExportCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private LogCommand log;

    @Parameters(paramLabel = "FILE", description = "The file to write; it must not be there yet.")
    private Path file;

    LogExportCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        Task task = new Task(log.options(), surroundings);
        List<String> lines = new FactLines(task.folder()).export(log.options().course());
        new NewFile(file).write(lines);
        if (log.options().json()) {
            ObjectNode node = Json.object();
            node.put("file", file.toString());
            node.put("facts", lines.size());
            task.print(Json.document(node));
        } else {
            task.print(task.texts().say("log.exported", lines.size(), file.toString()));
        }
    }
}
