package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.wiring.RealProcess.Result;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that fills up under the logbook, as a small file system in memory; root is needed to mount it. */
class FullDiskIT {
    private static final int PAGE = 4096;
    private static final int MOST_FREE_PAGES = 160;
    private static final int STEP = 4;

    @TempDir
    Path files;

    @BeforeEach
    void onlyAsRoot() {
        Mounted.onlyAsRoot();
    }

    private static void fill(Path filler, long leftFree) throws IOException {
        long free = Files.getFileStore(filler.getParent()).getUsableSpace();
        Files.write(filler, new byte[(int) Math.max(0, free - leftFree)]);
    }

    private static Set<Fact> facts(SqliteFolder folder) {
        return new HashSet<>(folder.<List<Fact>>read(stores -> stores.facts().all(FactWriter.COURSE)));
    }

    /**
     * Whatever room is left, an entry is refused and not there, or kept and there. Among the cases are ones where the
     * entry fits and only the closing of the journal does not.
     */
    @Test
    void withAnyRoomLeftAnEntryIsKeptOrRefusedNeverLost() throws IOException, InterruptedException {
        Mounted.on(files, "size=8m", mount -> {
            try (SqliteFolder folder = new SqliteFolder(mount.resolve("data"), Clock.systemUTC())) {
                Writes.to(folder, stores -> FactWriter.facts("first", 0).forEach(stores.facts()::add));
                Set<Fact> kept = new HashSet<>(facts(folder));
                int refused = 0;
                int closed = 0;
                int journalsLeft = 0;
                for (int pages = 0; pages <= MOST_FREE_PAGES; pages += STEP) {
                    Path filler = mount.resolve("filler");
                    fill(filler, (long) pages * PAGE);
                    List<Fact> wanted = wanted(pages);
                    boolean told = written(folder, wanted);
                    Path journal = mount.resolve("data/cupwright.db-wal");
                    boolean left = Files.exists(journal) && Files.size(journal) > 0;
                    journalsLeft += told && left ? 1 : 0;
                    closed += told && !left ? 1 : 0;
                    refused += told ? 0 : 1;
                    Files.delete(filler);
                    Set<Fact> there = facts(folder);
                    assertThat(there).as(pages + " pages free").containsAll(kept);
                    assertThat(there.size() - kept.size())
                            .as(pages + " pages free")
                            .isEqualTo(told ? wanted.size() : 0);
                    kept = there;
                }
                System.out.println("full disk: " + refused + " refused, " + journalsLeft
                        + " kept with the journal left beside the file, " + closed + " kept and closed");
                assertThat(refused).isPositive();
                assertThat(journalsLeft).as("cases where only closing failed").isPositive();
                assertThat(closed).isPositive();
                assertThat(folder.upkeep().check().sound()).isTrue();
                Writes.to(folder, stores -> FactWriter.facts("last", 0).forEach(stores.facts()::add));
                assertThat(facts(folder)).hasSize(kept.size() + FactWriter.TOGETHER);
            }
        });
    }

    /** Some 40 kB, so that the file has to grow. */
    private static List<Fact> wanted(int pages) {
        List<Fact> wanted = new ArrayList<>();
        for (int piece = 0; piece < 30; piece++) {
            wanted.addAll(FactWriter.facts("with " + pages + " pages free", piece));
        }
        return wanted;
    }

    private static boolean written(SqliteFolder folder, List<Fact> wanted) {
        try {
            Writes.to(folder, stores -> wanted.forEach(stores.facts()::add));
            return true;
        } catch (Problem problem) {
            assertThat(problem.what().key()).isEqualTo("problem.store.full");
            return false;
        }
    }

    @Test
    void theProgramSaysThatTheDiskIsFullAndGoesOnWhenThereIsRoom() throws IOException, InterruptedException {
        Path outlines = MadeCourse.outlines(files, 2);
        Mounted.on(files, "size=2m", mount -> {
            Path data = mount.resolve("data");
            Result imported = RealProcess.typed("import", "--course", "made", "--outlines", outlines, "--data", data);
            assertThat(imported.status()).as(imported.err()).isZero();
            Path filler = mount.resolve("filler");
            fill(filler, 0);
            Result refused = add(data, "9");
            assertThat(refused.status()).as(refused.out() + refused.err()).isEqualTo(1);
            assertThat(refused.out()).isEmpty();
            assertThat(refused.err()).contains("disk is full").contains("try:");
            Result backup = RealProcess.typed("backup", mount.resolve("b.db"), "--data", data);
            assertThat(backup.status()).as(backup.err()).isEqualTo(1);
            assertThat(backup.err()).contains("full");
            assertThat(mount.resolve("b.db")).doesNotExist();
            Files.delete(filler);
            assertThat(add(data, "10.5").status()).isZero();
            Result list = RealProcess.typed("log", "list", "--data", data);
            assertThat(list.out()).contains("10.5 ft").doesNotContain("9 ft");
            Result check = RealProcess.typed("check", "--data", data);
            assertThat(check.status()).as(check.out() + check.err()).isZero();
        });
    }

    private static Result add(Path data, String feet) throws IOException, InterruptedException {
        return RealProcess.typed(
                "log", "add", "speed-read", "--set", "feet=" + feet, "--person", "invented", "--data", data);
    }

    @Test
    void aFolderThatCannotBeWrittenTakesNoEntryAndIsReadAllTheSame() throws IOException, InterruptedException {
        Path outlines = MadeCourse.outlines(files, 2);
        Mounted.on(files, "size=4m", mount -> {
            Path data = mount.resolve("data");
            RealProcess.typed("import", "--course", "made", "--outlines", outlines, "--data", data);
            assertThat(add(data, "10.5").status()).isZero();
            Mounted.again(mount, "ro");
            String before = RealProcess.hash(mount);
            Result refused = add(data, "9");
            assertThat(refused.status()).as(refused.err()).isEqualTo(1);
            assertThat(refused.err()).contains("Nothing can be written").contains("--data");
            Result list = RealProcess.typed("log", "list", "--data", data);
            assertThat(list.out()).as(list.err()).contains("10.5 ft");
            Result backup = RealProcess.typed("backup", files.resolve("from-read-only.db"), "--data", data);
            assertThat(backup.status()).as(backup.err()).isZero();
            assertThat(RealProcess.hash(mount)).isEqualTo(before);
            Mounted.again(mount, "rw");
            assertThat(add(data, "9").status()).isZero();
        });
    }
}
