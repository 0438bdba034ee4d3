package org.cupwright.app.cli.drawn;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.cupwright.app.answers.DrawnText;
import org.cupwright.app.answers.json.DrawnJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.HolesOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Writing;
import org.cupwright.app.desk.drawn.KeepDrawn;
import org.cupwright.app.maps.DrawnDocument;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What people say of the ground. */
@Command(name = "list", description = "Lists what people say of the ground, and writes it as a map.")
final class DrawnListCommand extends CourseCommand {
    @Mixin
    private HolesOption holes;

    @Option(
            names = "--geojson",
            paramLabel = "FILE",
            description = "Writes them as GeoJSON (WGS84), which import --drawn takes in again.")
    private Path geoJson;

    @Mixin
    private Writing writing;

    @Override
    protected void run(Task task) {
        KeepDrawn.Listed listed = new KeepDrawn(task.session()).list(task.question(), holes.named());
        if (geoJson != null) {
            DrawnDocument document =
                    new DrawnDocument(listed.day().course().frame().epsg());
            listed.kept().forEach(kept -> document.add(kept.holes().get(0), kept.item()));
            writing.write(task, Map.of(geoJson, document.text().getBytes(StandardCharsets.UTF_8)));
        }
        task.answer(
                () -> new DrawnJson(listed.day(), task.texts()).list(listed),
                () -> new DrawnText(task.texts(), listed.day()).list(listed));
    }
}
