package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Processes that write are killed by the system, each a process of its own: what was said to be kept is kept, the rest
 * is there as a whole or not at all, and the next that writes leaves nothing lying about. {@code ./check kills} kills a
 * thousand.
 */
class KillsIT {
    private static final int FOR_EVER = Integer.MAX_VALUE;
    private static final Set<String> OURS =
            Set.of("cupwright.db", "cupwright.db-wal", "cupwright.db-shm", "cupwright.lock");

    /** So many are killed on one folder; then another one is made, whose making is cut off too. */
    private static final int KILLS_EACH = 50;

    @TempDir
    Path files;

    /** How many processes are killed: as many as are wished for, or a suite's own number. */
    static int count(String suite, int wishedShare, int full, int reduced) {
        int wished = Integer.getInteger("cupwright.kills", 0) / wishedShare;
        if (wished > 0) {
            System.out.println("suite " + suite + ": " + wished + ", seed " + Suite.seed());
            return wished;
        }
        return Suite.count(suite, full, reduced);
    }

    /**
     * Each of them is killed without warning 5 to 200 ms after one of its writes began; every tenth in its very first.
     */
    @Test
    void killedWritersLoseNothingThatWasAcknowledged() throws IOException, InterruptedException {
        int kills = count("killed writers", 1, 100, 6);
        Random random = new Random(Suite.seed());
        Set<UUID> acknowledged = new HashSet<>();
        int facts = 0;
        for (int kill = 0; kill < kills; kill++) {
            if (kill % KILLS_EACH == 0) {
                acknowledged.clear();
            }
            Path data = files.resolve("data" + kill / KILLS_EACH);
            String name = "writer " + kill;
            int in = kill % 10 == 0 ? 0 : 1 + random.nextInt(30);
            int pieces = killed(data, name, in, 5 + random.nextInt(196));
            facts += pieces * FactWriter.TOGETHER;
            for (int piece = 0; piece < pieces; piece++) {
                FactWriter.facts(name, piece).forEach(fact -> acknowledged.add(fact.id()));
            }
            assertKept(data, "kill " + kill + " of seed " + Suite.seed(), name, pieces, acknowledged);
        }
        System.out.println("killed writers: " + kills + " kills, " + facts + " facts acknowledged, none lost");
        assertThat(facts).isGreaterThan(10 * kills);
    }

    private static void assertKept(Path data, String told, String name, int pieces, Set<UUID> acknowledged) {
        Kept.assertSound(data, told);
        try (SqliteFolder folder = Kept.folder(data)) {
            Set<UUID> there = Kept.ids(folder);
            assertThat(there).as(told).containsAll(acknowledged);
            assertWholePieces(there, name, pieces, told);
            String next = "after " + name;
            Writes.to(folder, stores -> FactWriter.facts(next, 0).forEach(stores.facts()::add));
            FactWriter.facts(next, 0).forEach(fact -> acknowledged.add(fact.id()));
        }
        assertThat(Kept.files(data)).as(told).isSubsetOf(OURS);
    }

    /** Answers how many pieces of work were acknowledged before the process was gone. */
    private static int killed(Path data, String name, int inPiece, int afterMilliseconds)
            throws IOException, InterruptedException {
        Process process = FactWriter.start(data, name, FOR_EVER);
        int kept = 0;
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
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
}
