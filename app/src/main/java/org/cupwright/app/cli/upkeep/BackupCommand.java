package org.cupwright.app.cli.upkeep;

import java.nio.file.Path;
import org.cupwright.app.answers.UpkeepText;
import org.cupwright.app.answers.json.UpkeepJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.storage.upkeep.BackupDone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Copies all that is kept into one file. */
@Command(name = "backup", description = "Copies all that is kept into one file; others may write meanwhile.")
public final class BackupCommand extends CourseCommand {
    @Parameters(paramLabel = "FILE", description = "The backup to write, best on another disk.")
    private Path file;

    @Option(names = "--replace", description = "Replace a file of that name.")
    private boolean replace;

    @Override
    protected void run(Task task) {
        BackupDone done = task.folder().upkeep().backup(file, replace);
        task.answer(() -> new UpkeepJson(task.texts()).backup(done), () -> new UpkeepText(task.texts()).backup(done));
        if (!done.damages().isEmpty()) {
            task.foundDamage();
        }
    }
}
