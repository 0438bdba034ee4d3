package org.cupwright.app.cli.training;

import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.answers.TrainingText;
import org.cupwright.app.answers.json.TrainingJson;
import org.cupwright.app.cli.command.AskedDay;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.training.SignOff;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a sign-off or its end right. */
@Command(
        name = "correct",
        description = "Says on which other day a sign-off or its end was, or that it should not have been written.")
final class TrainingCorrectCommand extends CourseCommand {
    @Parameters(paramLabel = "ID", description = "The record, as list NAME --json names it.")
    private UUID id;

    @Option(names = "--on", paramLabel = "D", description = "The day that was meant. Default: none, it does not count.")
    private AskedDay day;

    @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "Why.")
    private String reason;

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        SignOff.Answer answer = new SignOff(task.session(person))
                .correct(id, Optional.ofNullable(day).map(task::day), reason);
        task.answer(
                () -> new TrainingJson(task.texts()).answer(answer),
                () -> new TrainingText(task.texts(), task.zone()).signed(answer));
    }
}
