package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.cupwright.app.store.sqlite.OldFormat;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.cupchange.Fact;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was said to be kept is kept: processes that write at once, or while a backup is taken or restored. */
class KeepingIT {
    private static final int FOR_EVER = Integer.MAX_VALUE;
    private static final long LONGEST_SECONDS = 600;

    @TempDir
    Path files;

    private static BufferedReader output(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    @Test
    void twoWritersAtOnceLoseNothingAndAreNotRefused() throws IOException, InterruptedException {
        int facts = Suite.count("facts of each of two writers at once", 1000, 200);
        int pieces = (facts + FactWriter.TOGETHER - 1) / FactWriter.TOGETHER;
        Path data = files.resolve("data");
        finish(List.of(FactWriter.start(data, "one", pieces), FactWriter.start(data, "other", pieces)));
        Set<UUID> there = Kept.ids(Kept.folder(data));
        assertThat(there).hasSize(2 * pieces * FactWriter.TOGETHER);
        Kept.assertSound(data, "two writers");
    }

    private static void finish(List<Process> writers) throws IOException, InterruptedException {
        List<Thread> readers = new ArrayList<>();
        for (Process writer : writers) {
            Thread reader = new Thread(() -> output(writer).lines().forEach(line -> {}));
            reader.start();
            readers.add(reader);
        }
        for (Process writer : writers) {
            assertThat(writer.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)).isTrue();
            assertThat(writer.exitValue()).isZero();
        }
        for (Thread reader : readers) {
            reader.join();
        }
    }

    @Test
    void twoWritersAtOnceUpgradeAnOlderFolderOnce() throws Exception {
        Path data = files.resolve("data");
        OldFormat.make(data);
        finish(List.of(FactWriter.start(data, "one", 5), FactWriter.start(data, "other", 5)));
        assertThat(Kept.ids(Kept.folder(data))).hasSize(2 * 5 * FactWriter.TOGETHER);
        try (Stream<Path> all = Files.list(data)) {
            assertThat(all.filter(path -> path.getFileName().toString().startsWith("cupwright-backup-format1-")))
                    .hasSize(1);
        }
    }

    /** A backup holds the facts as far as they had come, none left out in between, and goes back as it was. */
    @Test
    void backupsTakenWhileFactsAreWrittenAreWholeAndGoBackEqual() throws IOException, InterruptedException {
        int backups = Suite.count("backups while facts are written", 20, 5);
        Path data = files.resolve("data");
        Process writer = FactWriter.start(data, "busy", FOR_EVER);
        try (BufferedReader said = output(writer)) {
            for (int i = 0; i < backups; i++) {
                int acknowledged = nextKept(said) + 1;
                Path backup = files.resolve("backup-" + i + ".db");
                Kept.folder(data).upkeep().backup(backup, false);
                SqliteFolder other = Kept.folder(files.resolve("other-" + i));
                other.upkeep().restore(backup);
                assertPrefix(Kept.facts(other), acknowledged);
            }
        } finally {
            writer.destroyForcibly();
            writer.waitFor();
        }
        SqliteFolder restored = Kept.folder(data);
        Path last = files.resolve("last.db");
        restored.upkeep().backup(last, false);
        SqliteFolder again = Kept.folder(files.resolve("again"));
        again.upkeep().restore(last);
        assertThat(Kept.facts(again)).isEqualTo(Kept.facts(restored));
    }

    /** Reads on to what the writer says now. */
    private static int nextKept(BufferedReader said) throws IOException {
        String line = said.readLine();
        while (!line.startsWith("kept ") || said.ready()) {
            line = said.readLine();
        }
        return Integer.parseInt(line.substring("kept ".length()));
    }

    private static void assertPrefix(List<Fact> facts, int atLeast) {
        int pieces = facts.size() / FactWriter.TOGETHER;
        assertThat(pieces).isGreaterThanOrEqualTo(atLeast);
        List<Fact> expected = new ArrayList<>();
        for (int piece = 0; piece < pieces; piece++) {
            expected.addAll(FactWriter.facts("busy", piece));
        }
        assertThat(facts)
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("recordedAtServer")
                .isEqualTo(expected.stream().sorted(Fact.ORDER).toList());
    }

    /** A writer at work is kept waiting by a restore, and goes on after it without a fact lost that came later. */
    @Test
    void aRestoreWhileFactsAreWrittenLosesNothingThatCameAfterIt() throws IOException, InterruptedException {
        Path data = files.resolve("data");
        Path backup = files.resolve("backup.db");
        Process writer = FactWriter.start(data, "busy", FOR_EVER);
        Path before;
        int after;
        try (BufferedReader said = output(writer)) {
            nextKept(said);
            Kept.folder(data).upkeep().backup(backup, false);
            nextKept(said);
            before = Kept.folder(data).upkeep().restore(backup).before().orElseThrow();
            nextKept(said);
            after = nextKept(said);
        } finally {
            writer.destroyForcibly();
            writer.waitFor();
        }
        SqliteFolder kept = Kept.folder(files.resolve("before"));
        kept.upkeep().restore(before);
        Set<UUID> all = Kept.ids(Kept.folder(data));
        all.addAll(Kept.ids(kept));
        for (int piece = 0; piece <= after; piece++) {
            assertThat(all).contains(FactWriter.id("busy", piece, 0));
        }
        Kept.assertSound(data, "restored while busy");
    }
}
