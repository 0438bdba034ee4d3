package org.cupwright.app.cli.turf;

import java.util.Iterator;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.answers.TurfInFull;
import org.cupwright.app.answers.TurfText;
import org.cupwright.app.answers.json.TurfJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.turf.ShowTurf;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows the turf of a day. */
@Command(
        name = "turf",
        description = "Shows what rests, which plugs want water or a look, and what the cutters ask for.")
public final class TurfCommand extends CourseCommand {
    /** Lines of a terminal that nobody has made larger. */
    private static final int SCREEN_LINES = 24;

    @Option(names = "--all", description = "All that is known: every plug, resting ground, charts, what it rests on.")
    private boolean all;

    @Override
    protected void run(Task task) {
        TurfReport report = new ShowTurf(task.session()).of(task.question());
        task.answer(
                () -> new TurfJson(report.day(), task.texts()).of(report),
                () -> all ? new TurfInFull(task.texts(), report).lines() : screen(task.texts(), report));
    }

    /** The first text that fits, else the shortest. */
    private static Lines screen(Texts texts, TurfReport report) {
        Iterator<Lines> shorter = TurfText.shorterAndShorter(texts, report).iterator();
        Lines lines = shorter.next();
        while (shorter.hasNext() && Layout.set(lines).size() > SCREEN_LINES) {
            lines = shorter.next();
        }
        return lines;
    }
}
