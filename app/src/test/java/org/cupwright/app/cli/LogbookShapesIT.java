package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.app.cli.PublishedShapes.checked;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * What the commands of the logbook, of notebooks and of the weather write with {@code --json} keeps to the published
 * schemas.
 */
class LogbookShapesIT {
    @TempDir
    static Path files;

    private static InProcess cupwright;

    @BeforeAll
    static void importACourse() throws IOException {
        cupwright = new TableDesk(files, 3).cupwright();
    }

    @Test
    void theLogbookKeepsItsShapes() throws IOException {
        Result added = cupwright.run("log", "add", "ball-mark", "--hole", "3", "--on", "9", "--side", "L9", "--json");
        JsonNode kept = checked("log-add", added).path("kept").path(0);
        assertThat(kept.path("payload").path("kind").asString()).isEqualTo("ballMark");
        String id = kept.path("id").asString();
        checked("log-correct", cupwright.run("log", "correct", id, "--on", "8", "--side", "L9", "--json"));
        JsonNode list = checked("log-list", cupwright.run("log", "list", "--hole", "3", "--json"));
        assertThat(list.path("corrected").path(0).asString()).isEqualTo(id);
        checked("log-correct", cupwright.run("log", "withdraw", id, "--json"));
        checked("log-kinds", cupwright.run("log", "kinds", "--json"));
        Path file = files.resolve("log.jsonl");
        assertThat(checked("log-export", cupwright.run("log", "export", file, "--json"))
                        .path("facts")
                        .asInt())
                .isEqualTo(3);
        JsonNode lines = checked("log-import", cupwright.run("log", "import", file, "--json"));
        assertThat(lines.path("known").asInt()).isEqualTo(3);
        assertThat(lines.path("kept").asBoolean()).isFalse();
    }

    private static Path photo() throws IOException {
        Path file = files.resolve("leak.png");
        BufferedImage picture = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
        assertThat(ImageIO.write(picture, "png", file.toFile())).isTrue();
        return file;
    }

    @Test
    void oddThingsKeepTheirShapes() throws IOException {
        InProcess other = new TableDesk(Files.createDirectory(files.resolve("odd")), 3).cupwright();
        Result odd =
                other.run("log", "add", "something-odd", "--set", "text=invented leak", "--photo", photo(), "--json");
        String id = checked("log-add", odd).path("kept").path(0).path("id").asString();
        JsonNode listed =
                checked("turf", other.run("turf", "--json")).path("odd").path(0);
        assertThat(listed.path("id").asString()).isEqualTo(id);
        Path out = files.resolve("odd.png");
        JsonNode photo = checked("log-photo", other.run("log", "photo", id, out, "--json"));
        assertThat(photo.path("sha256").asString())
                .isEqualTo(listed.path("photo").asString());
        checked("log-add", other.run("log", "seen", id, "--json"));
        assertThat(checked("turf", other.run("turf", "--json")).path("odd").size())
                .isZero();
    }

    @Test
    void tablesAndNotebooksKeepTheirShapes() throws IOException {
        InProcess other = new TableDesk(Files.createDirectory(files.resolve("tables")), 3).cupwright();
        other.run("log", "add", "ball-mark", "--hole", "3", "--on", "9", "--side", "L9");
        Path out = files.resolve("marks.csv");
        Result exported = other.run("log", "export", out, "--csv", "--kind", "ball-mark", "--json");
        assertThat(checked("log-export", exported).path("facts").asInt()).isEqualTo(1);
        Path table = MadeCourse.write(files.resolve("table.csv"), "date,hole,on,side,sky\n2026-05-01,2,9,L9,\nx\n");
        JsonNode found =
                checked("log-import", other.run("log", "import", table, "--csv", "--kind", "ball-mark", "--json"));
        assertThat(found.path("facts")
                        .path(0)
                        .path("payload")
                        .path("at")
                        .path("east")
                        .isNumber())
                .isTrue();
        assertThat(found.path("unused").path(0).asString()).isEqualTo("sky");
        assertThat(found.path("notRead").path(0).path("line").asInt()).isEqualTo(3);
        Path notebook = MadeCourse.write(
                files.resolve("notebook.csv"), "date,hole,on,side,words\n2026-05-01,2,9,L9,\nx\n2026-05-02,2,,,back\n");
        JsonNode read = checked("history-import", cupwright.run("history", "import", notebook, "--json"));
        assertThat(read.path("roughly").asInt()).isEqualTo(1);
        assertThat(read.path("notRead").path(0).path("line").asInt()).isEqualTo(3);
    }

    @Test
    void weatherKeepsItsShape() throws IOException {
        Path table =
                Files.writeString(files.resolve("weather.csv"), "date,tmax,tmin\n2026-05-01,18,7\n2026-05-02,7,18\n");
        JsonNode read = checked("weather-import", cupwright.run("weather", "import", table, "--json"));
        assertThat(read.path("notRead").path(0).path("line").asInt()).isEqualTo(3);
        assertThat(read.path("added").asInt()).isEqualTo(1);
        Path wrong = Files.writeString(files.resolve("wrong.csv"), "date,tmax,tmin\n2026-06-21,55,41");
        JsonNode asked = checked("weather-import", cupwright.run("weather", "import", wrong, "--forecast", "--json"));
        assertThat(asked.path("asks").path(0).path("about").asString()).isEqualTo("tmax");
        assertThat(asked.path("unended").asString()).isEqualTo("2026-06-21,55,41");
        JsonNode list = checked("weather-list", cupwright.run("weather", "list", "--json"));
        assertThat(list.path("days").path(0).path("source").asString()).isEqualTo("assumed");
    }
}
