package org.cupwright.app.cli.log;

import java.nio.file.Path;
import java.util.Optional;
import org.cupwright.app.answers.TakenInText;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.notebook.DayOrder;
import org.cupwright.app.desk.entry.notebook.ImportHistory;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.formats.table.FarDays;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes in a notebook. */
@Command(
        name = "import",
        description = {
            "Reads a table of old hole locations and says what reads; --yes keeps it.",
            "The first line names the columns date, hole, on and side, as in 2025-05-31,7,12,L5; "
                    + "instead of on and side",
            "a column words, as in 12 on 5 left, back left, or left in yesterday's hole."
        })
final class HistoryImportCommand extends CourseCommand {
    @Parameters(paramLabel = "FILE", description = "The table, CSV.")
    private Path file;

    @Option(
            names = "--accept",
            paramLabel = "WHAT",
            description = "What looks wrong and is right all the same: days, those more than a year from the others.")
    private String accepted;

    @Mixin
    private DatesOption dates;

    @Option(names = "--yes", description = "Keep the lines that read.")
    private boolean keep;

    @Option(names = "--person", paramLabel = "NAME", description = "Who is named for it. Default: notebook.")
    private String person = "notebook";

    @Override
    protected void run(Task task) {
        boolean far = FarDays.ABOUT.equals(accepted);
        if (accepted != null && !far) {
            throw wrong("--accept takes: " + FarDays.ABOUT + ".", accepted);
        }
        SourceFile source = SourceFile.at(file);
        ImportHistory history = new ImportHistory(task.session().by(person));
        Optional<DayOrder> order = dates.order(task, () -> history.question(source));
        ImportHistory.Answer answer = history.read(source, order, far, keep);
        task.answer(answer, () -> new TakenInText(task.texts()).notebook(answer));
    }
}
