package org.cupwright.app.cli.upkeep;

import java.util.concurrent.Callable;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Failures;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.storage.upkeep.FolderReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;

/** Looks through all that is kept. */
@Command(name = "check", description = "Looks through all that is kept and says what is damaged; changes nothing.")
public final class CheckCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @ParentCommand
    private CupwrightCommand options;

    public CheckCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /** Damage is an answer, not a failure to answer: it is printed as one, with the status of something to mend. */
    @Override
    public Integer call() {
        Task task = new Task(options, surroundings);
        FolderReport report = task.folder().upkeep().check();
        new UpkeepPrint(task).check(report);
        return report.sound() ? 0 : Failures.MENDABLE;
    }
}
