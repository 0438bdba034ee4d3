package org.cupwright.app.office.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.MapFrame;
import org.cupwright.app.session.Role;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.message.Problem;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.web.servlet.mvc.support.RedirectAttributesModelMap;

/** Balls that are rolled, ground that is closed, and what the level read, by the page of a green. */
class GroundOfGreenTest {
    private static final MapPoint SPOT = new MapPoint(MadeGreen.EAST + 12, MadeGreen.NORTH + 12);

    @TempDir
    private Path folder;

    private MadeGreen made;
    private Visit visit;

    @BeforeEach
    void make() {
        made = new MadeGreen(folder.resolve("data"));
        visit = made.visit(Role.SUPERINTENDENT);
    }

    @AfterEach
    void close() {
        made.close();
    }

    /** The green falls to the west: rolled that way a ball goes farther than on the level, the other way less far. */
    @Test
    void aBallRollsFartherDownThanUp() {
        double down = rolled("left", "5");
        double up = rolled("right", "5");
        assertThat(down).isGreaterThan(5 * 0.914);
        assertThat(up).isLessThan(5 * 0.914);
    }

    private double rolled(String way, String far) {
        RollView.Rolled ball = made.part(visit, "1", rolling(way, far)).rolled().orElseThrow();
        List<MapPoint> path = ball.path();
        assertThat(path.get(0).distanceMetres(SPOT)).isLessThan(0.01);
        MapPoint stop = path.get(path.size() - 1);
        assertThat(stop.east() < SPOT.east()).isEqualTo(way.equals("left"));
        assertThat(ball.says().get(0)).startsWith("The ball stops after ");
        return stop.distanceMetres(SPOT);
    }

    @Test
    void aBallIsRolledTowardsTheHole() {
        MapPoint hole = new MapPoint(MadeGreen.EAST + 12, MadeGreen.NORTH + 20);
        made.set(visit, "1", hole, MadeGreen.TODAY, 0);
        List<MapPoint> path = made.part(visit, "1", rolling("hole", "6"))
                .rolled()
                .orElseThrow()
                .path();
        MapPoint next = path.get(1);
        assertThat(next.north()).isGreaterThan(SPOT.north() + 0.05);
        assertThat(next.east()).isCloseTo(SPOT.east(), within(0.02));
        assertThat(made.part(visit, "1", rolling("hole", "6")).marks()).contains("class=\"way\"");
    }

    @Test
    void noBallIsRolledWithoutASurvey() {
        assertThat(made.part(visit, "2", MadeGreen.at(SPOT)).ways()).isEmpty();
        assertThat(made.part(visit, "2", rolling("back", "6")).problem()).isPresent();
        assertThat(made.part(visit, "1", rolling("back", "600")).problem()).isPresent();
        assertThat(made.part(visit, "1", rolling("sideways", "6")).problem()).isPresent();
        assertThat(made.part(visit, "1", rolling("hole", "6")).problem()).isPresent();
    }

    private static AskedOfGreen rolling(String way, String far) {
        return new AskedOfGreen(null, null, AskedOfGreen.at(SPOT), null, null, null, null, way, far, null);
    }

    @Test
    void groundIsClosedAboutASpotAndFreedAgain() {
        mark("closed", "2026-06-22", "", "2");
        SpotView.Judged asked =
                made.part(visit, "1", MadeGreen.at(SPOT)).asked().orElseThrow();
        assertThat(asked.rules().get(0).says()).isEqualTo("On or beside ground out of use.");
        GroundItem closed = closed().get(0);
        assertThat(closed.until()).contains(LocalDate.of(2026, 6, 22));
        assertThat(closed.place().getArea()).isCloseTo(Math.PI * 4 * 0.914 * 0.914, within(0.1));
        mark("free", "", "", "3");
        assertThat(closed()).isEmpty();
    }

    /** A triangle of 8 by 6 m, its corners clicked on the picture. */
    @Test
    void groundIsClosedByItsCornersOnThePicture() {
        MapFrame frame = GreenMap.groundFrame(made.stands(visit, "1").hole());
        MapPoint[] corners = {
            SPOT, new MapPoint(SPOT.east() + 8, SPOT.north()), new MapPoint(SPOT.east(), SPOT.north() + 6)
        };
        StringBuilder drawn = new StringBuilder();
        for (MapPoint corner : corners) {
            drawn.append(frame.x(corner)).append(',').append(frame.y(corner)).append(' ');
        }
        mark("closed", "", drawn.toString(), "");
        assertThat(closed()).hasSize(1);
        assertThat(closed().get(0).place().getArea()).isCloseTo(24, within(0.2));
        assertThat(closed().get(0).place().getCentroid().getX()).isCloseTo(SPOT.east() + 8.0 / 3, within(0.02));
        assertThat(closed().get(0).place().getCentroid().getY()).isCloseTo(SPOT.north() + 2, within(0.02));
    }

    /** Ground is closed, and a ball rolled, by the length that stands in the course's own units. */
    @ParameterizedTest
    @CsvSource({"METRIC, metres, 2, 2.0, 3.0 m", "IMPERIAL, feet, 6, 1.8288, 9.8 ft"})
    void lengthsAreTypedInTheUnitsOfTheCourse(
            UnitSystem units, String word, String usual, double metres, String threeMetres) {
        try (MadeGreen other = new MadeGreen(folder.resolve(word), units)) {
            Visit there = other.visit(Role.SUPERINTENDENT);
            SpotView.Lengths lengths =
                    other.part(there, "1", MadeGreen.at(SPOT)).lengths();
            assertThat(lengths.unit()).isEqualTo(word);
            assertThat(lengths.closed()).isEqualTo(usual);
            GroundController.Marked marked = new GroundController.Marked(
                    "closed", "wear", MadeGreen.TODAY.toString(), "", "", AskedOfGreen.at(SPOT), usual, false);
            new GroundController().ground(there, "1", marked, new RedirectAttributesModelMap());
            GroundItem closed = other.judged(there, "1")
                    .green()
                    .ground()
                    .counting(GroundItem.Kind.OUT_OF_USE)
                    .get(0);
            assertThat(closed.place().getArea()).isCloseTo(Math.PI * metres * metres, within(0.1));
            assertThat(there.texts().length(3)).isEqualTo(threeMetres);
        }
    }

    /** What looks wrong is asked once, with all that was sent, and kept when it is meant: here a clock is behind. */
    @Test
    void groundThatLooksWrongIsAskedForAndThenKept() {
        RedirectAttributesModelMap first = ground(made.ahead(2), marked(null));
        assertThat(said(first)).singleElement().asString().startsWith("Kept: ");
        RedirectAttributesModelMap next = ground(visit, marked(null));
        GroundController.Doubted doubted =
                (GroundController.Doubted) next.getFlashAttributes().get("doubted");
        assertThat(doubted.says()).contains("Mon 22 Jun 2026");
        assertThat(doubted.marked()).isEqualTo(marked(null));
        assertThat(next.getFlashAttributes()).doesNotContainKey("said");
        assertThat(closed()).isEmpty();
        assertThat(said(ground(visit, marked(true)))).singleElement().asString().startsWith("Kept: ");
        assertThat(closed()).hasSize(1);
    }

    private static GroundController.Marked marked(Boolean sure) {
        return new GroundController.Marked(
                "closed", "wear", MadeGreen.TODAY.toString(), "", "", AskedOfGreen.at(SPOT), "2", sure);
    }

    private static RedirectAttributesModelMap ground(Visit who, GroundController.Marked marked) {
        RedirectAttributesModelMap next = new RedirectAttributesModelMap();
        new GroundController().ground(who, "1", marked, next);
        return next;
    }

    private static List<?> said(RedirectAttributesModelMap next) {
        return (List<?>) next.getFlashAttributes().get("said");
    }

    @Test
    void twoCornersAreNoGround() {
        assertThatThrownBy(() -> mark("closed", "", "400,400 500,500", "")).isInstanceOf(Problem.class);
        assertThatThrownBy(() -> mark("closed", "", "400,400 500", "")).isInstanceOf(Problem.class);
        assertThat(closed()).isEmpty();
    }

    /** As from a program that leaves everything out. */
    @Test
    void nothingAtAllIsNoGround() {
        GroundController.Marked nothing = new GroundController.Marked(null, null, null, null, null, null, null, null);
        assertThatThrownBy(() -> new GroundController().ground(visit, "1", nothing, new RedirectAttributesModelMap()))
                .isInstanceOf(Problem.class);
        GroundController.Marked noUse =
                new GroundController.Marked(null, null, null, null, "400,400 500,500 400,500", null, null, null);
        assertThatThrownBy(() -> new GroundController().ground(visit, "1", noUse, new RedirectAttributesModelMap()))
                .isInstanceOf(Problem.class);
        assertThat(closed()).isEmpty();
    }

    private List<GroundItem> closed() {
        return made.judged(visit, "1").green().ground().counting(GroundItem.Kind.OUT_OF_USE);
    }

    private void mark(String use, String until, String corners, String within) {
        GroundController.Marked marked = new GroundController.Marked(
                use, "wear", MadeGreen.TODAY.toString(), until, corners, AskedOfGreen.at(SPOT), within, false);
        new GroundController().ground(visit, "1", marked, new RedirectAttributesModelMap());
    }

    /** On a green of which only the outline is known, a reading is all there is. */
    @Test
    void aReadingOfTheLevelCountsAtOnce() {
        assertThat(made.part(visit, "2", MadeGreen.at(SPOT))
                        .asked()
                        .orElseThrow()
                        .told()
                        .restsOn())
                .isEqualTo("outline only, slope not checked");
        RedirectAttributesModelMap next = new RedirectAttributesModelMap();
        new GroundController().level(visit, "2", AskedOfGreen.at(SPOT), "1,2", "-0.5", null, null, next);
        assertThat(said(next)).singleElement().asString().startsWith("Kept: level reading at ");
        SpotView.Judged asked =
                made.part(visit, "2", MadeGreen.at(SPOT)).asked().orElseThrow();
        assertThat(asked.told().restsOn()).isEqualTo("level spots");
        assertThat(asked.told().rules().get(0).says()).startsWith("Slope 1.3 %");
    }

    @Test
    void placesToLayTheLevelAreNumberedOnTheMap() {
        AskedOfGreen level = new AskedOfGreen(null, null, null, null, null, null, null, null, null, true);
        SpotView.Part part = made.part(visit, "2", level);
        LevelView.Round round = part.level().round().orElseThrow();
        assertThat(round.spots()).hasSize(6);
        assertThat(part.marks().split("class=\"reading\"", -1)).hasSize(7);
        assertThat(made.part(visit, "2", AskedOfGreen.NOTHING).level().open()).isFalse();
    }
}
