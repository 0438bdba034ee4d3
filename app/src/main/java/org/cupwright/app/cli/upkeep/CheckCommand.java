package org.cupwright.app.cli.upkeep;

import org.cupwright.app.answers.UpkeepText;
import org.cupwright.app.answers.json.UpkeepJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.storage.upkeep.FolderReport;
import picocli.CommandLine.Command;

/** Looks through all that is kept. */
@Command(name = "check", description = "Looks through all that is kept and says what is damaged; changes nothing.")
public final class CheckCommand extends CourseCommand {
    /** Damage is an answer, not a failure to answer: it is printed as one, with the status of something to mend. */
    @Override
    protected void run(Task task) {
        FolderReport report = task.folder().upkeep().check();
        task.answer(() -> new UpkeepJson(task.texts()).check(report), () -> new UpkeepText(task.texts()).check(report));
        if (!report.sound()) {
            task.foundDamage();
        }
    }
}
