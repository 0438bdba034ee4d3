package org.cupwright.app.cli.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.answers.LogText;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.YesOption;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.entry.Entry;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.TypedEntry;
import org.cupwright.units.WrittenNumber;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The round's entries in one line: the holes are cut. */
@Command(
        name = "cut",
        description = {
            "Keeps that the holes were cut where the day's plan has them, all that nothing was said of yet; asks once.",
            "  cut",
            "One that was cut elsewhere, before that: the hole, paces on, and paces from the left or right edge.",
            "  cut 7 12 R4"
        })
public final class CutCommand extends CourseCommand {
    private static final String KIND = "cup-changed";

    @Parameters(arity = "0..3", paramLabel = "HOLE ON SIDE", description = "Where one hole was cut, as 7 12 R4.")
    private List<String> where = new ArrayList<>();

    @Mixin
    private PersonOption person;

    @Mixin
    private YesOption yes;

    @Override
    protected void run(Task task) {
        RecordFact record = new RecordFact(task.session(person));
        Entry entry = where.isEmpty() ? entry(task, List.of("all"), Optional.empty()) : elsewhere(task);
        if (where.isEmpty() && !yes.given()) {
            List<String> holes = record.look(entry).kept().stream()
                    .flatMap(fact -> fact.hole().stream())
                    .toList();
            String named = String.join(", ", holes);
            String asks = task.texts()
                    .say("cut.asks", holes.size(), named, task.texts().day(task.day()));
            if (!yes.agreed(task, asks)) {
                task.print(task.texts().say("cut.left"));
                return;
            }
            entry = entry(task, holes, Optional.empty()); // what was agreed to, and nothing that came meanwhile
        }
        RecordFact.Answer answer = record.record(entry);
        task.answer(answer, () -> new LogText(task.texts()).kept(answer));
    }

    private Entry elsewhere(Task task) {
        if (where.size() != 3) {
            throw wrong("Give all three: the hole, paces on, and paces from a side, as cut 7 12 R4.", "");
        }
        Arguments arguments = new Arguments(spec());
        Spot spot = arguments.paced(paces(where.get(1)), where.get(2));
        return entry(task, List.of(where.get(0)), Optional.of(spot));
    }

    private double paces(String text) {
        return WrittenNumber.find(text)
                .orElseThrow(() -> wrong("Paces on are a number, as in cut 7 12 R4, not '" + text + "'.", text));
    }

    private Entry entry(Task task, List<String> holes, Optional<Spot> spot) {
        boolean asPlanned = spot.isEmpty();
        TypedEntry says = new TypedEntry(
                Optional.of(EntryForm.of(KIND)),
                Map.of(),
                spot,
                OptionalDouble.empty(),
                Optional.empty(),
                asPlanned,
                Optional.empty());
        return new Entry(holes, asPlanned, Optional.of(task.day()), says, Optional.empty(), yes.given());
    }
}
