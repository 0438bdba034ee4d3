package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.cupwright.app.storage.upkeep.FolderReport;
import org.cupwright.app.store.sqlite.OldFormat;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.cupchange.Fact;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was said to be kept is kept: processes that are killed, write at once, or write while a backup is taken. */
class KeepingIT {
    private static final int FOR_EVER = Integer.MAX_VALUE;
    private static final long LONGEST_SECONDS = 600;

    @TempDir
    Path files;

    private static SqliteFolder folder(Path data) {
        return new SqliteFolder(data, Clock.systemUTC());
    }

    private static List<Fact> facts(SqliteFolder folder) {
        return folder.read(stores -> stores.facts().all(FactWriter.COURSE));
    }

    private static Set<UUID> ids(SqliteFolder folder) {
        Set<UUID> ids = new HashSet<>();
        facts(folder).forEach(fact -> ids.add(fact.id()));
        return ids;
    }

    private static BufferedReader output(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /**
     * Each of them is killed without warning 5 to 200 ms after one of its writes began; every tenth after its very
     * first.
     */
    @Test
    void killedWritersLoseNothingThatWasAcknowledged() throws IOException, InterruptedException {
        int kills = Suite.count("killed writers", 100, 12);
        Random random = new Random(Suite.seed());
        Path data = files.resolve("data");
        Set<UUID> acknowledged = new HashSet<>();
        for (int kill = 0; kill < kills; kill++) {
            String name = "writer " + kill;
            int in = kill % 10 == 0 ? 0 : 1 + random.nextInt(30);
            int pieces = killed(data, name, in, 5 + random.nextInt(196));
            for (int piece = 0; piece < pieces; piece++) {
                FactWriter.facts(name, piece).forEach(fact -> acknowledged.add(fact.id()));
            }
            String told = "kill " + kill + " of seed " + Suite.seed();
            assertSound(data, told);
            Set<UUID> there = ids(folder(data));
            assertThat(there).as(told).containsAll(acknowledged);
            assertWholePieces(there, name, pieces, told);
        }
        System.out.println("killed writers: " + kills + " kills, " + acknowledged.size() + " facts acknowledged");
        assertThat(acknowledged.size()).isGreaterThan(10 * kills);
    }

    /** Answers how many pieces of work were acknowledged before the process was gone. */
    private static int killed(Path data, String name, int inPiece, int afterMilliseconds)
            throws IOException, InterruptedException {
        Process process = FactWriter.start(data, name, FOR_EVER);
        int kept = 0;
        try (BufferedReader said = output(process)) {
            for (String line = said.readLine(); !line.equals("begin " + inPiece); line = said.readLine()) {
                kept += line.startsWith("kept ") ? 1 : 0;
            }
            Thread.sleep(afterMilliseconds);
            process.toHandle().destroyForcibly(); // unlike the process itself, it leaves what was said to be read
            for (String line = said.readLine(); line != null; line = said.readLine()) {
                kept += line.startsWith("kept ") ? 1 : 0;
            }
        }
        assertThat(process.waitFor()).isNotZero();
        return kept;
    }

    private static void assertSound(Path data, String told) {
        if (!Files.exists(data.resolve("cupwright.db"))) {
            return; // killed before there was a file
        }
        FolderReport report = folder(data).upkeep().check();
        assertThat(report.damages()).as(told).isEmpty();
        assertThat(report.synchronous()).isEqualTo(2);
        assertThat(report.journal()).isEqualTo("wal");
    }

    /** Of the piece of work that was under way all facts are there or none. */
    private static void assertWholePieces(Set<UUID> there, String name, int acknowledged, String told) {
        for (int piece = 0; piece <= acknowledged; piece++) {
            int found = 0;
            for (int i = 0; i < FactWriter.TOGETHER; i++) {
                found += there.contains(FactWriter.id(name, piece, i)) ? 1 : 0;
            }
            assertThat(found).as(told + ", piece " + piece).isIn(0, FactWriter.TOGETHER);
        }
    }

    @Test
    void twoWritersAtOnceLoseNothingAndAreNotRefused() throws IOException, InterruptedException {
        int facts = Suite.count("facts of each of two writers at once", 1000, 200);
        int pieces = (facts + FactWriter.TOGETHER - 1) / FactWriter.TOGETHER;
        Path data = files.resolve("data");
        finish(List.of(FactWriter.start(data, "one", pieces), FactWriter.start(data, "other", pieces)));
        Set<UUID> there = ids(folder(data));
        assertThat(there).hasSize(2 * pieces * FactWriter.TOGETHER);
        assertSound(data, "two writers");
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
        assertThat(ids(folder(data))).hasSize(2 * 5 * FactWriter.TOGETHER);
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
                folder(data).upkeep().backup(backup, false);
                SqliteFolder other = folder(files.resolve("other-" + i));
                other.upkeep().restore(backup);
                assertPrefix(facts(other), acknowledged);
            }
        } finally {
            writer.destroyForcibly();
            writer.waitFor();
        }
        SqliteFolder restored = folder(data);
        Path last = files.resolve("last.db");
        restored.upkeep().backup(last, false);
        SqliteFolder again = folder(files.resolve("again"));
        again.upkeep().restore(last);
        assertThat(facts(again)).isEqualTo(facts(restored));
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
            folder(data).upkeep().backup(backup, false);
            nextKept(said);
            before = folder(data).upkeep().restore(backup).before().orElseThrow();
            nextKept(said);
            after = nextKept(said);
        } finally {
            writer.destroyForcibly();
            writer.waitFor();
        }
        SqliteFolder kept = folder(files.resolve("before"));
        kept.upkeep().restore(before);
        Set<UUID> all = ids(folder(data));
        all.addAll(ids(kept));
        for (int piece = 0; piece <= after; piece++) {
            assertThat(all).contains(FactWriter.id("busy", piece, 0));
        }
        assertSound(data, "restored while busy");
    }
}
