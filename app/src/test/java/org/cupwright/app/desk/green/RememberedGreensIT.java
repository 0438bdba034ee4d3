package org.cupwright.app.desk.green;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.desk.MadeSession;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.storage.DayRain;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.RecentResults;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.formats.items.ReadDrawn;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.SurveyPoints;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.policy.PolicyChange;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One surveyed green of the invented course, and one of which the outline alone is known. */
class RememberedGreensIT {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T12:00:00Z"), ZoneOffset.UTC);
    private static final DemoCourse DEMO = new DemoCourse(1);

    @TempDir
    private Path path;

    private SqliteFolder folder;

    @BeforeEach
    void twoHoles() {
        folder = new SqliteFolder(path, CLOCK);
        Course whole = DEMO.course();
        Course two = whole.withHoles(whole.holes().stream()
                .filter(hole -> List.of("6", "10").contains(hole.id()))
                .toList());
        Origin origin = new Origin(whole.frame().epsg(), "m", "invented");
        Writes.to(folder, stores -> {
            stores.courses().add(two);
            stores.surveys().add(two.id(), new GreenSurvey("6", SurveyPoints.scattered(DEMO.survey("6")), origin));
        });
    }

    private StoredPlan plan(double speedFeet) {
        DayQuestion question = new DayQuestion(
                Optional.of(LocalDate.of(2026, 6, 20)),
                Optional.of(DaySpeed.of(speedFeet, DaySpeed.From.SAID)),
                Optional.of(DayRain.SAID),
                Optional.empty());
        return new PlanDay(MadeSession.in(folder, CLOCK), "test")
                .plan(question, 1, Progress.unheard())
                .plan();
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.walk(path.resolve("cache"))) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    @Test
    void aPlanFromRememberedGreensIsThePlanFromMeasuredOnesAndDamageIsNotBelieved() throws IOException {
        StoredPlan measured = plan(10);
        assertThat(kept()).hasSize(1); // the outline's is no trouble to make again
        Path file = kept().get(0);
        byte[] right = Files.readAllBytes(file);
        assertThat(plan(10)).isEqualTo(measured);
        assertThat(Files.readAllBytes(file)).isEqualTo(right);

        byte[] damaged = right.clone();
        damaged[damaged.length / 2] ^= 1;
        Files.write(file, damaged);
        assertThat(plan(10)).isEqualTo(measured);
        assertThat(Files.readAllBytes(file)).isEqualTo(right);
    }

    /** What people say is no part of a measurement: a remembered green is judged by it as it is now. */
    @Test
    void whatPeopleSayCountsOnARememberedGreen() throws IOException {
        StoredPlan before = plan(10);
        MapPoint first = before.find("6").orElseThrow().position().judgement().position();
        PersonsOpinion bad = new PersonsOpinion(
                PersonsOpinion.Kind.BAD, Optional.of("wet"), Optional.of("Invented Person"), Optional.empty());
        ReadDrawn.Item wet = new ReadDrawn.Item(Optional.empty(), List.of("6"), bad, DrawnItem.disc(first, 4));
        Writes.to(
                folder,
                stores -> stores.drawn().add(DemoCourse.ID, DrawnOnCourse.none().with(wet)));
        MapPoint next = plan(10).find("6").orElseThrow().position().judgement().position();
        assertThat(next.distanceMetres(first)).isGreaterThan(4);
        assertThat(kept()).as("nothing was measured anew").hasSize(1);
    }

    /** Days differ by what lies on the green alone: whoever stays works that out, and finds what a newcomer finds. */
    @Test
    void onOtherDaysWhoeverStaysFindsWhatANewcomerFinds() {
        LocalDate first = LocalDate.of(2026, 6, 20);
        plan(10);
        SqliteFolder stays = new SqliteFolder(path, CLOCK, new RecentResults(100));
        AssessGreen staying = new AssessGreen(MadeSession.in(stays, CLOCK));
        AssessGreen newcomer = new AssessGreen(MadeSession.in(folder, CLOCK));
        List<List<JudgedPosition>> found = new ArrayList<>();
        for (LocalDate day : List.of(first, first.plusDays(1), first, first.plusDays(9))) {
            for (String hole : List.of("6", "10")) {
                List<JudgedPosition> best =
                        staying.of(DayQuestion.of(day), hole, Optional.empty()).best();
                assertThat(best)
                        .as(day + " " + hole)
                        .isEqualTo(newcomer.of(DayQuestion.of(day), hole, Optional.empty())
                                .best());
                found.add(best);
            }
        }
        assertThat(found.get(2))
                .as("the planned hole lies there on the next day")
                .isNotEqualTo(found.get(0));
    }

    /** A setting is in force from a day on: what was judged for the day before it says nothing of that day. */
    @Test
    void aSettingThatIsInForceFromADayOnCountsFromThatDay() {
        LocalDate first = LocalDate.of(2026, 6, 20);
        Writes.to(
                folder,
                stores -> stores.policies()
                        .add(DemoCourse.ID, new PolicyChange(first.plusDays(2), DistancePolicy.EDGE_PACES.key(), "6")));
        SqliteFolder stays = new SqliteFolder(path, CLOCK, new RecentResults(100));
        AssessGreen staying = new AssessGreen(MadeSession.in(stays, CLOCK));
        AssessGreen newcomer = new AssessGreen(MadeSession.in(folder, CLOCK));
        List<List<JudgedPosition>> found = new ArrayList<>();
        for (LocalDate day : List.of(first.plusDays(1), first.plusDays(2), first.plusDays(1))) {
            DayQuestion question = DayQuestion.of(day);
            List<JudgedPosition> best =
                    staying.of(question, "10", Optional.empty()).best();
            assertThat(best)
                    .as("" + day)
                    .isEqualTo(newcomer.of(question, "10", Optional.empty()).best());
            found.add(best);
        }
        assertThat(found.get(1)).isNotEqualTo(found.get(0));
    }

    @Test
    void anotherSpeedAndAnotherSurveyAreMeasuredAnew() throws IOException {
        plan(10);
        plan(9.5);
        assertThat(kept()).hasSize(2);
        Writes.to(
                folder,
                stores -> stores.surveys()
                        .add(
                                DemoCourse.ID,
                                new GreenSurvey(
                                        "6",
                                        SurveyPoints.scattered(DEMO.survey("6")).where(point -> point % 2 == 0),
                                        new Origin(DEMO.course().frame().epsg(), "m", "invented"))));
        plan(10);
        assertThat(kept()).hasSize(3);
    }
}
