package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.wiring.RealProcess.Result;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Seen from the system: before the real program says that something is done, what it wrote is synced, files that get a
 * new name were synced under the old one, and the folder is synced after that. Only where there is strace; the
 * {@code full} check installs it.
 */
class SyncedIT {
    @TempDir
    Path temporary;

    private Path files;
    private Path data;

    @BeforeEach
    void onlyWithStrace() throws IOException, InterruptedException {
        files = temporary.toRealPath();
        data = files.resolve("data");
        boolean there = Stream.of(System.getenv("PATH").split(":"))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, "strace")));
        Assumptions.assumeTrue(there, "not looked at what is synced: there is no strace here");
        Result tried =
                RealProcess.run(List.of("strace", "-o", files.resolve("tried").toString(), "true"));
        Assumptions.assumeTrue(
                tried.status() == 0, "not looked at what is synced: strace may not trace: " + tried.err());
    }

    /** A run of the program, where its output went, and what it asked of the system. */
    private record Seen(Path out, Syscalls calls) {
        /** Where the first word of its answer stands. */
        int answered() {
            int answered = calls.first(call -> call.writes() && call.path().equals(out.toString()));
            assertThat(answered).as("nothing was answered").isPositive();
            return answered;
        }
    }

    private Seen seen(Object... arguments) throws IOException, InterruptedException {
        Path trace = files.resolve("trace");
        Path out = files.resolve("answer");
        List<String> line = new ArrayList<>(
                List.of("strace", "-f", "-y", "-s", "8", "-e", "trace=" + Syscalls.TRACED, "-o", trace.toString()));
        line.addAll(RealProcess.program(List.of()));
        Stream.of(arguments).map(Object::toString).forEach(line::add);
        line.addAll(List.of("--data", data.toString()));
        Process process = new ProcessBuilder(line)
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        assertThat(process.waitFor()).as(Files.readString(out)).isZero();
        return new Seen(out, Syscalls.of(Files.readAllLines(trace)));
    }

    private static boolean writesJournal(Syscalls.Call call) {
        return call.writes() && call.path().endsWith("/cupwright.db-wal");
    }

    private void made() throws IOException, InterruptedException {
        Path outlines = MadeCourse.outlines(files, 2);
        Result made = RealProcess.typed("import", "--course", "made", "--outlines", outlines, "--data", data);
        assertThat(made.status()).as(made.err()).isZero();
    }

    @Test
    void anEntryIsOnTheDiskWhenThatIsAnswered() throws Exception {
        made();
        Seen entry = seen("log", "add", "note-to-next", "--set", "text=invented");
        assertThat(entry.calls().first(SyncedIT::writesJournal)).isBetween(0, entry.answered());
        assertSure(entry, data);
    }

    @Test
    @Tag("long")
    void aCourseIsOnTheDiskWhenThatIsAnswered() throws Exception {
        Path outlines = MadeCourse.outlines(files, 2);
        Seen made = seen("import", "--course", "made", "--outlines", outlines);
        assertThat(made.calls().renamedTo("/cupwright.db")).isEqualTo(1);
        assertSure(made, data);
    }

    @Test
    @Tag("long")
    void aBackupAndWhatIsRestoredFromItAreOnTheDiskWhenThatIsAnswered() throws Exception {
        made();
        Path stick = Files.createDirectory(files.resolve("stick"));
        Path target = stick.resolve("greens.db");
        Seen backup = seen("backup", target);
        assertThat(backup.calls().renamedTo("/stick/greens.db")).isEqualTo(1);
        assertSure(backup, stick);
        assertSure(backup, data);

        Seen restored = seen("restore", target);
        assertThat(restored.calls().renamedTo(".restoring")).isEqualTo(1);
        assertThat(restored.calls().calls().stream()
                        .filter(call -> call.renames() && call.paths().get(1).contains("/cupwright-before-restore-")))
                .hasSize(1);
        assertThat(restored.calls().first(SyncedIT::writesJournal)).isBetween(0, restored.answered());
        assertSure(restored, data);
    }

    private static void assertSure(Seen seen, Path folder) {
        int answered = seen.answered();
        assertThat(seen.calls().unsure(folder.toString(), answered)).isEmpty();
        long synced = seen.calls().calls().subList(0, answered).stream()
                .filter(Syscalls.Call::syncs)
                .count();
        assertThat(synced).isPositive();
    }
}
