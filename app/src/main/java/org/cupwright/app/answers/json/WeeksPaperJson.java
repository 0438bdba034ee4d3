package org.cupwright.app.answers.json;

import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.desk.paper.WeeksPaper;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.JsonNode;

/** Which days' plans were written, and to which files, as scripts read it. */
public final class WeeksPaperJson {
    private WeeksPaperJson() {}

    public static JsonNode of(WeeksPaper paper, List<Path> files, Texts texts) {
        return new Shapes(texts)
                .tree(new Shape()
                        .with("course", paper.course())
                        .with(
                                "days",
                                paper.days().stream().map(WeeksPaperJson::day).toList())
                        .with("weatherBasis", paper.weather())
                        .with("files", files));
    }

    private static Shape day(WeeksPaper.PlanOfDay day) {
        return new Shape()
                .with("date", day.date())
                .with("state", day.plan().state())
                .with("versions", day.versions());
    }
}
