package org.cupwright.app.cli.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.answers.ChangeText;
import org.cupwright.app.answers.json.ChangeJson;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Version;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.plan.ChangeAsked;
import org.cupwright.app.desk.plan.ChangeWeeks;
import org.cupwright.app.desk.plan.UndoChange;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Changes the plans of coming days as little as can be. */
@Command(
        name = "change",
        description = "Changes the plans of coming days as little as can be: for what is wanted otherwise, and for "
                + "what the logbook says since they were made.")
public final class ChangeCommand extends CourseCommand {
    @Option(
            names = "--lock",
            paramLabel = "[DAY:]H=PLACE",
            description = "The hole is to be there, on the first day or the one named: 7=12,L5 is 12 paces on and 5 "
                    + "from the left; 7=E,N is in the course's frame.")
    private List<String> locks = new ArrayList<>();

    @Option(
            names = "--forbid",
            paramLabel = "[DAY:]H=PLACE,M",
            description = "The hole is not to be within so many metres of a place, on any day or the one named.")
    private List<String> forbidden = new ArrayList<>();

    @Option(
            names = "--free",
            paramLabel = "[DAY:]H",
            description = "What was asked for the hole no longer counts, on any day or the one named.")
    private List<String> freed = new ArrayList<>();

    @Option(
            names = "--spoiled",
            paramLabel = "[DAY:]H",
            description = "The spot where the hole is planned, on the first day or the one named, is spoiled: no hole "
                    + "is to be there on any day.")
    private List<String> spoiled = new ArrayList<>();

    @Option(names = "--swap", paramLabel = "DAY:H,DAY:H", description = "The hole's spots of two days are exchanged.")
    private List<String> swaps = new ArrayList<>();

    @Option(
            names = "--close",
            paramLabel = "FILE",
            description = "Closed or saved ground, as --ground of plan takes it.")
    private Path closed;

    @Option(
            names = "--days",
            paramLabel = "K",
            description = "How many planned days may be changed, from the first on. Default: all of them.")
    private Integer days;

    @Option(names = "--undo", description = "Take back the last change as a whole.")
    private boolean undo;

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        if (undo) {
            undo(task);
            return;
        }
        ChangeWords words = new ChangeWords(task, new Arguments(spec()));
        ChangeAsked asked = new ChangeAsked(
                Stream.of(
                                locks.stream().map(words::lock),
                                forbidden.stream().map(words::forbid),
                                freed.stream().map(words::free))
                        .flatMap(all -> all)
                        .toList(),
                swaps.stream().map(words::swap).toList(),
                spoiled.stream().map(words::spoiled).toList(),
                Optional.ofNullable(days));
        DayQuestion day = task.question();
        DayQuestion question = new DayQuestion(
                day.date(), day.speed(), day.rain(), Optional.ofNullable(closed).map(SourceFile::at));
        ChangeWeeks.Answer answer =
                new ChangeWeeks(task.session(person), Version.text()).change(question, asked, task.progress());
        task.answer(
                () -> new ChangeJson(answer.day().course(), answer.day().policy(), task.texts()).changed(answer),
                () -> new ChangeText(task.texts()).lines(answer));
    }

    private void undo(Task task) {
        boolean more = Stream.of(locks, forbidden, freed, spoiled, swaps).anyMatch(all -> !all.isEmpty())
                || closed != null
                || days != null;
        if (more) {
            throw wrong("--undo stands alone.", "");
        }
        UndoChange.Answer answer = new UndoChange(task.session(person)).undo();
        task.answer(
                () -> new ChangeJson(answer.course(), answer.policy(), task.texts()).undone(answer),
                () -> new ChangeText(task.texts()).undone(answer));
    }
}
