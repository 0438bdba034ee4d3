package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Tells a process to stop as a terminal does. */
final class CtrlC {
    private static final int INTERRUPT = 2;
    private static final String IGNORED = "SigIgn:";

    private CtrlC() {}

    static void press(Process process) throws IOException, InterruptedException {
        assertThat(isIgnored(process))
                .as("what these tests were started by, as a job in the background, has all that it starts ignore"
                        + " Ctrl-C: start them in the foreground")
                .isFalse();
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
    }

    /** Java leaves it ignored where it was when it began. Where nothing is told, as of what has ended, it is not. */
    private static boolean isIgnored(Process process) {
        try (Stream<String> status = Files.lines(Path.of("/proc", Long.toString(process.pid()), "status"))) {
            return status.filter(line -> line.startsWith(IGNORED))
                    .map(line -> Long.parseUnsignedLong(
                            line.substring(IGNORED.length()).strip(), 16))
                    .anyMatch(ignored -> (ignored >> (INTERRUPT - 1) & 1) == 1);
        } catch (IOException | UncheckedIOException gone) {
            return false;
        }
    }
}
