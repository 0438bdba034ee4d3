package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.wiring.server.Caller;
import org.cupwright.app.wiring.server.OpenOffice;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The office is killed by the system while several people write by its pages: what a page said to be kept is kept, and
 * the next office goes on from there. {@code ./check kills} kills a hundred.
 */
class KilledOfficeIT {
    private static final String NAME = "Invented Person";
    private static final String PASSWORD = "an invented password";
    private static final int WRITERS = 3;
    private static final Set<String> OURS = Set.of("cupwright.db", "cupwright.db-wal", "cupwright.db-shm");
    private static final Set<String> BESIDE = Set.of("cupwright.lock", "cache", "log");

    @TempDir
    Path files;

    private Path data;

    @BeforeEach
    void aCourseAndSomebodyWhoMayWrite() throws IOException, InterruptedException {
        data = files.resolve("data");
        Path outlines = MadeCourse.outlines(files, 2);
        InProcess.Result made =
                new InProcess(data).run("import", "--course", FactWriter.COURSE, "--outlines", outlines);
        assertThat(made.status()).as(made.err()).isZero();
        try (OpenOffice office = new OpenOffice(data, Clock.systemUTC(), false)) {
            assertThat(new Caller(office::at).join(office.code(), NAME, PASSWORD))
                    .isEqualTo("/sign-in?joined");
        }
    }

    @Test
    void whatAPageSaidToBeKeptIsKept() throws IOException, InterruptedException {
        int kills = KillsIT.count("killed offices", 10, 10, 1);
        Random random = new Random(Suite.seed());
        Set<UUID> sent = ConcurrentHashMap.newKeySet();
        Set<UUID> acknowledged = ConcurrentHashMap.newKeySet();
        int before = 0;
        for (int kill = 0; kill < kills; kill++) {
            killed(500 + random.nextInt(1500), sent, acknowledged);
            String told = "kill " + kill + " of seed " + Suite.seed();
            assertThat(acknowledged.size())
                    .as(told + ": entries were being written")
                    .isGreaterThan(before);
            before = acknowledged.size();
            Kept.assertSound(data, told);
            try (SqliteFolder folder = Kept.folder(data)) {
                List<UUID> all =
                        Kept.facts(folder).stream().map(fact -> fact.id()).toList();
                assertThat(all).as(told).doesNotHaveDuplicates().containsAll(acknowledged);
                assertThat(sent).as(told).containsAll(all);
            }
            Set<String> there = new HashSet<>(Kept.files(data));
            there.removeAll(BESIDE);
            assertThat(there).as(told).isSubsetOf(OURS);
        }
        System.out.println("killed offices: " + kills + ", " + sent.size() + " entries sent, " + acknowledged.size()
                + " acknowledged, none lost");
    }

    /** Everybody writes until the office is gone, which it is some time after the first entry was kept. */
    private void killed(long milliseconds, Set<UUID> sent, Set<UUID> acknowledged)
            throws IOException, InterruptedException {
        try (ServedOffice office = ServedOffice.open(data)) {
            Caller caller = new Caller(office::at);
            assertThat(caller.signIn(NAME, PASSWORD)).isEqualTo("/");
            EntriesByPage page = new EntriesByPage(caller);
            List<Thread> writers = new ArrayList<>();
            for (int writer = 0; writer < WRITERS; writer++) {
                writers.add(new Thread(() -> write(page, sent, acknowledged)));
            }
            writers.forEach(Thread::start);
            Thread.sleep(milliseconds);
            office.kill();
            for (Thread writer : writers) {
                writer.join();
            }
        }
    }

    private static void write(EntriesByPage page, Set<UUID> sent, Set<UUID> acknowledged) {
        try {
            while (true) {
                UUID form = UUID.randomUUID();
                sent.add(form);
                if (EntriesByPage.isKept(page.speedRead(form))) {
                    acknowledged.add(form);
                }
            }
        } catch (UncheckedIOException gone) {
            return; // nobody answers any more
        }
    }
}
