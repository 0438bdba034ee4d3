package org.cupwright.app.cli.level;

import java.nio.file.Path;
import java.util.Map;
import org.cupwright.app.answers.LevelRoundText;
import org.cupwright.app.answers.json.LevelJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.HolesOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Writing;
import org.cupwright.app.desk.level.LevelRoundOfDay;
import org.cupwright.app.desk.level.LevelRoundOfDay.Aim;
import org.cupwright.app.sheets.LevelRoundSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where to lay the level. */
@Command(
        name = "round",
        description = {
            "Names the few spots of a green that are most worth reading with the level, in the order of a walk.",
            "  level round --hole 7",
            "  level round --hole all --pdf round.pdf"
        })
final class LevelRoundCommand extends CourseCommand {
    private static final int MOST = 8;

    @Mixin
    private DayOptions day;

    @Mixin
    private HolesOption holes;

    @Option(
            names = "--aim",
            paramLabel = "plan|ground",
            defaultValue = "plan",
            description = "plan: what the day's plan needs in each third first; ground: as much undecided ground as"
                    + " can be. Default: plan.")
    private Aim aim;

    @Option(names = "--spots", paramLabel = "N", defaultValue = "6", description = "1 to 8 on each green. Default: 6.")
    private int spots;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Writes the list as PDF, with room for the readings.")
    private Path pdf;

    @Mixin
    private Writing writing;

    @Override
    protected void run(Task task) {
        if (spots < 1 || spots > MOST) {
            throw wrong("--spots takes 1 to " + MOST + ", not " + spots + ".", Integer.toString(spots));
        }
        LevelRoundOfDay.Answer answer =
                new LevelRoundOfDay(task.session()).of(task.question(day), holes.named(), aim, spots, task.progress());
        if (pdf != null) {
            writing.write(task, Map.of(pdf, new LevelRoundSheet(task.texts()).pdf(answer)));
        }
        task.answer(
                () -> new LevelJson(answer.day(), task.texts()).round(answer),
                () -> new LevelRoundText(task.texts(), answer).lines());
    }
}
