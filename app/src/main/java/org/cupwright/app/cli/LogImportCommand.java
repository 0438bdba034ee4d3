package org.cupwright.app.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.cupwright.app.desk.SourceFile;
import org.cupwright.app.desk.log.FactLines;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import tools.jackson.databind.node.ObjectNode;

/** Keeps the entries of a file that export wrote. */
@Command(
        name = "import",
        description =
                "Keeps the entries of a file that log export wrote, all or none; those kept already stay as they are.")
final class LogImportCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private LogCommand log;

    @Parameters(paramLabel = "FILE", description = "The file.")
    private Path file;

    LogImportCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        Task task = new Task(log.options(), surroundings);
        SourceFile source = new SourceFile(file.toString(), () -> Files.newInputStream(file));
        FactLines.Imported done =
                new FactLines(task.folder()).read(log.options().course(), source);
        if (log.options().json()) {
            ObjectNode node = Json.object();
            node.put("course", done.course().id());
            node.put("added", done.added());
            node.put("known", done.known());
            task.print(Json.document(node));
        } else {
            task.print(task.texts().say("log.imported", done.added(), done.known()));
        }
    }
}
