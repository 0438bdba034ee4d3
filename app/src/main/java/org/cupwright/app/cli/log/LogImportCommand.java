package org.cupwright.app.cli.log;

import java.nio.file.Path;
import java.util.Optional;
import org.cupwright.app.answers.TakenInText;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.notebook.DayOrder;
import org.cupwright.app.desk.entry.table.ImportTable;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.log.FactLines;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads the entries of a file. */
@Command(
        name = "import",
        description = {
            "Reads the entries of a file that log export wrote and says what is new; --yes keeps it, all or none.",
            "With --csv --kind K: a table of entries of one kind, from log export or made by hand. "
                    + "The first line names the",
            "columns: date or time, hole, the parts that log kinds lists; "
                    + "for places also on and side, or east and north."
        })
final class LogImportCommand extends CourseCommand {
    @Parameters(paramLabel = "FILE", description = "The file.")
    private Path file;

    @Option(names = "--csv", description = "Read a table, CSV, of entries of one kind.")
    private boolean csv;

    @Option(names = "--kind", paramLabel = "K", description = "The kind of entries of the table; log kinds lists them.")
    private String kind;

    @Option(names = "--yes", description = "Keep what reads.")
    private boolean keep;

    @Option(
            names = "--accept",
            paramLabel = "WHAT",
            description = "What looks wrong and is right all the same: questions, those asked about lines of a table.")
    private String accepted;

    @Mixin
    private DatesOption dates;

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        Arguments arguments = new Arguments(spec());
        arguments.tableOf(csv, kind);
        if (accepted != null && !accepted.equals(ImportTable.QUESTIONS)) {
            throw arguments.wrong("--accept takes: " + ImportTable.QUESTIONS + ".", accepted);
        }
        if (!csv && (accepted != null || dates.isGiven() || person.isGiven())) {
            throw arguments.wrong("--accept, --dates and --person go with --csv --kind K.", "");
        }
        SourceFile source = SourceFile.at(file);
        if (csv) {
            table(task, source);
        } else {
            FactLines.Imported done = new FactLines(task.session()).read(source, keep);
            task.answer(done, () -> new TakenInText(task.texts()).entries(done));
        }
    }

    private void table(Task task, SourceFile source) {
        ImportTable table = new ImportTable(task.session(person));
        EntryForm form = EntryForm.of(kind);
        Optional<DayOrder> order = dates.order(task, () -> table.question(form, source));
        ImportTable.Answer answer = table.read(form, source, order, accepted != null, keep);
        task.answer(answer, () -> new TakenInText(task.texts()).table(answer));
    }
}
