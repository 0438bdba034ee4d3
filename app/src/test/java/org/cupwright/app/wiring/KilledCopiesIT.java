package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.EveryTable;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.wiring.RealProcess.Result;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real program is killed by the system while it takes a backup or restores one: there is the old or the new as a
 * whole, what it said to be done is done, and the next start leaves nothing lying about. {@code ./check kills} kills
 * two hundred.
 */
@Tag("long")
class KilledCopiesIT {
    /** Bytes that make the copying last some tens of milliseconds. */
    private static final int LARGE = 1 << 20;

    private static final int PHOTOS = 6;

    /** Within so long of the first sign of an unfinished copy a backup is killed, or a restore, which copies thrice. */
    private static final int BACKUP_MILLISECONDS = 80;

    private static final int RESTORE_MILLISECONDS = 240;

    @TempDir
    Path files;

    private Path data;
    private Path backup;
    private Path other;
    private List<String> rows;
    private List<String> otherRows;
    private Random random;

    @BeforeEach
    void twoFoldersAndABackupOfEach() throws SQLException {
        random = new Random(Suite.seed());
        data = files.resolve("data");
        backup = files.resolve("first.db");
        other = files.resolve("other.db");
        make(data, "first", backup);
        make(files.resolve("others"), "other", other);
        rows = EveryTable.rows(backup);
        otherRows = EveryTable.rows(other);
    }

    private void make(Path folder, String name, Path copy) {
        try (SqliteFolder kept = Kept.folder(folder)) {
            Writes.to(kept, stores -> {
                for (int piece = 0; piece < 100; piece++) {
                    FactWriter.facts(name, piece).forEach(stores.facts()::add);
                }
                for (int photo = 0; photo < PHOTOS; photo++) {
                    byte[] bytes = new byte[LARGE];
                    random.nextBytes(bytes);
                    stores.photos().add(Photo.kept(bytes));
                }
            });
            kept.upkeep().backup(copy, false);
        }
    }

    /** Kills the program: half of them a while after its first unfinished copy shows, the others at any moment. */
    private String killed(int kill, int copyMilliseconds, long longestMilliseconds, Path watched, Object... arguments)
            throws IOException, InterruptedException {
        List<String> line = RealProcess.program(List.of());
        Stream.of(arguments).map(Object::toString).forEach(line::add);
        Path out = files.resolve("out");
        Process process = new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        if (kill % 2 == 0) {
            while (process.isAlive() && !unfinished(watched)) {
                Thread.sleep(1);
            }
            Thread.sleep(kill == 0 ? 0 : random.nextInt(copyMilliseconds));
        } else {
            Thread.sleep(random.nextLong(1 + longestMilliseconds));
        }
        process.toHandle().destroyForcibly();
        process.waitFor();
        return Files.readString(out, StandardCharsets.UTF_8);
    }

    private static boolean unfinished(Path folder) {
        return Kept.files(folder).stream().anyMatch(KilledCopiesIT::isUnfinished);
    }

    private static boolean isUnfinished(String name) {
        return name.contains(".part") || name.contains(".restoring");
    }

    private static long milliseconds(Object... arguments) throws IOException, InterruptedException {
        long began = System.nanoTime();
        done(arguments);
        return (System.nanoTime() - began) / 1_000_000;
    }

    private static Result done(Object... arguments) throws IOException, InterruptedException {
        Result result = RealProcess.cupwright(arguments);
        assertThat(result.status()).as(result.out() + result.err()).isZero();
        return result;
    }

    @Test
    void aKilledBackupIsWholeOrNotThere() throws Exception {
        int kills = KillsIT.count("killed backups", 10, 20, 4);
        Path folder = Files.createDirectory(files.resolve("stick"));
        Path target = folder.resolve("greens.db");
        long longest = milliseconds("backup", target, "--data", data);
        int[] found = new int[3];
        for (int kill = 0; kill < kills; kill++) {
            String told = "backup " + kill + " of seed " + Suite.seed();
            Files.deleteIfExists(target);
            boolean replacing = kill % 4 >= 2;
            if (replacing) {
                Files.copy(other, target);
            }
            String said =
                    killed(kill, BACKUP_MILLISECONDS, longest, folder, "backup", target, "--replace", "--data", data);
            found[unfinished(folder) ? 0 : said.isEmpty() ? 1 : 2]++;
            List<String> there = Files.exists(target) ? EveryTable.rows(target) : List.of();
            assertThat(there).as(told).isIn(rows, replacing ? otherRows : List.of());
            if (!said.isEmpty()) {
                assertThat(there).as(told + said).isEqualTo(rows);
            }
            Kept.assertSound(data, told);
            done("backup", target, "--replace", "--data", data);
            assertThat(Kept.files(folder)).as(told).containsExactly("greens.db");
            assertThat(EveryTable.rows(target)).as(told).isEqualTo(rows);
            assertThat(Kept.files(data)).as(told).containsExactlyInAnyOrder("cupwright.db", "cupwright.lock");
        }
        System.out.println("killed backups: " + found[0] + " of " + kills + " left an unfinished copy, " + found[2]
                + " had said that they were done");
        assertThat(found[0]).isPositive();
    }

    @Test
    void aKilledRestoreIsDoneAsAWholeOrNotAtAll() throws Exception {
        int kills = KillsIT.count("killed restores", 10, 20, 4);
        long longest = milliseconds("restore", other, "--data", files.resolve("measured"));
        int[] found = new int[3];
        for (int kill = 0; kill < kills; kill++) {
            String told = "restore " + kill + " of seed " + Suite.seed();
            Path folder = Files.createDirectory(files.resolve("into" + kill));
            Path file = folder.resolve("cupwright.db");
            Files.copy(data.resolve("cupwright.db"), file);
            String said = killed(kill, RESTORE_MILLISECONDS, longest, folder, "restore", other, "--data", folder);
            found[unfinished(folder) ? 0 : said.isEmpty() ? 1 : 2]++;
            Kept.assertSound(folder, told);
            List<String> there = EveryTable.rows(file);
            assertThat(there).as(told).isIn(rows, otherRows);
            if (!said.isEmpty()) {
                assertThat(there).as(told + said).isEqualTo(otherRows);
            }
            assertBefore(folder, there, told);
            Writes.to(Kept.folder(folder), stores -> {}); // the next that writes
            Set<String> left = Kept.files(folder);
            left.removeIf(name -> name.startsWith("cupwright-before-restore-") && name.endsWith(".db"));
            assertThat(left).as(told).containsExactlyInAnyOrder("cupwright.db", "cupwright.lock");
        }
        System.out.println("killed restores: " + found[0] + " of " + kills + " left an unfinished copy, " + found[2]
                + " had said that they were done");
        assertThat(found[0]).isPositive();
    }

    /** What was there before lies beside what is there now, whole wherever there is one. */
    private void assertBefore(Path folder, List<String> there, String told) throws SQLException {
        List<String> copies = Kept.files(folder).stream()
                .filter(name -> name.startsWith("cupwright-before-restore-") && name.endsWith(".db"))
                .toList();
        for (String copy : copies) {
            assertThat(EveryTable.rows(folder.resolve(copy))).as(told + copy).isEqualTo(rows);
        }
        assertThat(copies.isEmpty() && there.equals(otherRows)).as(told).isFalse();
    }
}
