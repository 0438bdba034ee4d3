package org.cupwright.app.cli.upkeep;

import java.nio.file.Path;
import org.cupwright.app.answers.UpkeepText;
import org.cupwright.app.answers.json.UpkeepJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.storage.upkeep.RestoreDone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Puts a backup in place of what is kept. */
@Command(
        name = "restore",
        description = "Puts a backup in the place of all that is kept; what was there is copied aside first.")
public final class RestoreCommand extends CourseCommand {
    @Parameters(paramLabel = "FILE", description = "The backup to go back to.")
    private Path file;

    @Override
    protected void run(Task task) {
        RestoreDone done = task.folder().upkeep().restore(file);
        task.answer(() -> new UpkeepJson(task.texts()).restore(done), () -> new UpkeepText(task.texts()).restore(done));
    }
}
