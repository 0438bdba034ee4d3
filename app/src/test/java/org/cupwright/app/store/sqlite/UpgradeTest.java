package org.cupwright.app.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.green.SharedAmplitude;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoints;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real file of format 1 is brought up to date, never without a copy. */
class UpgradeTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-21T05:00:00Z"), ZoneOffset.UTC);
    private static final String BACKUP = "cupwright-backup-format1-20260621T050000Z.db";

    @TempDir
    Path files;

    private SqliteFolder folder() {
        return new SqliteFolder(files, CLOCK);
    }

    private List<String> backups() throws IOException {
        try (Stream<Path> all = Files.list(files)) {
            return all.map(path -> path.getFileName().toString())
                    .filter(name -> name.startsWith("cupwright-"))
                    .toList();
        }
    }

    private static int format(Path file) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            return Database.pragma(connection, "user_version");
        }
    }

    @Test
    void readingUpgradesAfterABackup() throws SQLException, IOException {
        Path file = OldFormat.make(files);
        StoredPlan plan = folder().read(stores -> stores.plans()
                .find(OldFormat.COURSE, LocalDate.parse(OldFormat.DAY))
                .orElseThrow());
        assertThat(plan.holes()).isNotEmpty();
        assertThat(format(file)).isEqualTo(Database.FORMAT);
        assertThat(backups()).containsExactly(BACKUP);
        assertThat(format(files.resolve(BACKUP))).isEqualTo(1);
    }

    /** Rows of before have no kind of survey and keep the check sums they have. */
    @Test
    void aSurveyOfFormat6ReadsAsItWas() throws SQLException {
        double[] some = {1, 2, 3};
        GreenSurvey survey =
                new GreenSurvey("1", SurveyPoints.scattered(some, some, some), new Origin(32626, "m", "made.csv"));
        Writes.to(folder(), stores -> stores.surveys().add("made", survey));
        Path file = files.resolve("cupwright.db");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("ALTER TABLE survey_version DROP COLUMN kind");
            takePeopleAway(statement);
            statement.executeUpdate("DELETE FROM flyway_schema_history WHERE version = '7'");
            statement.executeUpdate("PRAGMA user_version = 6");
        }
        SurveyPoints read = folder().read(
                        stores -> stores.surveys().find("made", "1").orElseThrow())
                .points();
        assertThat(format(file)).isEqualTo(Database.FORMAT);
        assertThat(read.sameAs(survey.points())).isTrue();
        assertThat(read.kind()).isEmpty();
        GreenSurvey scan = new GreenSurvey("1", survey.points().as(SurveyKind.SCAN), survey.origin());
        Writes.to(folder(), stores -> stores.surveys().add("made", scan));
        assertThat(folder().read(stores -> stores.surveys().find("made", "1").orElseThrow())
                        .points()
                        .kind())
                .contains(SurveyKind.SCAN);
    }

    /** As format 12 left it. */
    private static void takeTrainingAway(Statement statement) throws SQLException {
        statement.executeUpdate("DROP TABLE training");
        statement.executeUpdate("DELETE FROM flyway_schema_history WHERE version = '13'");
        statement.executeUpdate("PRAGMA user_version = 12");
    }

    /** As format 11 left it. */
    private static void takeRoundAway(Statement statement) throws SQLException {
        takeTrainingAway(statement);
        statement.executeUpdate("DROP TABLE round_version");
        statement.executeUpdate("DELETE FROM flyway_schema_history WHERE version = '12'");
        statement.executeUpdate("PRAGMA user_version = 11");
    }

    /** As format 10 left it. */
    private static void takePhonesAway(Statement statement) throws SQLException {
        takeRoundAway(statement);
        for (String table : List.of("phone", "pin", "wrong_pin")) {
            statement.executeUpdate("DROP TABLE " + table);
        }
        statement.executeUpdate("DELETE FROM flyway_schema_history WHERE version = '11'");
        statement.executeUpdate("PRAGMA user_version = 10");
    }

    /** People keep what they sign in by, and there is room for phones and PINs. */
    @Test
    void aFileOfFormat10TakesPhonesIn() throws SQLException, IOException {
        Writes.to(folder(), stores -> stores.people().add(PeopleRowsMade.IDA));
        Path file = files.resolve("cupwright.db");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            takePhonesAway(statement);
        }
        Writes.to(folder(), stores -> {
            assertThat(stores.people().all()).containsExactly(PeopleRowsMade.IDA);
            assertThat(stores.phones().all()).isEmpty();
            stores.phones().add(PeopleRowsMade.OWN);
            stores.phones().set(PeopleRowsMade.PIN);
        });
        assertThat(format(file)).isEqualTo(Database.FORMAT);
        assertThat(backups()).containsExactly("cupwright-backup-format10-20260621T050000Z.db");
        assertThat(folder().upkeep().check().damages()).isEmpty();
    }

    /** What was kept stays as it was, and there is room for what people learn. */
    @Test
    void aFileOfFormat12TakesTrainingIn() throws SQLException {
        Writes.to(folder(), PeopleRowsMade::fill);
        Path file = files.resolve("cupwright.db");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            takeTrainingAway(statement);
        }
        List<TrainingRecord> none = folder().read(stores -> stores.training().all());
        assertThat(none).isEmpty();
        assertThat(format(file)).isEqualTo(Database.FORMAT);
        Writes.to(folder(), stores -> TrainingMade.all().forEach(stores.training()::add));
        List<TrainingRecord> kept = folder().read(stores -> stores.training().all());
        assertThat(kept).hasSameSizeAs(TrainingMade.all());
        assertThat(folder().upkeep().check().damages()).isEmpty();
    }

    /** As format 9 left it. */
    private static void takeSharedAway(Statement statement) throws SQLException {
        takePhonesAway(statement);
        for (String column : List.of("shared_metres", "shared_error_metres", "shared_length_metres")) {
            statement.executeUpdate("ALTER TABLE survey_version DROP COLUMN " + column);
        }
        statement.executeUpdate("DELETE FROM flyway_schema_history WHERE version = '10'");
        statement.executeUpdate("PRAGMA user_version = 9");
    }

    /** A survey of before says nothing of what its points share, and keeps its check sum; a later one does. */
    @Test
    void aSurveyOfFormat9ReadsAsItWas() throws SQLException {
        double[] some = {1, 2, 3};
        SurveyPoints points = SurveyPoints.scattered(some, some, some).as(SurveyKind.DRONE);
        GreenSurvey survey = new GreenSurvey("1", points, new Origin(32626, "m", "made.csv"));
        Writes.to(folder(), stores -> stores.surveys().add("made", survey));
        Path file = files.resolve("cupwright.db");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            takeSharedAway(statement);
        }
        assertThat(newest().measured()).isEmpty();
        assertThat(newest().kind()).contains(SurveyKind.DRONE);
        assertThat(format(file)).isEqualTo(Database.FORMAT);
        SharedAmplitude measured = new SharedAmplitude(0.0041, 0.0006, 3);
        GreenSurvey again = new GreenSurvey("1", points.sharing(measured), survey.origin());
        Writes.to(folder(), stores -> stores.surveys().add("made", again));
        assertThat(newest().measured()).contains(measured);
        assertThat(folder().upkeep().check().damages()).isEmpty();
    }

    private SurveyPoints newest() {
        return folder().read(stores -> stores.surveys().find("made", "1").orElseThrow())
                .points();
    }

    /** As format 8 left it. */
    private static void takeSettingUpAway(Statement statement) throws SQLException {
        takeSharedAway(statement);
        statement.executeUpdate("DROP TABLE set_up_version");
        statement.executeUpdate("DELETE FROM flyway_schema_history WHERE version = '9'");
        statement.executeUpdate("PRAGMA user_version = 8");
    }

    /** As format 7 left it. */
    private static void takePeopleAway(Statement statement) throws SQLException {
        takeSettingUpAway(statement);
        for (String table : List.of("person", "sign_in_code", "audit")) {
            statement.executeUpdate("DROP TABLE " + table);
        }
        statement.executeUpdate("DELETE FROM flyway_schema_history WHERE version = '8'");
        statement.executeUpdate("PRAGMA user_version = 7");
    }

    /** There is room for a course that is being set up, and none is. */
    @Test
    void aFileOfFormat8HasNoCourseBegun() throws SQLException {
        folder().write(stores -> stores.facts().add(MadeFacts.recorded(new Random(5), CLOCK.instant())));
        Path file = files.resolve("cupwright.db");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            takeSettingUpAway(statement);
        }
        boolean begun = folder().<Boolean>read(stores -> stores.setUp().find().isPresent());
        assertThat(begun).isFalse();
        assertThat(format(file)).isEqualTo(Database.FORMAT);
    }

    /** What was kept keeps its check sums, and there is room for people; the copy is as it was. */
    @Test
    void aFileOfFormat7TakesPeopleInAfterABackup() throws SQLException, IOException {
        Fact kept = MadeFacts.recorded(new Random(5), CLOCK.instant());
        folder().write(stores -> stores.facts().add(kept));
        Path file = files.resolve("cupwright.db");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            takePeopleAway(statement);
        }
        Writes.to(folder(), PeopleRowsMade::fill);
        assertThat(format(file)).isEqualTo(Database.FORMAT);
        assertThat(backups()).containsExactly("cupwright-backup-format7-20260621T050000Z.db");
        assertThat(format(files.resolve(backups().get(0)))).isEqualTo(7);
        assertThat(folder().<Integer>read(stores -> stores.people().all().size()))
                .isEqualTo(2);
        assertThat(folder().<Boolean>read(
                                stores -> stores.facts().find(kept.id()).isPresent()))
                .isTrue();
        assertThat(folder().upkeep().check().damages()).isEmpty();
    }

    @Test
    void writingUpgradesOnceAndTheBackupGoesBack() throws SQLException, IOException {
        OldFormat.make(files);
        folder().write(stores -> stores.facts().add(MadeFacts.recorded(new Random(1), CLOCK.instant())));
        folder().write(stores -> stores.facts().add(MadeFacts.recorded(new Random(2), CLOCK.instant())));
        assertThat(backups()).containsExactly(BACKUP);
        folder().upkeep().restore(files.resolve(BACKUP));
        assertThat(format(files.resolve("cupwright.db"))).isEqualTo(1);
        assertThat(folder().<List<String>>read(stores -> stores.courses().ids()))
                .containsExactly(OldFormat.COURSE);
        assertThat(folder().upkeep().check().sound()).isTrue();
    }

    @Test
    void withoutABackupNothingIsUpgraded() throws SQLException, IOException {
        Path file = OldFormat.make(files);
        byte[] before = Files.readAllBytes(file);
        damage(file);
        assertThatThrownBy(() -> folder().read(stores -> stores.courses().ids()))
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.what().key()).isEqualTo("problem.store.notBackedUp"));
        assertThat(format(file)).isEqualTo(1);
        assertThat(backups()).isEmpty();
        Files.write(file, before);
        assertThat(folder().<List<String>>read(stores -> stores.courses().ids()))
                .isNotEmpty();
    }

    /** Writes over every page but the first, which says what the file is. */
    private static void damage(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        for (int i = 4096; i < bytes.length; i++) {
            bytes[i] = 0x55;
        }
        Files.write(file, bytes);
    }

    @Test
    void manyAtOnceUpgradeOnce() throws Exception {
        OldFormat.make(files);
        ExecutorService all = Executors.newFixedThreadPool(6);
        try {
            List<Callable<List<String>>> work = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                work.add(() -> folder().read(stores -> stores.courses().ids()));
            }
            for (Future<List<String>> done : all.invokeAll(work)) {
                assertThat(done.get()).containsExactly(OldFormat.COURSE);
            }
        } finally {
            all.shutdownNow();
        }
        assertThat(backups()).containsExactly(BACKUP);
    }

    /** A program that was killed while it made the file leaves an unfinished one under another name. */
    @Test
    void anUnfinishedNewFileIsMadeAnew() throws IOException, SQLException {
        Path unfinished = files.resolve("cupwright.db.new");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + unfinished);
                Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE half (a)");
        }
        folder().write(stores -> stores.facts().add(MadeFacts.recorded(new Random(1), CLOCK.instant())));
        assertThat(unfinished).doesNotExist();
        assertThat(folder().upkeep().check().holds().facts()).isEqualTo(1);
    }
}
