package org.cupwright.app.desk.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.plan.HoleWish;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hazard.Kind;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.cupchange.CupWork;
import org.cupwright.cupchange.Fact;
import org.cupwright.finding.FindingKind;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.PolicyChange;
import org.cupwright.testing.Shapes;
import org.cupwright.units.Heading;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * An invented course of square greens of 24 m that are played to from the west: of holes 1 and 2, which share theirs,
 * and of hole 3, 30 m north of it. A pace is 1 m here, so that 12 L12 is the middle of the northern side.
 */
class DrawGroundTest {
    private static final double EAST = 500_000;
    private static final double NORTH = 4_400_000;
    private static final double SIDE = 24;
    private static final double GAP = 30;
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 20);
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);
    private static final String BUNKER = "6 L14\n10 L14\n10 L17\n6 L17";

    @TempDir
    private Path data;

    private SqliteFolder folder;
    private Session ida;

    @BeforeEach
    void make() {
        folder = new SqliteFolder(data, CLOCK);
        ida = session(Role.SUPERINTENDENT);
        Outline south = square(NORTH);
        Course course = new Course(
                "made",
                "Made",
                new CourseFrame(32626, ZoneId.of("UTC")),
                List.of(hole("1", south), hole("2", south), hole("3", square(NORTH + SIDE + GAP))));
        Writes.to(folder, stores -> {
            stores.courses().add(course);
            stores.policies().add("made", new PolicyChange(LocalDate.EPOCH, "place.paceMetres", "1"));
        });
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private static Outline square(double north) {
        return Shapes.polygon(EAST, north, EAST + SIDE, north, EAST + SIDE, north + SIDE, EAST, north + SIDE);
    }

    private static Hole hole(String id, Outline outline) {
        return Hole.of(id, outline).withLineOfPlay(LineOfPlay.towards(outline, new Heading(90)));
    }

    private Session session(Role role) {
        return new Session(
                folder,
                new Person("Ida", role),
                new CourseChoice(Optional.of("made")),
                CLOCK,
                UUID::randomUUID,
                new Speech(Door.PAGES, "en", UnitSystem.METRIC, 1));
    }

    private DrawGround draw() {
        return new DrawGround(ida);
    }

    private long version() {
        return draw().show("1").version();
    }

    private GroundChange keep(String hole, GroundWish wish) {
        return draw().keep(hole, wish, version());
    }

    private Hole hole(String id) {
        return draw().show(id).hole();
    }

    private static GroundWish bunker(String corners) {
        return new GroundWish.Another(Kind.BUNKER, corners);
    }

    private static List<String> keys(List<Message> all) {
        return all.stream().map(Message::key).toList();
    }

    private List<AuditLine> trail() {
        return folder.read(stores -> stores.audit().between(FactStore.LONG_AGO, FactStore.LONG_HENCE));
    }

    /** The left of a hole that is played to eastwards is in the north; on is east. */
    @Test
    void aBunkerLiesWhereItWasDrawn() {
        keep("1", bunker(BUNKER));
        var box = hole("1").hazards().get(0).area().getEnvelopeInternal();
        assertThat(box.getMinX()).isCloseTo(EAST + 6, within(1e-6));
        assertThat(box.getMaxX()).isCloseTo(EAST + 10, within(1e-6));
        assertThat(box.getMinY()).isCloseTo(NORTH + SIDE / 2 + 14, within(1e-6));
        assertThat(box.getMaxY()).isCloseTo(NORTH + SIDE / 2 + 17, within(1e-6));
    }

    /** It lies 2 m from one green, and 25 m from the next, whose edge is 20 m from what counts. */
    @Test
    void aBunkerCountsForEveryGreenItLiesNear() {
        GroundChange change = keep("1", bunker(BUNKER));
        assertThat(keys(change.says())).containsExactly("ground.hazard.another", "ground.hazard.near");
        assertThat(hole("2").hazards()).isEqualTo(hole("1").hazards());
        assertThat(hole("3").hazards()).isEmpty();
        keep("1", new GroundWish.Moved(1, "6 L24\n10 L24\n10 L28\n6 L28"));
        assertThat(hole("3").hazards()).isEqualTo(hole("1").hazards()).hasSize(1);
        keep("3", new GroundWish.Away(1));
        assertThat(hole("1").hazards()).isEmpty();
        assertThat(hole("2").hazards()).isEmpty();
    }

    @Test
    void lookingKeepsNothing() {
        long before = version();
        GroundChange change = draw().look("1", bunker(BUNKER), before);
        assertThat(change.is().hazards()).hasSize(1);
        assertThat(version()).isEqualTo(before);
        assertThat(hole("1").hazards()).isEmpty();
        assertThat(trail()).isEmpty();
    }

    @Test
    void whatWasDrawnIsInTheAuditTrail() {
        keep("1", bunker(BUNKER));
        keep("1", new GroundWish.Edge("0 L12\n20 L12\n20 R12\n0 R12"));
        keep("1", new GroundWish.Away(1));
        assertThat(trail())
                .extracting(AuditLine::what)
                .containsExactly(AuditKind.BUNKER_DRAWN, AuditKind.EDGE_DRAWN, AuditKind.BUNKER_DRAWN);
        assertThat(trail().get(0).before()).isEmpty();
        assertThat(((Area) trail().get(0).after().orElseThrow()).squareMetres()).isCloseTo(12, within(1e-3));
        assertThat(((Area) trail().get(1).before().orElseThrow()).squareMetres())
                .isCloseTo(576, within(1e-3));
        assertThat(((Area) trail().get(1).after().orElseThrow()).squareMetres()).isCloseTo(480, within(1e-3));
        assertThat(trail().get(2).after()).isEmpty();
        assertThat(trail().get(2).about().thing()).isEqualTo(new Name("1"));
    }

    /** Corners that stand as they were written are the very same, however they were rounded. */
    @Test
    void aCornerIsMovedAndTheOthersStay() {
        PaceGrid grid = draw().show("1").grid();
        List<MapPoint> corners = Drawn.corners(hole("1").green().polygon());
        String written = TypedRing.written(grid, corners);
        assertThat(written).isEqualTo("0.00 R12.00\n24.00 R12.00\n24.00 L12.00\n0.00 L12.00");
        keep("1", new GroundWish.Edge(written.replace("24.00 L12.00", "30 L12")));
        List<MapPoint> now = Drawn.corners(hole("2").green().polygon());
        assertThat(now.get(0)).isEqualTo(corners.get(0));
        assertThat(now.get(1)).isEqualTo(corners.get(1));
        assertThat(now.get(2).east()).isCloseTo(EAST + 30, within(1e-6));
        assertThat(hole("1").green()).isEqualTo(hole("2").green());
        refused(
                "ground.same",
                () -> keep(
                        "1",
                        new GroundWish.Edge(TypedRing.written(draw().show("1").grid(), now))));
    }

    @Test
    void theLastDrawingIsTakenBack_andNothingElse() {
        Course before = draw().show("1").course();
        long map = version();
        refused("ground.notDrawn", () -> draw().takeBack("1", map));
        keep("1", new GroundWish.Edge("0 L12\n20 L12\n20 R12\n0 R12"));
        refused("ground.notDrawn", () -> draw().takeBack("3", version()));
        draw().takeBack("2", version()); // the same green
        assertThat(draw().show("1").course()).isEqualTo(before);
        assertThat(trail()).extracting(AuditLine::what).endsWith(AuditKind.DRAWING_TAKEN_BACK);
    }

    @Test
    void whatIsDrawnUponAnOlderMapIsRefused() {
        long seen = version();
        keep("3", bunker("6 L14\n10 L14\n10 L17\n6 L17"));
        refused("changedMeanwhile", () -> draw().keep("1", bunker(BUNKER), seen));
        refused("changedMeanwhile", () -> draw().look("1", bunker(BUNKER), seen));
        refused("changedMeanwhile", () -> draw().takeBack("3", seen));
        assertThat(hole("1").hazards()).isEmpty();
    }

    @Test
    void onlyWhoMaySurveyDraws() {
        DrawGround reader = new DrawGround(session(Role.READER));
        long seen = version();
        refused("notAllowed", () -> reader.look("1", bunker(BUNKER), seen));
        refused("notAllowed", () -> reader.keep("1", bunker(BUNKER), seen));
        refused("notAllowed", () -> reader.takeBack("1", seen));
        assertThat(reader.show("1").version()).isEqualTo(seen);
    }

    @Test
    void whatCanBeNoBunkerIsRefused() {
        refused("ground.corner", () -> keep("1", bunker("6 L14\n10 left\n10 L17")));
        refused("ground.corners", () -> keep("1", bunker("6 L14\n10 L14\n10 L14\n6 L14")));
        refused("ground.crosses", () -> keep("1", bunker("6 L14\n10 L17\n10 L14\n6 L17")));
        refused("ground.small", () -> keep("1", bunker("6 L14\n6,9 L14\n6,9 L15")));
        refused("ground.large", () -> keep("1", bunker("0 L14\n100 L14\n100 L80\n0 L80")));
        refused("ground.far", () -> keep("1", bunker("6 L14\n600 L14\n10 L17")));
        refused("ground.swallows", () -> keep("1", bunker("-2 L14\n26 L14\n26 R14\n-2 R14")));
        refused("ground.away", () -> keep("1", bunker("50 L14\n54 L14\n54 L17")));
        refused("ground.noHazard", () -> keep("1", new GroundWish.Away(1)));
        keep("1", bunker("6; -14\n10; -14\n10,5 -17\n"));
    }

    @Test
    void whatCanBeNoGreenIsRefused() {
        refused("ground.small", () -> keep("1", new GroundWish.Edge("6 L1\n9 L1\n9 R2\n6 R2")));
        refused("ground.large", () -> keep("1", new GroundWish.Edge("-90 L90\n90 L90\n90 R90\n-90 R90")));
        refused("ground.elsewhere", () -> keep("1", new GroundWish.Edge("14 L12\n39 L12\n39 R12\n14 R12")));
        refused("ground.crosses", () -> keep("1", new GroundWish.Edge("0 L12\n24 R12\n24 L12\n0 R12")));
        GroundChange overlaps = draw().look("1", new GroundWish.Edge("0 L45\n24 L45\n24 R12\n0 R12"), version());
        assertThat(keys(overlaps.doubtful())).containsExactly("ground.overlap");
    }

    /** The hole of hole 1 is 2 m within the northern edge, which moves 4 m inwards; hole 2 has none. */
    @Test
    void oldHolesOffTheGreenAreTold() {
        Writes.to(folder, stores -> stores.facts().add(cut(new MapPoint(EAST + 12, NORTH + SIDE - 2))));
        GroundWish smaller = new GroundWish.Edge("0 L8\n24 L8\n24 R12\n0 R12");
        GroundChange change = draw().look("1", smaller, version());
        assertThat(change.holes()).containsExactly(Message.of("ground.holes.off", new Count(1), new Name("1")));
        assertThat(draw().look("1", new GroundWish.Edge("0 L11\n24 L11\n24 R12\n0 R12"), version())
                        .holes())
                .isEmpty();
    }

    private static Fact cut(MapPoint at) {
        Instant when = Instant.parse("2026-06-18T05:00:00Z");
        CupWork.CupChanged change = CupWork.CupChanged.asPlanned(at);
        return new Fact(UUID.randomUUID(), 1, when, when, Optional.empty(), "Ida", "made", Optional.of("1"), change);
    }

    /**
     * A hole keeps 4 standard paces from the edge, 3.66 m, and 5 from one by a bunker. Somebody asked for it 6 m from
     * the northern edge of green 3, in its middle.
     */
    @Test
    void plannedHolesThatAreSpoiledAreTold() {
        MapPoint asked = new MapPoint(EAST + 12, NORTH + SIDE + GAP + SIDE - 6);
        new PlanDay(ida, "test")
                .plan(DayQuestion.of(TODAY), new HoleWish.Here("3", new Spot.At(asked)), 1, Progress.unheard());
        assertThat(keys(narrower(12))).isEmpty();
        assertThat(keys(narrower(10))).isEmpty();
        assertThat(keys(narrower(9))).containsExactly("ground.plan.edge");
        assertThat(keys(narrower(5))).containsExactly("ground.plan.off");
        String beside = "10 L12.5\n14 L12.5\n14 L15\n10 L15";
        assertThat(draw().look("3", bunker(beside), version()).plans()).isEmpty();
        keep("3", new GroundWish.Edge("0 L10\n24 L10\n24 R12\n0 R12"));
        assertThat(keys(draw().look("3", bunker("10 L11.5\n14 L11.5\n14 L15\n10 L15"), version())
                        .plans()))
                .containsExactly("ground.plan.hazard");
    }

    /** So many metres of it left of its middle. */
    private List<Message> narrower(int left) {
        String edge = "0 L%1$d\n24 L%1$d\n24 R12\n0 R12".formatted(left);
        return draw().look("3", new GroundWish.Edge(edge), version()).plans();
    }

    /** Points each half metre, to a metre beyond the edge; it then grows 8 m to the north, where none are. */
    @Test
    void aGreenThatGrowsBeyondItsSurveyIsDoubtfulThere() {
        List<SurveyPoint> points = new ArrayList<>();
        for (double east = -1; east <= SIDE + 1; east += 0.5) {
            for (double north = -1; north <= SIDE + 1; north += 0.5) {
                points.add(new SurveyPoint(EAST + east, NORTH + SIDE + GAP + north, 50 + 0.01 * east));
            }
        }
        SurveyPoints survey = SurveyPoints.scattered(points).as(SurveyKind.LEVELLED);
        Writes.to(
                folder,
                stores -> stores.surveys()
                        .add("made", new GreenSurvey("3", survey, new GreenSurvey.Origin(32626, "m", "invented"))));
        assertThat(doubts()).doesNotContain(FindingKind.PART_NOT_SURVEYED);
        GroundChange change = keep("3", new GroundWish.Edge("0 L20\n24 L20\n24 R12\n0 R12"));
        assertThat(change.doubtful()).containsExactly(Message.of("ground.beyondSurvey", new Area(192)));
        assertThat(doubts()).contains(FindingKind.PART_NOT_SURVEYED);
    }

    private List<FindingKind> doubts() {
        return new FindDoubts(ida)
                .of(DayQuestion.of(TODAY), List.of("3"), Progress.unheard()).greens().get(0).findings().stream()
                        .map(one -> one.finding().kind())
                        .toList();
    }

    private static void refused(String name, ThrowingCallable doing) {
        assertThatThrownBy(doing).isInstanceOf(Problem.class).hasMessageStartingWith("problem." + name);
    }
}
