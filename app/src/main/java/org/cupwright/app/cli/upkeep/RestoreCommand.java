package org.cupwright.app.cli.upkeep;

import java.nio.file.Path;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.storage.upkeep.RestoreDone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Puts a backup in place of what is kept. */
@Command(
        name = "restore",
        description = "Puts a backup in the place of all that is kept; what was there is copied aside first.")
public final class RestoreCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private CupwrightCommand options;

    @Parameters(paramLabel = "FILE", description = "The backup to go back to.")
    private Path file;

    public RestoreCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        Task task = new Task(options, surroundings);
        RestoreDone done = task.folder().upkeep().restore(file);
        new UpkeepPrint(task).restore(done);
    }
}
