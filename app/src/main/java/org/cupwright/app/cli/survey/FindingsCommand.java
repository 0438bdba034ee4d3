package org.cupwright.app.cli.survey;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.cupwright.app.answers.FindingText;
import org.cupwright.app.answers.json.FindingJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.HolesOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Writing;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.findings.GreenFindings;
import org.cupwright.app.maps.FindingsGeoJson;
import org.cupwright.app.texts.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is doubtful about the ground of the greens. */
@Command(
        name = "findings",
        description = {
            "Lists what is doubtful about the ground of each green, the worst first, and what to do about it.",
            "  findings --hole 7",
            "  findings --geojson findings.geojson"
        })
public final class FindingsCommand extends CourseCommand {
    @Mixin
    private HolesOption holes;

    @Option(
            names = "--geojson",
            paramLabel = "FILE",
            description = "Writes the places and parts of greens that are doubtful as GeoJSON (WGS84).")
    private Path geoJson;

    @Mixin
    private Writing writing;

    @Override
    protected void run(Task task) {
        FindDoubts.Answer answer = new FindDoubts(task.session()).of(task.question(), holes.named(), task.progress());
        Texts texts = task.texts();
        if (geoJson != null) {
            writing.write(task, Map.of(geoJson, document(answer, texts).getBytes(StandardCharsets.UTF_8)));
        }
        task.answer(() -> new FindingJson(texts).ground(answer), () -> new FindingText(texts).ground(answer));
    }

    private static String document(FindDoubts.Answer answer, Texts texts) {
        Map<String, String> about = Map.of("course", answer.day().course().id());
        FindingsGeoJson document =
                new FindingsGeoJson(answer.day().course().frame().epsg(), about, texts);
        for (GreenFindings green : answer.greens()) {
            document.add(green.hole(), green.findings());
        }
        return document.text();
    }
}
