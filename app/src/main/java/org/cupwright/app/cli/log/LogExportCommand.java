package org.cupwright.app.cli.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.answers.json.Shape;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Writing;
import org.cupwright.app.desk.entry.table.ExportTable;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.log.FactLines;
import org.cupwright.formats.table.CsvText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the logbook to a file. */
@Command(
        name = "export",
        description = {
            "Writes every entry as it was recorded to a file, one a line, as JSON: the whole logbook.",
            "With --csv --kind K: a table of the entries of one kind as they count, for a spreadsheet."
        })
final class LogExportCommand extends CourseCommand {
    @Parameters(paramLabel = "FILE", description = "The file to write.")
    private Path file;

    @Option(names = "--csv", description = "Write a table, CSV, of the entries of one kind.")
    private boolean csv;

    @Option(names = "--kind", paramLabel = "K", description = "The kind of entries of the table; log kinds lists them.")
    private String kind;

    @Option(names = "--words", description = "Add a last column that says each entry in words, places in paces.")
    private boolean words;

    @Mixin
    private Writing writing;

    @Override
    protected void run(Task task) {
        new Arguments(spec()).tableOf(csv, kind);
        if (words && !csv) {
            throw wrong("--words goes with --csv --kind K.", "");
        }
        int written = csv ? table(task) : lines(task);
        Shape said = new Shape().with("file", file.toString()).with("facts", written);
        task.answer(said, () -> new Lines(task.texts()).say("log.exported", written, file.toString()));
    }

    private int lines(Task task) {
        List<String> lines = new FactLines(task.session()).export();
        writing.write(task, file, lines);
        return lines.size();
    }

    private int table(Task task) {
        ExportTable.Answer answer = new ExportTable(task.session()).of(EntryForm.of(kind));
        FactText said = new FactText(task.texts(), answer.course(), answer.policy());
        List<List<String>> lines = new ArrayList<>();
        lines.add(with(answer.header(), "words"));
        answer.rows().forEach(row -> lines.add(with(row.cells(), said.says(row.fact()))));
        writing.write(task, file, CsvText.write(lines));
        return answer.rows().size();
    }

    private List<String> with(List<String> cells, String last) {
        List<String> all = new ArrayList<>(cells);
        if (words) {
            all.add(last);
        }
        return all;
    }
}
