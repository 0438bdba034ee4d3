package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.wiring.RealProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the launcher does after a build, and that later starts have something of it. */
class RehearsalIT {
    private static final String JAR = System.getProperty("cupwright.jar");

    @TempDir
    private Path folder;

    private Path library;
    private Path temporary;
    private Path archive;

    @BeforeEach
    void rehearse() throws IOException, InterruptedException {
        library = folder.resolve("native");
        temporary = Files.createDirectory(folder.resolve("temporary"));
        archive = folder.resolve("classes.jsa");
        Result rehearsed = java(List.of(
                "-XX:ArchiveClassesAtExit=" + archive, "-cp", JAR, Rehearsal.class.getName(), library.toString()));
        assertThat(rehearsed.status()).as(rehearsed.err()).isZero();
    }

    /** With a folder of its own for what is temporary. */
    private Result java(List<String> arguments) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>();
        line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        line.add("-Djava.io.tmpdir=" + temporary);
        line.addAll(arguments);
        return RealProcess.run(line);
    }

    @Test
    void laterStartsTakeClassesFromTheArchiveAndUnpackNothing() throws IOException, InterruptedException {
        assertThat(temporary).as("what the rehearsal left behind").isEmptyDirectory();
        Path loaded = folder.resolve("loaded.txt");
        Result started = java(List.of(
                "-XX:SharedArchiveFile=" + archive,
                "-Xlog:class+load:file=" + loaded,
                "-Dorg.sqlite.lib.path=" + library,
                "-jar",
                JAR,
                "turf",
                "--data",
                kept().toString()));
        assertThat(started.status()).as(started.err()).isZero();
        assertThat(Files.readAllLines(loaded))
                .anyMatch(line ->
                        line.contains("org.cupwright.app.desk.turf.ShowTurf source: shared objects file (top)"));
        assertThat(temporary).as("what the start unpacked").isEmptyDirectory();
    }

    /** A data folder with a course in it. */
    private Path kept() throws IOException, InterruptedException {
        Path outlines = folder.resolve("outlines.geojson");
        Files.writeString(outlines, ONE_GREEN);
        Path data = folder.resolve("data");
        Result imported = java(List.of(
                "-Dorg.sqlite.lib.path=" + library,
                "-jar",
                JAR,
                "import",
                "--course",
                "invented",
                "--outlines",
                outlines.toString(),
                "--data",
                data.toString()));
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
