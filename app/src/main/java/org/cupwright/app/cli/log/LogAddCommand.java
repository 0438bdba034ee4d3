package org.cupwright.app.cli.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.answers.LogText;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.SpotOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.entry.Entry;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.TypedEntry;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.Photo;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Keeps an entry. */
@Command(
        name = "add",
        description = {
            "Keeps an entry in the logbook. For instance:",
            "  log add cup-changed --hole 7 --as-planned",
            "  log add cup-changed --hole 7 --on 12 --side R4",
            "  log add cup-changed --hole all --as-planned",
            "  log add speed-read --set feet=10.5",
            "  log add something-odd --hole 4 --set severity=soon --set text='ring of mushrooms' --photo ring.jpg",
            "  log add ground-marked --hole 3 --on 6 --side L4 --radius 2 --set use=closed --set reason=wear",
            "A kind, a part or a choice may be shortened as long as it is clear which is meant."
        })
final class LogAddCommand extends CourseCommand {
    @Parameters(paramLabel = "KIND", description = "What was done or seen; log kinds lists them.")
    private String kind;

    @Option(
            names = "--hole",
            paramLabel = "H",
            split = ",",
            description = "The hole, several with commas between, or all; one entry for each.")
    private List<String> holes = new ArrayList<>();

    @Option(names = "--as-planned", description = "The hole was cut where the day's plan has it.")
    private boolean asPlanned;

    @Option(
            names = "--when",
            paramLabel = "T",
            description = "05:40 on --date, or 2026-06-20T05:40. Default: now; 05:00 on another day.")
    private String when;

    @Option(
            names = "--photo",
            paramLabel = "FILE",
            description = "A photo of something odd, JPEG or PNG, up to 20 MB; the picture is kept as it is, "
                    + "where and when it was taken is left off.")
    private Path photo;

    @Mixin
    private SpotOptions place;

    @Mixin
    private PersonOption person;

    @Mixin
    private EntryOptions entry;

    @Override
    protected void run(Task task) {
        Optional<Spot> where = place.find();
        Map<String, String> parts = entry.parts();
        EntryForm form = EntryForm.of(kind);
        Optional<Photo> taken =
                Optional.ofNullable(photo).map(SourceFile::at).map(file -> TypedEntry.photo(form, file));
        TypedEntry says = new TypedEntry(
                Optional.of(form),
                parts,
                where,
                entry.radiusMetres(),
                Optional.ofNullable(when),
                asPlanned,
                taken.map(Photo::hash));
        Entry wanted = new Entry(holes, asPlanned, task.date(), says, taken, entry.sure());
        RecordFact.Answer answer = new RecordFact(task.session(person)).record(wanted);
        task.answer(answer, () -> new LogText(task.texts()).kept(answer));
    }
}
