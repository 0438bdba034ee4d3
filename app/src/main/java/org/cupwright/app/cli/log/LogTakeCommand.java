package org.cupwright.app.cli.log;

import java.nio.file.Path;
import org.cupwright.app.answers.TakenInText;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.carried.TakeRound;
import org.cupwright.app.desk.files.SourceFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Takes what a telephone could not send. */
@Command(
        name = "take",
        description = {
            "Keeps what a telephone could not send, from the file that the page of the round saved there.",
            "Each entry is kept once, whether it came before, or comes later by itself."
        })
final class LogTakeCommand extends CourseCommand {
    @Parameters(paramLabel = "FILE", description = "The file, as it came from the telephone.")
    private Path file;

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        TakeRound.Taken taken = new TakeRound(task.session(person)).take(SourceFile.at(file));
        task.answer(taken, () -> new TakenInText(task.texts()).round(taken));
    }
}
