package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.wiring.RealProcess.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the launcher does after a build, and that later starts have something of it. */
class RehearsalIT {
    @TempDir
    private Path folder;

    @Test
    void laterStartsTakeClassesFromTheArchiveAndUnpackNothing() throws IOException, InterruptedException {
        assertThat(ClassesArchived.temporary())
                .as("what the rehearsal left behind")
                .isEmptyDirectory();
        Path temporary = Files.createDirectory(folder.resolve("temporary"));
        Path loaded = folder.resolve("loaded.txt");
        List<String> line = new ArrayList<>(
                RealProcess.program(List.of("-Djava.io.tmpdir=" + temporary, "-Xlog:class+load:file=" + loaded)));
        line.addAll(List.of("turf", "--data", kept().toString()));
        Result started = RealProcess.run(line);
        assertThat(started.status()).as(started.err()).isZero();
        assertThat(Files.readAllLines(loaded))
                .anyMatch(each ->
                        each.contains("org.cupwright.app.desk.turf.ShowTurf source: shared objects file (top)"));
        assertThat(temporary).as("what the start unpacked").isEmptyDirectory();
    }

    /** A data folder with a course in it. */
    private Path kept() throws IOException, InterruptedException {
        Path outlines = folder.resolve("outlines.geojson");
        Files.writeString(outlines, ONE_GREEN);
        Path data = folder.resolve("data");
        Result imported = RealProcess.typed("import", "--course", "invented", "--outlines", outlines, "--data", data);
        assertThat(imported.status()).as(imported.err()).isZero();
        return data;
    }

    private static final String ONE_GREEN = """
            {"type": "FeatureCollection", "features": [{"type": "Feature",
              "properties": {"golf": "green", "ref": "1"},
              "geometry": {"type": "Polygon", "coordinates": [[
                [5.0000, 52.0000], [5.0003, 52.0000], [5.0003, 52.0002], [5.0000, 52.0002], [5.0000, 52.0000]]]}}]}
            """;
}
