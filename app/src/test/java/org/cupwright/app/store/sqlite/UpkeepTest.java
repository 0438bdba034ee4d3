package org.cupwright.app.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.storage.upkeep.FolderReport;
import org.cupwright.app.storage.upkeep.FolderReport.Damage;
import org.cupwright.app.storage.upkeep.FolderUpkeep;
import org.cupwright.app.storage.upkeep.RestoreDone;
import org.cupwright.cupchange.CrewNote;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UpkeepTest {
    /** Where a file says in which format its schema is, 1 to 4: sqlite.org/fileformat2.html, section 1.3; recalled. */
    private static final int SCHEMA_FORMAT = 44;

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);
    private static final int FACTS = 300;

    @TempDir
    Path files;

    private Path data;
    private SqliteFolder folder;
    private FolderUpkeep upkeep;
    private List<Fact> kept;

    @BeforeEach
    void aFolderWithACourseAndFacts() {
        data = files.resolve("data");
        folder = new SqliteFolder(data, CLOCK);
        upkeep = folder.upkeep();
        kept = MadeFacts.sequence(new Random(7), FACTS);
        Writes.to(folder, stores -> {
            stores.courses().add(new DemoCourse(1).course());
            kept.forEach(stores.facts()::add);
        });
    }

    private List<Fact> facts(SqliteFolder from) {
        String course = kept.get(0).course();
        return from.read(stores -> stores.facts().all(course));
    }

    private static String key(Throwable thrown) {
        return ((Problem) thrown).what().key();
    }

    private void refused(String kind, org.assertj.core.api.ThrowableAssert.ThrowingCallable work) {
        assertThatThrownBy(work).satisfies(thrown -> assertThat(key(thrown)).isEqualTo(kind));
    }

    /** Without its indexes everything is still found, only ever more slowly: nothing else would tell. */
    @Test
    void whatIsRestoredIsBuiltLikeAFreshFolder() throws SQLException {
        Path backup = files.resolve("backup.db");
        upkeep.backup(backup, false);
        Path other = files.resolve("other");
        SqliteFolder there = new SqliteFolder(other, CLOCK);
        Writes.to(there, stores -> stores.courses().add(new DemoCourse(1).course()));
        List<String> fresh = built(other);
        assertThat(fresh).filteredOn(made -> made.startsWith("index ")).hasSizeGreaterThan(5);
        there.upkeep().restore(backup);
        assertThat(built(other)).as("over a sound folder").isEqualTo(fresh);
        Path empty = files.resolve("empty");
        new SqliteFolder(empty, CLOCK).upkeep().restore(backup);
        assertThat(built(empty)).as("into no folder").isEqualTo(fresh);
        assertThat(built(data)).isEqualTo(fresh);
    }

    /** Tables and indexes of a folder's data file, with what made them. */
    private static List<String> built(Path folder) throws SQLException {
        List<String> built = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("cupwright.db"));
                Statement statement = connection.createStatement();
                ResultSet all = statement.executeQuery(
                        "SELECT type || ' ' || name || ': ' || sql FROM sqlite_schema WHERE sql IS NOT NULL"
                                + " AND name NOT LIKE 'sqlite_%' ORDER BY type, name")) {
            while (all.next()) {
                built.add(all.getString(1));
            }
        }
        return built;
    }

    @Test
    void aPhotoThatIsNotWhatItWasAndOnesThatAreMissingAreTold() throws SQLException {
        long without = upkeep.check().holds().photosMissing();
        long named = kept.stream()
                .filter(fact -> fact.payload() instanceof CrewNote.SomethingOdd odd
                        && odd.photo().isPresent())
                .count();
        assertThat(without).as("facts that came without their photos").isEqualTo(named);
        Photo photo = Photo.kept(new byte[] {1, 2, 3});
        Writes.to(folder, stores -> {
            stores.photos().add(photo);
            stores.photos().add(photo);
        });
        assertThat(upkeep.check().sound()).isTrue();
        assertThat(upkeep.check().holds().photos()).isEqualTo(1);
        assertThat(folder.<byte[]>read(stores ->
                        stores.photos().find(photo.hash()).orElseThrow().bytes()))
                .isEqualTo(new byte[] {1, 2, 3});
        change(data.resolve("cupwright.db"), "UPDATE photo SET content = x'0102'");
        assertThat(upkeep.check().damages()).hasSize(1);
    }

    @Test
    void aBackupHoldsEverythingAndGoesIntoAnEmptyFolder() {
        Path backup = files.resolve("b.db");
        assertThat(upkeep.backup(backup, false).holds().facts()).isEqualTo(FACTS);
        SqliteFolder other = new SqliteFolder(files.resolve("other/machine"), CLOCK);
        RestoreDone done = other.upkeep().restore(backup);
        assertThat(done.before()).isEmpty();
        assertThat(done.holds().courses()).isEqualTo(1);
        assertThat(facts(other)).isEqualTo(facts(folder)).hasSize(FACTS);
        assertThat(other.upkeep().check().sound()).isTrue();
    }

    @Test
    void restoringKeepsWhatWasThere() {
        Path backup = files.resolve("b.db");
        upkeep.backup(backup, false);
        List<Fact> then = facts(folder);
        Writes.to(folder, stores -> stores.facts().add(MadeFacts.recorded(new Random(99), CLOCK.instant())));
        RestoreDone done = upkeep.restore(backup);
        assertThat(facts(folder)).isEqualTo(then);
        SqliteFolder before = new SqliteFolder(files.resolve("before"), CLOCK);
        before.upkeep().restore(done.before().orElseThrow());
        assertThat(facts(before)).hasSize(FACTS + 1);
        Writes.to(folder, stores -> stores.facts().add(MadeFacts.recorded(new Random(100), CLOCK.instant())));
        assertThat(upkeep.check().holds().facts()).isEqualTo(FACTS + 1);
    }

    @Test
    void aDamagedFileIsReplacedAndItsBytesAreKept() throws IOException {
        Path backup = files.resolve("b.db");
        upkeep.backup(backup, false);
        Path file = data.resolve("cupwright.db");
        scratch(file);
        byte[] damaged = Files.readAllBytes(file);
        assertThat(upkeep.check().sound()).isFalse();
        RestoreDone done = upkeep.restore(backup);
        assertThat(done.before().orElseThrow()).hasBinaryContent(damaged);
        assertThat(facts(folder)).hasSize(FACTS);
        assertThat(upkeep.check().sound()).isTrue();
    }

    @Test
    void aFileThatIsNoDatabaseAnyMoreIsReplaced() throws IOException {
        Path backup = files.resolve("b.db");
        upkeep.backup(backup, false);
        Files.write(data.resolve("cupwright.db"), new byte[9000]);
        RestoreDone done = upkeep.restore(backup);
        assertThat(done.before().orElseThrow()).hasBinaryContent(new byte[9000]);
        assertThat(facts(folder)).hasSize(FACTS);
    }

    private static void scratch(Path file) throws IOException {
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
            for (long page = 4; page < bytes.length() / 4096; page += 2) {
                bytes.seek(page * 4096);
                bytes.write(new byte[200]);
            }
        }
    }

    @Test
    void backupsAreNotWrittenOverByAccident() throws IOException {
        Path backup = files.resolve("b.db");
        upkeep.backup(backup, false);
        refused("problem.upkeep.targetExists", () -> upkeep.backup(backup, false));
        assertThat(upkeep.backup(backup, true).holds().facts()).isEqualTo(FACTS);
        refused("problem.upkeep.targetIsData", () -> upkeep.backup(data.resolve("cupwright.db"), true));
        refused("problem.upkeep.targetIsFolder", () -> upkeep.backup(files, true));
        refused("problem.upkeep.targetFolderMissing", () -> upkeep.backup(files.resolve("no/b.db"), false));
        refused(
                "problem.upkeep.nothingToBackUp",
                () -> new SqliteFolder(files.resolve("none"), CLOCK).upkeep().backup(files.resolve("c.db"), false));
        try (var left = Files.list(files)) {
            assertThat(left.map(path -> path.getFileName().toString())).containsExactlyInAnyOrder("data", "b.db");
        }
    }

    @Test
    void whatIsNoSoundBackupIsRefusedAndChangesNothing() throws IOException, SQLException {
        Path backup = files.resolve("b.db");
        upkeep.backup(backup, false);
        scratch(backup);
        refused("problem.upkeep.backupDamaged", () -> upkeep.restore(backup));
        Path text = Files.writeString(files.resolve("t.db"), "no database at all ".repeat(500));
        refused("problem.upkeep.backupDamaged", () -> upkeep.restore(text));
        Path whole = files.resolve("whole.db");
        upkeep.backup(whole, false);
        byte[] bytes = Files.readAllBytes(whole);
        bytes[SCHEMA_FORMAT + 3] = 0x13;
        Path format = Files.write(files.resolve("format.db"), bytes);
        refused("problem.upkeep.backupDamaged", () -> upkeep.restore(format));
        Path theirs = files.resolve("theirs.db");
        change(theirs, "CREATE TABLE theirs (a)");
        refused("problem.upkeep.notABackup", () -> upkeep.restore(theirs));
        Path newer = files.resolve("newer.db");
        upkeep.backup(newer, false);
        change(newer, "PRAGMA user_version = 99");
        refused("problem.upkeep.backupDamaged", () -> upkeep.restore(newer)); // its migrations say otherwise
        change(newer, EveryTable.NEWER_MIGRATION);
        refused("problem.store.newer", () -> upkeep.restore(newer));
        refused("problem.upkeep.noSuchBackup", () -> upkeep.restore(files.resolve("none.db")));
        refused("problem.upkeep.noSuchBackup", () -> upkeep.restore(files));
        refused("problem.upkeep.sourceIsData", () -> upkeep.restore(data.resolve("cupwright.db")));
        assertThat(facts(folder)).hasSize(FACTS);
        folder.close();
        try (var left = Files.list(data)) {
            assertThat(left.map(path -> path.getFileName().toString()))
                    .containsExactlyInAnyOrder("cupwright.db", "cupwright.lock");
        }
        SqliteFolder none = new SqliteFolder(files.resolve("none"), CLOCK);
        refused("problem.upkeep.notABackup", () -> none.upkeep().restore(theirs));
        assertThat(files.resolve("none")).doesNotExist();
    }

    private static void change(Path file, String statementText) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute(statementText);
        }
    }

    @Test
    void aSoundFolderIsSaidToBeSound() {
        FolderReport report = upkeep.check();
        assertThat(report.damages()).isEmpty();
        assertThat(report.format()).isEqualTo(Database.FORMAT);
        assertThat(report.journal()).isEqualTo("wal");
        assertThat(report.synchronous()).isEqualTo(2);
        assertThat(report.holds().facts()).isEqualTo(FACTS);
    }

    @Test
    void aRestoredFolderHasEveryTableAndIndexAndALostOneIsNamed() throws SQLException {
        Path backup = files.resolve("b.db");
        upkeep.backup(backup, false);
        upkeep.restore(backup);
        assertThat(upkeep.check().damages()).isEmpty();
        Path file = data.resolve("cupwright.db");
        String lost = "survey_version_hole";
        change(file, "DROP INDEX " + lost);
        change(file, "DROP TABLE drawn_version");
        List<String> named = upkeep.check().damages().stream()
                .map(damage -> damage.what().toString())
                .toList();
        assertThat(named).anyMatch(what -> what.contains("check.schema") && what.contains("index " + lost));
        assertThat(named).anyMatch(what -> what.contains("check.schema") && what.contains("table drawn_version"));
        upkeep.restore(backup);
        assertThat(upkeep.check().damages()).isEmpty();
    }

    @Test
    void entriesThatCannotBeReadAreNamed() throws SQLException {
        Path file = data.resolve("cupwright.db");
        change(file, "UPDATE fact SET document = json_set(document, '$.payload.kind', 'nonsense') WHERE received = 5");
        change(file, "UPDATE fact SET hole = '99' WHERE received = 6");
        change(file, "UPDATE course_version SET document = '{}'");
        change(
                file,
                "INSERT INTO survey_version (course, hole, recorded_at, epsg, unit, source, point_count, points)"
                        + " VALUES ('c', '1', '', 1, 'm', '', 3, x'00')");
        List<Damage> damages = upkeep.check().damages();
        assertThat(damages)
                .extracting(damage -> damage.where().arguments().toString())
                .hasSize(4)
                .anyMatch(where -> where.contains("fact") && where.contains("5"))
                .anyMatch(where -> where.contains("fact") && where.contains("6"))
                .anyMatch(where -> where.contains("course_version"))
                .anyMatch(where -> where.contains("survey_version"));
    }

    @Test
    void checkingChangesNothing() throws IOException {
        Path file = data.resolve("cupwright.db");
        byte[] before = Files.readAllBytes(file);
        upkeep.check();
        scratch(file);
        byte[] damaged = Files.readAllBytes(file);
        assertThat(damaged).isNotEqualTo(before);
        assertThat(upkeep.check().sound()).isFalse();
        assertThat(file).hasBinaryContent(damaged);
    }

    @Test
    void anEmptyFolderHasNothingToDamage() {
        Path none = files.resolve("none");
        FolderReport report = new SqliteFolder(none, CLOCK).upkeep().check();
        assertThat(report.exists()).isFalse();
        assertThat(report.sound()).isTrue();
        assertThat(none).doesNotExist();
    }
}
