package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.wiring.RealProcess.Result;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is typed on data folders and backups in which something is damaged, or that are not what they seem. */
class DamageIT {
    private static final String DAY = "2026-06-20";

    @TempDir
    static Path made;

    @TempDir
    Path files;

    private Path data;

    @BeforeAll
    static void aCourseWithEntriesAndAPlan() throws IOException, InterruptedException {
        done("import", "--course", "made", "--outlines", MadeCourse.outlines(made, 2), "--data", made.resolve("data"));
        for (String text : List.of("first", "second", "third")) {
            done(
                    "log",
                    "add",
                    "note-to-next",
                    "--set",
                    "text=" + text,
                    "--yes",
                    "--date",
                    DAY,
                    "--data",
                    made.resolve("data"));
        }
        done("plan", "--date", DAY, "--data", made.resolve("data"));
        done("backup", made.resolve("backup.db"), "--data", made.resolve("data"));
    }

    @BeforeEach
    void aCopyOfIt() throws IOException {
        data = Files.createDirectory(files.resolve("data"));
        Files.copy(made.resolve("data/cupwright.db"), data.resolve("cupwright.db"));
    }

    private static Result done(Object... arguments) throws IOException, InterruptedException {
        Result result = RealProcess.typed(arguments);
        assertThat(result.status()).as(result.out() + result.err()).isZero();
        return result;
    }

    private Result run(Object... arguments) throws IOException, InterruptedException {
        List<Object> line = new ArrayList<>(List.of(arguments));
        line.addAll(List.of("--date", DAY, "--data", data));
        return RealProcess.typed(line.toArray());
    }

    private Result refused(Object... arguments) throws IOException, InterruptedException {
        Result result = run(arguments);
        assertThat(result.status()).as(result.out() + result.err()).isEqualTo(1);
        return result;
    }

    private static void change(Path file, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String text : statements) {
                statement.execute(text);
            }
        }
    }

    private Path db() {
        return data.resolve("cupwright.db");
    }

    @Test
    void anEntryThatIsDamagedIsNamedAndLeftOut() throws Exception {
        change(db(), "UPDATE fact SET document = replace(document, 'second', 'secund') WHERE received = 2");
        String named = "fact, row 2";
        Path export = files.resolve("log.jsonl");
        for (List<Object> command : List.<List<Object>>of(
                List.of("turf"),
                List.of("plan"),
                List.of("explain", "--hole", "1"),
                List.of("log", "list"),
                List.of("log", "export", export))) {
            Result result = run(command.toArray());
            assertThat(result.status()).as(command + result.err()).isZero();
            assertThat(result.err()).as(command.toString()).contains(named, "data-folder.md");
            assertThat(result.out()).as(command.toString()).doesNotContain("secund");
        }
        assertThat(export).content().contains("first", "third").doesNotContain("secund");
        assertThat(refused("check").out()).contains(named, "not as it was written");
        Path backup = files.resolve("b.db");
        assertThat(refused("backup", backup).out()).contains(named);
        assertThat(refused("restore", backup).err()).contains(named);
    }

    /** What was worked out without the entry is not kept: once it is mended it counts. */
    @Test
    void anEntryThatIsMendedCountsAgain() throws Exception {
        done("log", "add", "note-to-next", "--set", "text=later", "--yes", "--date", "2026-05-01", "--data", data);
        change(db(), "UPDATE fact SET document = replace(document, 'second', 'secund') WHERE received = 2");
        run("turf");
        assertThat(data.resolve("cache")).doesNotExist();
        change(db(), "UPDATE fact SET document = replace(document, 'secund', 'second') WHERE received = 2");
        assertThat(run("turf").err()).isEmpty();
    }

    @Test
    void aRowWithoutWhichNothingCanBeSaidIsNamed() throws Exception {
        change(db(), "UPDATE course_version SET document = replace(document, '500', '501')");
        for (String command : List.of("plan", "turf", "check", "sheets")) {
            Result result = refused(command);
            assertThat(result.out() + result.err()).as(command).contains("course_version, row 1");
        }
    }

    @Test
    void rowsThatWereChangedByAnotherHandAreFoundWhateverTheirTable() throws Exception {
        change(db(), "UPDATE plan_version SET day = '2026-06-21'");
        change(db(), "UPDATE fact SET recorded_at = '2026-06-20T05:00:01Z' WHERE received = 3");
        assertThat(refused("check").out()).contains("plan_version, row 1", "fact, row 3");
    }

    @Test
    void aFileThatLostItsMigrationsOrNamesAnotherFormatIsDamaged() throws Exception {
        change(db(), "PRAGMA user_version = 4");
        assertThat(refused("turf").err()).contains("damaged").contains("user_version 4");
        refused("check");
        try (Stream<Path> all = Files.list(data)) {
            assertThat(all.filter(path -> path.toString().contains("backup"))).isEmpty();
        }
        change(db(), "DROP TABLE flyway_schema_history");
        assertThat(refused("turf").err()).contains("damaged");
        assertThat(refused("check").out()).contains("flyway_schema_history");
    }

    /** A backup that seems one of ours, and is refused with everything left as it was. */
    private void notRestored(String named, String... changes) throws Exception {
        Path backup = files.resolve("changed.db");
        Files.copy(made.resolve("backup.db"), backup);
        change(backup, changes);
        String before = RealProcess.hash(data);
        Result refused = refused("restore", backup);
        assertThat(refused.err()).contains("damaged", named);
        assertThat(RealProcess.hash(data)).isEqualTo(before);
        Files.delete(backup);
    }

    @Test
    void backupsThatHoldMoreOrLessThanOursAreRefused() throws Exception {
        notRestored(
                "trigger eraser",
                "CREATE TRIGGER eraser AFTER INSERT ON fact BEGIN DELETE FROM fact WHERE received < NEW.received; END");
        notRestored("view fact_view", "CREATE VIEW fact_view AS SELECT * FROM fact");
        notRestored("table more", "CREATE TABLE more (a)");
        notRestored("index fact_kind", "DROP INDEX fact_kind");
        notRestored("table photo", "DROP TABLE photo");
        notRestored("fact, row 2", "UPDATE fact SET happened_millis = happened_millis + 1 WHERE received = 2");
        notRestored(
                "policy_change, row 1",
                "INSERT INTO policy_change (course, recorded_at, effective, setting, value)"
                        + " VALUES ('', '2026-06-20T05:00:00Z', '2026-06-20', 'desk.units', 'imperial')");
    }

    @Test
    void aFileWithOurMarkAndNothingInItIsRefused() throws Exception {
        Path foreign = files.resolve("foreign.db");
        change(foreign, "PRAGMA application_id = 1129664599", "PRAGMA user_version = 7");
        assertThat(refused("restore", foreign).err().replaceAll("\\s+", " "))
                .contains("damaged", "index course_version_course");
        change(foreign, "PRAGMA user_version = 0");
        refused("restore", foreign);
        Files.copy(foreign, db(), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        for (String command : List.of("turf", "check", "plan")) {
            refused(command);
        }
        change(db(), "PRAGMA user_version = 7");
        for (String command : List.of("turf", "check", "plan")) {
            refused(command);
        }
    }

    @Test
    void noCommandWritesAmongTheData() throws Exception {
        Path link = Files.createSymbolicLink(files.resolve("link"), data);
        Files.createFile(data.resolve("cupwright.lock"));
        for (Path target : List.of(db(), link.resolve("cupwright.lock"))) {
            for (List<Object> command : List.<List<Object>>of(
                    List.of("assess", "--hole", "1", "--svg", target, "--replace"),
                    List.of("findings", "--geojson", target, "--replace"),
                    List.of("drawn", "list", "--geojson", target, "--replace"),
                    List.of("level", "round", "--pdf", target, "--replace"),
                    List.of("log", "export", target, "--replace"),
                    List.of("sheets", "--out", target.resolveSibling("paper")),
                    List.of("backup", target, "--replace"))) {
                assertThat(refused(command.toArray()).err())
                        .as(command.toString())
                        .contains("data folder");
            }
        }
        refused("backup", link.resolve("cupwright.db"), "--replace");
        refused("backup", link.resolve("new.db"));
        assertThat(data.resolve("new.db")).doesNotExist();
        assertThat(done("check", "--data", data).out()).contains("whole");
    }

    @Test
    void noCommandWritesOverAFileUnasked() throws Exception {
        Path mine = Files.writeString(files.resolve("mine"), "mine");
        for (List<Object> command : List.<List<Object>>of(
                List.of("assess", "--hole", "1", "--svg", mine),
                List.of("findings", "--geojson", mine),
                List.of("drawn", "list", "--geojson", mine),
                List.of("level", "round", "--pdf", mine),
                List.of("log", "export", mine))) {
            assertThat(refused(command.toArray()).err()).as(command.toString()).contains("--replace");
            assertThat(mine).hasContent("mine");
        }
        assertThat(run("assess", "--hole", "1", "--svg", mine, "--replace").status())
                .isZero();
        assertThat(mine).content().startsWith("<");
        Path paper = Files.createDirectory(files.resolve("paper"));
        Files.writeString(paper.resolve("changers-card.pdf"), "mine");
        assertThat(refused("sheets", "--out", paper).err()).contains("no PDF");
        Files.delete(paper.resolve("changers-card.pdf"));
        for (int time = 0; time < 2; time++) {
            assertThat(run("sheets", "--out", paper).status()).isZero();
        }
    }

    @Test
    void copiesThatAKilledProcessLeftUnfinishedGoWithTheNextEntry() throws Exception {
        long gone = RealProcess.goneId();
        Path left = Files.createFile(data.resolve("cupwright.db." + gone + ".restoring"));
        Path part = Files.createFile(data.resolve(".cupwright.db." + gone + ".restoring." + gone + ".part"));
        Path own = Files.createFile(
                data.resolve("cupwright.db." + ProcessHandle.current().pid() + ".restoring"));
        assertThat(run("log", "add", "note-to-next", "--set", "text=more", "--yes")
                        .status())
                .isZero();
        assertThat(left).doesNotExist();
        assertThat(part).doesNotExist();
        assertThat(own).exists();
    }
}
