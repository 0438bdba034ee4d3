package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.storage.DataFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A defect of ours gives status 3, says where the details are, and shows nobody a stack trace. */
class DefectTest {
    @TempDir
    Path data;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(Function<Path, DataFolder> folders, String... arguments) {
        PrintStream results = new PrintStream(out, true, StandardCharsets.UTF_8);
        PrintStream problems = new PrintStream(err, true, StandardCharsets.UTF_8);
        return new Cli(new Surroundings(results, problems, InProcess.CLOCK, data, folders)).run(arguments);
    }

    @Test
    void anUnexpectedExceptionIsWrittenToAFile() throws IOException {
        int status = run(
                folder -> {
                    throw new IllegalStateException("made for this test");
                },
                "policy",
                "--data",
                data.toString());
        assertThat(status).isEqualTo(3);
        Path details = data.resolve("cupwright-defect-2026-06-20T050000Z.txt");
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains(details.toString())
                .doesNotContain("\tat ");
        assertThat(Files.readString(details)).contains("made for this test").contains("\tat ");
    }

    @Test
    void anErrorOfTheMachineIsToldTheSameWayInJson() {
        int status = run(
                folder -> {
                    throw new StackOverflowError("made for this test");
                },
                "policy",
                "--json",
                "--data",
                data.toString());
        assertThat(status).isEqualTo(3);
        assertThat(out.toString(StandardCharsets.UTF_8)).startsWith("{").contains("StackOverflowError");
    }
}
