package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.cupwright.app.cli.InProcess.Result;

/**
 * A data folder with the made course, and tables that are handed to its commands (the course's today is 2026-06-20).
 */
final class TableDesk {
    private final Path files;
    private final InProcess cupwright;

    TableDesk(Path files, int greens) throws IOException {
        this.files = files;
        this.cupwright = new InProcess(files.resolve("data"));
        Result imported = cupwright.run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, greens));
        assertThat(imported.status()).as(imported.err()).isZero();
    }

    InProcess cupwright() {
        return cupwright;
    }

    /** {@code GROUP import FILE MORE…} of a table. */
    Result read(String group, String text, Object... more) throws IOException {
        Path file = Files.write(files.resolve(group + ".csv"), text.getBytes(StandardCharsets.UTF_8));
        List<Object> line = new ArrayList<>(List.of(group, "import", file));
        line.addAll(Arrays.asList(more));
        return cupwright.run(line.toArray());
    }

    /** The logbook of the half year. */
    String list() {
        return cupwright
                .run("log", "list", "--from", "2026-01-01", "--to", "2026-06-20")
                .out();
    }
}
