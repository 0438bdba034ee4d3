package org.cupwright.app.cli.level;

import org.cupwright.app.answers.LevelText;
import org.cupwright.app.answers.json.LevelJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.HolesOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.level.KeepLevelReading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** What the level has read. */
@Command(name = "list", description = "Lists what the level has read, beside what is known without it.")
final class LevelListCommand extends CourseCommand {
    @Mixin
    private HolesOption holes;

    @Override
    protected void run(Task task) {
        KeepLevelReading.Listed list = new KeepLevelReading(task.session()).list(task.question(), holes.named());
        task.answer(
                () -> new LevelJson(list.day(), task.texts()).list(list),
                () -> new LevelText(task.texts(), list.day()).list(list));
    }
}
