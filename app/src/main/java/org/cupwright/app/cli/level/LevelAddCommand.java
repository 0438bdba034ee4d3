package org.cupwright.app.cli.level;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.answers.LevelText;
import org.cupwright.app.answers.json.LevelJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.SpotOptions;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.level.Falls;
import org.cupwright.app.desk.level.KeepLevelReading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Keeps what the level read at a spot. */
@Command(
        name = "add",
        description = {
            "Keeps what the level read at a spot; an earlier reading at the same spot gives way. For instance:",
            "  level add --hole 7 --on 12 --side L5 --falls front=1.4 --falls left=0.6",
            "  level add --hole 7 --on 12 --side L5 --falls 215=1.5",
            "Two falls are read across each other; one alone is the steepest way down. A fall below 0 rises that way."
        })
final class LevelAddCommand extends CourseCommand {
    @Option(names = "--hole", paramLabel = "H", required = true, description = "The hole.")
    private String hole;

    @Mixin
    private SpotOptions spot;

    @Option(
            names = "--falls",
            paramLabel = "WAY=PERCENT",
            required = true,
            description = "How much the ground falls, and which way: front, back, left, right as seen from the fairway,"
                    + " or degrees clockwise from the map's north. Once or twice.")
    private List<String> falls = new ArrayList<>();

    @Mixin
    private PersonOption person;

    @Override
    protected void run(Task task) {
        KeepLevelReading.Kept kept =
                new KeepLevelReading(task.session(person)).add(task.question(), hole, spot.get(), falls());
        task.answer(
                () -> new LevelJson(kept.day(), task.texts()).kept(kept),
                () -> new LevelText(task.texts(), kept.day()).kept(kept));
    }

    private Falls falls() {
        Map<String, Double> byWay = new LinkedHashMap<>();
        for (String fall : falls) {
            if (!fall.matches("[A-Za-z0-9.]+=[-+]?[0-9]{1,3}([.][0-9]+)?")) {
                throw wrong(fall);
            }
            String[] parts = fall.split("=", 2);
            if (byWay.put(parts[0], Double.valueOf(parts[1])) != null) {
                throw wrong(fall);
            }
        }
        if (byWay.size() > 2) {
            throw wrong("--falls is given once or twice.", String.join(" ", falls));
        }
        return new Falls(byWay);
    }

    private ParameterException wrong(String fall) {
        return wrong("--falls takes WAY=PERCENT, as front=1.4, each way once; not '" + fall + "'.", fall);
    }
}
