package org.cupwright.app.cli.level;

import org.cupwright.app.answers.LevelText;
import org.cupwright.app.answers.json.LevelJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.HolesOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.level.KeepLevelReading;
import org.cupwright.app.desk.level.KeepLevelReading.TakenBack;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes a reading back. */
@Command(name = "remove", description = "Takes a reading back, by the id that level list shows.")
final class LevelRemoveCommand extends CourseCommand {
    @Option(
            names = "--id",
            paramLabel = "ID",
            required = true,
            description = "Its id, or as much of its beginning as no other has.")
    private String id;

    @Mixin
    private HolesOption holes;

    @Override
    protected void run(Task task) {
        TakenBack taken = new KeepLevelReading(task.session()).remove(task.question(), id, holes.named());
        task.answer(
                () -> new LevelJson(taken.day(), task.texts()).takenBack(taken),
                () -> new LevelText(task.texts(), taken.day()).takenBack(taken));
    }
}
