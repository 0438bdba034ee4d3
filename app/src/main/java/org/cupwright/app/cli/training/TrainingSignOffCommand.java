package org.cupwright.app.cli.training;

import java.util.Optional;
import org.cupwright.app.answers.TrainingText;
import org.cupwright.app.answers.json.TrainingJson;
import org.cupwright.app.cli.command.AskedDay;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.training.SignOff;
import org.cupwright.app.storage.training.Skill;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says that somebody can do a step of the work alone. */
@Command(name = "sign-off", description = "Says that somebody can do a step of the hand work alone.")
final class TrainingSignOffCommand extends CourseCommand {
    @Parameters(index = "0", paramLabel = "NAME", description = "Who.")
    private String name;

    @Parameters(
            index = "1",
            paramLabel = "SKILL",
            converter = SkillName.class,
            description = "finding, cutting, cup, plug, finish, reporting or event-holes.")
    private Skill skill;

    @Option(names = "--on", paramLabel = "D", description = "Since which day. Default: today.")
    private AskedDay day;

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        SignOff.Answer answer = new SignOff(task.session(person))
                .person(name, skill, Optional.ofNullable(day).map(task::day));
        task.answer(
                () -> new TrainingJson(task.texts()).answer(answer),
                () -> new TrainingText(task.texts(), task.zone()).signed(answer));
    }
}
