package org.cupwright.app.cli.people;

import org.cupwright.app.answers.PeopleText;
import org.cupwright.app.answers.json.PeopleJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.YesOption;
import org.cupwright.app.people.Erase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Takes somebody's name out of what is kept. */
@Command(
        name = "erase",
        description = "Replaces somebody's name by a neutral one wherever it stands; this cannot be taken back.")
final class PeopleEraseCommand extends CourseCommand {
    @Parameters(paramLabel = "NAME", description = "Who.")
    private String name;

    @Mixin
    private YesOption yes;

    @Override
    protected void run(Task task) {
        if (!yes.agreed(task, task.texts().say("people.erase.sure", name))) {
            task.print(task.texts().say("people.erase.not"));
            return;
        }
        Erase.Erased erased = new Erase(task.session()).person(name);
        task.answer(
                () -> new PeopleJson(task.texts()).erased(erased),
                () -> new PeopleText(task.texts(), task.zone()).erased(erased));
    }
}
