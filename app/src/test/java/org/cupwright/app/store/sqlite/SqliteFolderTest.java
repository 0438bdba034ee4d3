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
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.PolicyStore;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.app.storage.Writes;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.green.LevelReading;
import org.cupwright.green.SurveyPoints;
import org.cupwright.message.Problem;
import org.cupwright.policy.PolicyChange;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteFolderTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path files;

    private Path data;
    private SqliteFolder folder;

    @BeforeEach
    void newFolder() {
        data = files.resolve("deep/er");
        folder = new SqliteFolder(data, CLOCK);
    }

    private static Course small(String id) {
        return new Course(
                id,
                "Small",
                new CourseFrame(32626, ZoneId.of("UTC")),
                List.of(Hole.of("1", Shapes.rectangle(0, 0, 20, 20))));
    }

    @Test
    void aCourseComesBackAsItWas() {
        Course course = new DemoCourse(1).course();
        Writes.to(folder, stores -> stores.courses().add(course));
        assertThat(folder.<Course>read(
                        stores -> stores.courses().find(course.id()).orElseThrow()))
                .usingRecursiveComparison()
                .comparingOnlyFields("id", "name", "frame")
                .isEqualTo(course);
        assertThat(folder.<List<Hole>>read(stores ->
                        stores.courses().find(course.id()).orElseThrow().holes()))
                .hasSameSizeAs(course.holes())
                .allSatisfy(hole -> assertThat(hole.green())
                        .isEqualTo(course.find(hole.id()).orElseThrow().green()));
    }

    @Test
    void surveysAndReadingsComeBackToTheLastBit() {
        SurveyPoints points = SurveyPoints.scattered(
                new double[] {0.1, 1 / 3.0}, new double[] {4_400_000.123, 7}, new double[] {-1e-9, 12.5});
        LevelReading reading = new LevelReading(new MapPoint(1, 2), 0.01, -0.02, 0.001);
        Writes.to(folder, stores -> {
            stores.surveys().add("c", new GreenSurvey("7", points, new Origin(32626, "m", "made.csv")));
            stores.surveys().addLevels("c", new LevelSpots(Map.of("7", List.of(reading))));
        });
        GreenSurvey back = folder.read(stores -> stores.surveys().find("c", "7").orElseThrow());
        assertThat(back.points().count()).isEqualTo(points.count());
        for (int i = 0; i < points.count(); i++) {
            assertThat(back.points().east(i)).isEqualTo(points.east(i));
            assertThat(back.points().north(i)).isEqualTo(points.north(i));
            assertThat(back.points().heightMetres(i)).isEqualTo(points.heightMetres(i));
        }
        assertThat(back.points().gridCellMetres()).isEmpty();
        assertThat(back.origin().file()).isEqualTo("made.csv");
        assertThat(folder.<LevelSpots>read(stores -> stores.surveys().levels("c"))
                        .of("7"))
                .containsExactly(reading);
    }

    @Test
    void aSecondSurveyStandsBesideTheFirst() {
        SurveyPoints one = SurveyPoints.scattered(new double[] {1}, new double[] {2}, new double[] {3});
        SurveyPoints two = SurveyPoints.scattered(new double[] {1, 4}, new double[] {2, 5}, new double[] {3, 6});
        LevelSpots read =
                new LevelSpots(Map.of("7", List.of(new LevelReading(new MapPoint(1, 2), 0.01, -0.02, 0.001))));
        Writes.to(folder, stores -> {
            stores.surveys().add("c", new GreenSurvey("7", one, new Origin(32626, "m", "one.csv")));
            stores.surveys().addLevels("c", read);
        });
        SqliteFolder later = new SqliteFolder(data, Clock.offset(CLOCK, Duration.ofDays(1)));
        Writes.to(
                later,
                stores -> stores.surveys().add("c", new GreenSurvey("7", two, new Origin(32626, "m", "two.csv"))));
        List<SurveyVersion> versions = folder.read(stores -> stores.surveys().versions("c", "7"));
        assertThat(versions).extracting(SurveyVersion::number).containsExactly(1, 2);
        assertThat(versions).extracting(SurveyVersion::points).containsExactly(1, 2);
        for (SurveyVersion version : versions) {
            GreenSurvey back = folder.read(
                    stores -> stores.surveys().find("c", "7", version).orElseThrow());
            assertThat(back.origin()).isEqualTo(version.origin());
            assertThat(back.points().count()).isEqualTo(version.points());
        }
        assertThat(folder.<LevelSpots>read(stores ->
                        stores.surveys().levelsBefore("c", versions.get(1).recordedAt())))
                .isEqualTo(read);
        assertThat(folder.<LevelSpots>read(stores ->
                        stores.surveys().levelsBefore("c", versions.get(0).recordedAt())))
                .isEqualTo(LevelSpots.none());
    }

    @Test
    void theNewestVersionCounts() {
        Writes.to(folder, stores -> stores.courses().add(small("c")));
        Writes.to(
                folder,
                stores -> stores.courses()
                        .add(new Course("c", "Renamed", small("c").frame(), List.of())));
        assertThat(folder.<String>read(
                        stores -> stores.courses().find("c").orElseThrow().name()))
                .isEqualTo("Renamed");
    }

    @Test
    void settingsOfEveryCourseComeBeforeTheCoursesOwn() {
        LocalDate day = LocalDate.of(2026, 1, 1);
        Writes.to(folder, stores -> {
            stores.policies().add("c", new PolicyChange(day, "a.b", "1"));
            stores.policies().add(PolicyStore.EVERY_COURSE, new PolicyChange(day, "a.b", "2"));
        });
        assertThat(folder.<List<PolicyChange>>read(
                        stores -> stores.policies().history("c").changes()))
                .extracting(PolicyChange::value)
                .containsExactly("2", "1");
    }

    @Test
    void aFirstWriteThatFailsLeavesNothing() {
        assertThatThrownBy(() -> Writes.to(folder, stores -> {
                    stores.courses().add(small("c"));
                    throw new IllegalStateException("midway");
                }))
                .hasMessage("midway");
        assertThat(files.resolve("deep")).doesNotExist();
    }

    @Test
    void aLaterWriteThatFailsLeavesWhatWasThere() {
        Writes.to(folder, stores -> stores.courses().add(small("c")));
        assertThatThrownBy(() -> Writes.to(folder, stores -> {
                    stores.courses().add(small("d"));
                    throw new IllegalStateException("midway");
                }))
                .hasMessage("midway");
        assertThat(folder.<List<String>>read(stores -> stores.courses().ids())).containsExactly("c");
    }

    @Test
    void readingMakesNoFileAndLeavesNoneBehindButTheLock() throws IOException {
        assertThat(folder.<List<String>>read(stores -> stores.courses().ids())).isEmpty();
        assertThat(files.resolve("deep")).doesNotExist();
        Writes.to(folder, stores -> stores.courses().add(small("c")));
        folder.read(stores -> stores.courses().ids());
        folder.close();
        try (var left = Files.list(data)) {
            assertThat(left.map(path -> path.getFileName().toString()))
                    .containsExactlyInAnyOrder("cupwright.db", "cupwright.lock");
        }
    }

    @Test
    void aNewerFormatIsRefused() throws SQLException {
        Writes.to(folder, stores -> stores.courses().add(small("c")));
        change("PRAGMA user_version = 99");
        change(EveryTable.NEWER_MIGRATION);
        assertThatThrownBy(() -> folder.read(stores -> stores.courses().ids()))
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.what().key()).isEqualTo("problem.store.newer"));
        assertThatThrownBy(() -> Writes.to(folder, stores -> stores.courses().add(small("d"))))
                .isInstanceOf(Problem.class);
    }

    @Test
    void anotherProgramsFileIsRefused() throws IOException, SQLException {
        Files.createDirectories(data);
        change("CREATE TABLE theirs (a)");
        assertThatThrownBy(() -> Writes.to(folder, stores -> stores.courses().add(small("d"))))
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.what().key()).isEqualTo("problem.store.notOurs"));
    }

    @Test
    void aDamagedFileIsAProblemNotADefect() throws IOException {
        Files.createDirectories(data);
        Files.writeString(data.resolve("cupwright.db"), "this is no database at all ".repeat(100));
        assertThatThrownBy(() -> folder.read(stores -> stores.courses().ids()))
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.what().key()).isEqualTo("problem.store.damaged"));
    }

    private void change(String statementText) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + data.resolve("cupwright.db"));
                Statement statement = connection.createStatement()) {
            statement.execute(statementText);
        }
    }
}
