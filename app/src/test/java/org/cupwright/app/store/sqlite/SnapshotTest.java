package org.cupwright.app.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.app.storage.Writes;
import org.cupwright.policy.PolicyChange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What one reading sees while others write, and what is known of what changed since. */
class SnapshotTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 20);
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T12:00:00Z"), ZoneOffset.UTC);
    private static final PolicyChange CHANGE = new PolicyChange(DAY, "desk.units", "imperial");

    @TempDir
    private Path path;

    @TempDir
    Path elsewhere;

    private SqliteFolder folder() {
        return new SqliteFolder(path, CLOCK);
    }

    private static int changes(SqliteFolder folder) {
        return folder.read(stores -> stores.policies().history("made").changes().size());
    }

    /** Else a crash of the machine could leave a name with nothing, or half a copy, behind it. */
    @Test
    void aCopyIsOnTheDiskBeforeItHasItsName() throws Exception {
        Path source = path.resolve("data");
        try (SqliteFolder made = new SqliteFolder(source, CLOCK)) {
            Writes.to(made, stores -> stores.policies().add("made", CHANGE));
        }
        WatchedFiles watched = new WatchedFiles();
        Path copy = path.resolve("copy.db");
        Snapshot.write(Database.in(source), watched.path(copy));

        String part = ".copy.db." + ProcessHandle.current().pid() + ".part";
        assertThat(copy).exists();
        assertThat(watched.seen())
                .startsWith("last " + part, "name " + part + " copy.db")
                .endsWith("last " + path.getFileName());
    }

    @Test
    void whatIsWrittenMeanwhileIsNotSeenWithinOneReading() {
        try (SqliteFolder one = folder();
                SqliteFolder other = folder()) {
            Writes.to(one, stores -> stores.policies().add("made", CHANGE));
            List<Integer> seen = one.read(stores -> {
                int before = stores.policies().history("made").changes().size();
                Writes.to(other, there -> there.policies().add("made", CHANGE));
                return List.of(
                        before, stores.policies().history("made").changes().size());
            });
            assertThat(seen).containsExactly(1, 1);
            assertThat(changes(one)).isEqualTo(2);
        }
    }

    @Test
    void aReadingWithinAReadingIsOfTheSameMoment() {
        try (SqliteFolder one = folder();
                SqliteFolder other = folder()) {
            Writes.to(one, stores -> stores.policies().add("made", CHANGE));
            int within = one.read(stores -> {
                stores.policies().history("made");
                Writes.to(other, there -> there.policies().add("made", CHANGE));
                return changes(one);
            });
            assertThat(within).isEqualTo(1);
        }
    }

    @Test
    void theDataFileIsOpenedOnceForAllReadings() {
        try (SqliteFolder folder = folder()) {
            Writes.to(folder, stores -> stores.policies().add("made", CHANGE));
            int before = Database.OPENED.get();
            for (int i = 0; i < 5; i++) {
                assertThat(changes(folder)).isEqualTo(1);
            }
            assertThat(Database.OPENED.get()).isEqualTo(before + 1);
        }
    }

    @Test
    void aFileThatTookTheNameOfAnotherIsRead() throws IOException {
        try (SqliteFolder folder = folder()) {
            Writes.to(folder, stores -> stores.policies().add("made", CHANGE));
            Path before = elsewhere.resolve("before.db");
            folder.upkeep().backup(before, false);
            Writes.to(folder, stores -> stores.policies().add("made", CHANGE));
            assertThat(changes(folder)).isEqualTo(2);
            Files.move(before, path.resolve("cupwright.db"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            assertThat(changes(folder)).isEqualTo(1);
        }
    }

    @Test
    void nothingIsLeftBesideTheDataFileOnceTheFolderIsClosed() throws IOException {
        try (SqliteFolder folder = folder()) {
            changes(folder);
            Writes.to(folder, stores -> stores.policies().add("made", CHANGE));
            changes(folder);
            Writes.to(folder, stores -> stores.policies().add("made", CHANGE));
        }
        try (Stream<Path> all = Files.list(path)) {
            assertThat(all.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("cupwright.db", "cupwright.lock");
        }
    }

    @Test
    void whatChangedSinceIsKnownByPart() {
        try (SqliteFolder folder = folder()) {
            Versions before = folder.read(stores -> stores.versions("made", DAY));
            assertThat(before.byPart()).hasSize(Part.values().length);
            Writes.to(folder, stores -> stores.policies().add("made", CHANGE));
            Versions now = folder.read(stores -> stores.versions("made", DAY));
            assertThat(now.changedSince(before)).isEqualTo(Set.of(Part.POLICY));
            assertThat(now.changedSince(now)).isEmpty();
            assertThat(folder.read(stores -> stores.versions("other", DAY)).byPart())
                    .containsEntry(Part.POLICY, 0L);
        }
    }

    @Test
    void theEmptyDatabaseIsMadeByAllMigrations() throws IOException {
        for (int number = 1; number <= EmptyDatabase.MIGRATIONS.size(); number++) {
            assertThat(EmptyDatabase.MIGRATIONS.get(number - 1)).startsWith("V" + number + "__");
        }
        assertThat(EmptyDatabase.MIGRATIONS).hasSize(Database.FORMAT);
        for (String name : EmptyDatabase.MIGRATIONS) {
            try (InputStream script = EmptyDatabase.class.getResourceAsStream("/db/migration/sqlite/" + name)) {
                assertThat(script).as(name).isNotNull();
            }
        }
    }
}
