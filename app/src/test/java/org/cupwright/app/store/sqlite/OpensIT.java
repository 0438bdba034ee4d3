package org.cupwright.app.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.cli.Cli;
import org.cupwright.app.cli.MadeMorning;
import org.cupwright.app.cli.command.Surroundings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How often a command opens the data file: once to read and once more if it writes. */
class OpensIT {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path files;

    private int opensOf(String... arguments) {
        Path data = files.resolve("data");
        String[] line = Stream.concat(Arrays.stream(arguments), Stream.of("--data", data.toString()))
                .toArray(String[]::new);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        Surroundings surroundings = new Surroundings(out, out, CLOCK, data, folder -> new SqliteFolder(folder, CLOCK));
        int before = Database.OPENED.get();
        int status = new Cli(surroundings).run(line);
        assertThat(status).as(said.toString(StandardCharsets.UTF_8)).isZero();
        return Database.OPENED.get() - before;
    }

    @Test
    void aCommandOpensTheDataFileOnceToReadAndOnceToWrite() throws IOException {
        MadeMorning.copyTo(files.resolve("data"));
        assertThat(opensOf("plan", "--date", "2026-06-21")).isBetween(1, 2);
        for (List<String> reading :
                List.of(List.of("turf"), List.of("explain", "--hole", "5"), List.of("log", "list"))) {
            assertThat(opensOf(reading.toArray(String[]::new)))
                    .as(reading.toString())
                    .isEqualTo(1);
        }
    }
}
