package org.cupwright.app.cli.upkeep;

import java.nio.file.Path;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Copies all that is kept into one file. */
@Command(name = "backup", description = "Copies all that is kept into one file; others may write meanwhile.")
public final class BackupCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private CupwrightCommand options;

    @Parameters(paramLabel = "FILE", description = "The backup to write, best on another disk.")
    private Path file;

    @Option(names = "--replace", description = "Replace a file of that name.")
    private boolean replace;

    public BackupCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        Task task = new Task(options, surroundings);
        new UpkeepPrint(task).backup(task.folder().upkeep().backup(file, replace));
    }
}
