package org.cupwright.app.cli.training;

import org.cupwright.app.answers.TrainingText;
import org.cupwright.app.answers.json.TrainingJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.training.SignOff;
import org.cupwright.app.storage.training.Skill;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Ends a sign-off. */
@Command(name = "withdraw", description = "Ends a sign-off from today on; what was signed off before stays written.")
final class TrainingWithdrawCommand extends CourseCommand {
    @Parameters(index = "0", paramLabel = "NAME", description = "Who.")
    private String name;

    @Parameters(
            index = "1",
            paramLabel = "SKILL",
            converter = SkillName.class,
            description = "finding, cutting, cup, plug, finish, reporting or event-holes.")
    private Skill skill;

    @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "Why.")
    private String reason;

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        SignOff.Answer answer = new SignOff(task.session(person)).withdraw(name, skill, reason);
        task.answer(
                () -> new TrainingJson(task.texts()).answer(answer),
                () -> new TrainingText(task.texts(), task.zone()).signed(answer));
    }
}
