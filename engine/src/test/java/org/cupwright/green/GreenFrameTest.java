package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.cupwright.testing.RandomGreens;
import org.cupwright.testing.Shapes;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Places on invented greens, worked by hand beside each. */
class GreenFrameTest {
    private static final Heading NORTH = new Heading(0);
    private static final Heading EAST = new Heading(90);
    private static final Heading SOUTH = new Heading(180);

    /** 20 m wide and 30 m deep, played north. */
    private static final Outline RECTANGLE = Shapes.rectangle(0, 0, 20, 30);
    /** 20 m wide and 30 m deep with a bay of 8 m by 10 m in its left side. */
    private static final Outline KIDNEY = Shapes.polygon(0, 0, 20, 0, 20, 30, 0, 30, 0, 20, 8, 20, 8, 10, 0, 10);
    /** Two arms 10 m wide: along the front (30 m) and up the left side (30 m). */
    private static final Outline ELL = Shapes.polygon(0, 0, 30, 0, 30, 10, 10, 10, 10, 30, 0, 30);
    /** 30 m square with a bunker 10 m square in its middle. */
    private static final Outline BUNKER_INSIDE = bunkerInside();

    private static Outline bunkerInside() {
        Polygon green = Shapes.area(0, 0, 30, 0, 30, 30, 0, 30);
        Polygon bunker = Shapes.area(10, 10, 20, 10, 20, 20, 10, 20);
        return new Outline((Polygon) green.difference(bunker));
    }

    private static GreenFrame frame(Outline green, Heading play, OnConvention convention, Mark... marks) {
        return GreenFrame.of(RandomGreens.holeOn(green, play, List.of(marks)), convention)
                .orElseThrow();
    }

    private static PlaceOnGreen place(Outline green, Heading play, double east, double north) {
        return frame(green, play, OnConvention.ALONG_CHORD).place(new MapPoint(east, north));
    }

    private static void assertPlace(
            PlaceOnGreen place, double on, double back, Side side, double sideMetres, Third third, Lateral lateral) {
        assertThat(place.onMetres()).as("on").isCloseTo(on, within(1e-9));
        assertThat(place.fromBackMetres()).as("from the back").isCloseTo(back, within(1e-9));
        assertThat(place.side()).isEqualTo(side);
        assertThat(place.sideMetres()).as("side").isCloseTo(sideMetres, within(1e-9));
        assertThat(place.third()).isEqualTo(third);
        assertThat(place.lateral()).isEqualTo(lateral);
    }

    @Test
    void withoutALineOfPlayThereIsNoFrame() {
        assertThat(GreenFrame.of(Hole.of("7", RECTANGLE), OnConvention.ALONG_CHORD))
                .isEmpty();
    }

    @Test
    void axesRunAlongPlayAndToItsRight() {
        GreenFrame frame = frame(RECTANGLE, EAST, OnConvention.ALONG_CHORD);
        // centroid (10, 15); played east, so right is south
        MapPoint point = new MapPoint(12, 10);
        assertThat(frame.forwardMetres(point)).isCloseTo(2, within(1e-12));
        assertThat(frame.rightMetres(point)).isCloseTo(5, within(1e-12));
        assertThat(frame.at(5, 2).distanceMetres(point)).isLessThan(1e-12);
        assertThat(frame.depthMetres()).isCloseTo(20, within(1e-12));
    }

    @Test
    void rectangle() {
        // on 22 of 30 is beyond 20: back; 4 of 20 is short of 6.67: left
        assertPlace(place(RECTANGLE, NORTH, 4, 22), 22, 8, Side.LEFT, 4, Third.BACK, Lateral.LEFT);
        assertPlace(place(RECTANGLE, NORTH, 12, 15), 15, 15, Side.RIGHT, 8, Third.MIDDLE, Lateral.CENTRE);
    }

    @Test
    void bordersOfThirdsBelongToTheMiddleAndEqualSidesAreCalledLeft() {
        assertPlace(place(RECTANGLE, NORTH, 10, 10), 10, 20, Side.LEFT, 10, Third.MIDDLE, Lateral.CENTRE);
        assertPlace(place(RECTANGLE, NORTH, 10, 20), 20, 10, Side.LEFT, 10, Third.MIDDLE, Lateral.CENTRE);
    }

    @Test
    void circle() {
        // radius 10, played east; the point is 3 on and 4 right of the centre (right is south).
        // along play: half chord √(100−16) = 9.16515, on 12.16515, back 6.16515 (a third is 6.11010: middle)
        // across: half chord √(100−9) = 9.53939, from the right 5.53939 (a third is 6.35960: right)
        // tolerance: a polygon of 360 sides lies up to 10·(1−cos 0.5°) = 0.00038 m inside the circle, slantwise 0.0005
        PlaceOnGreen place = place(Shapes.circle(100, 200, 10), EAST, 103, 196);
        assertThat(place.onMetres()).isCloseTo(12.16515, within(0.0005));
        assertThat(place.fromBackMetres()).isCloseTo(6.16515, within(0.0005));
        assertThat(place.sideMetres()).isCloseTo(5.53939, within(0.0005));
        assertThat(place.side()).isEqualTo(Side.RIGHT);
        assertThat(place.third()).isEqualTo(Third.MIDDLE);
        assertThat(place.lateral()).isEqualTo(Lateral.RIGHT);
        // the point is 5 from the centre, so 5 from the edge
        assertThat(Shapes.circle(100, 200, 10).distanceToEdgeMetres(new MapPoint(103, 196)))
                .isCloseTo(5, within(0.0005));
    }

    @Test
    void inAKidneyOnlyThePieceThatHoldsThePlaceCounts() {
        // the line through it leaves the green at 10 and comes back at 20: 5 on of 10; edges 4 left, 5 behind, 5 before
        assertPlace(place(KIDNEY, NORTH, 4, 25), 5, 5, Side.LEFT, 4, Third.MIDDLE, Lateral.LEFT);
        assertThat(KIDNEY.distanceToEdgeMetres(new MapPoint(4, 25))).isEqualTo(4);
        // beside the bay the green is 12 wide, from 8 to 20
        assertPlace(place(KIDNEY, NORTH, 11, 15), 15, 15, Side.LEFT, 3, Third.MIDDLE, Lateral.LEFT);
    }

    @Test
    void squaredOffTheFrontAKidneyIsMeasuredThroughItsWholeDepth() {
        PlaceOnGreen place =
                frame(KIDNEY, NORTH, OnConvention.SQUARED_OFF_FRONT).place(new MapPoint(4, 25));
        assertPlace(place, 25, 5, Side.LEFT, 4, Third.BACK, Lateral.LEFT);
    }

    @Test
    void ell() {
        // in the front arm: 10 deep and 30 wide
        assertPlace(place(ELL, NORTH, 22, 5), 5, 5, Side.RIGHT, 8, Third.MIDDLE, Lateral.RIGHT);
        // in the left arm: 30 deep and 10 wide
        assertPlace(place(ELL, NORTH, 4, 25), 25, 5, Side.LEFT, 4, Third.BACK, Lateral.CENTRE);
        // played east, left is north: 30 deep and 10 wide
        assertPlace(place(ELL, EAST, 22, 7), 22, 8, Side.LEFT, 3, Third.BACK, Lateral.LEFT);
        // nearest edge of (8, 12) is the inner corner (10, 10)'s upright side, 2 away
        assertThat(ELL.distanceToEdgeMetres(new MapPoint(8, 12))).isEqualTo(2);
        // nearest edge of (7, 6) is the inner corner itself, √(3² + 4²) = 5; the front is 6 away, the left 7
        assertThat(ELL.distanceToEdgeMetres(new MapPoint(7, 6))).isEqualTo(5);
    }

    @Test
    void aBunkerInside() {
        // beyond the bunker (10 to 20 on): 5 on of 10
        assertPlace(place(BUNKER_INSIDE, NORTH, 15, 25), 5, 5, Side.LEFT, 15, Third.MIDDLE, Lateral.CENTRE);
        // left of it: the green is 10 wide there, 3 from the bunker's edge on the right
        assertPlace(place(BUNKER_INSIDE, NORTH, 7, 12), 12, 18, Side.RIGHT, 3, Third.MIDDLE, Lateral.RIGHT);
        assertThat(BUNKER_INSIDE.distanceToEdgeMetres(new MapPoint(13, 24))).isEqualTo(4);
        assertThatThrownBy(() -> place(BUNKER_INSIDE, NORTH, 15, 15))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("15.0, 15.0")
                .hasMessageContaining("hole 7")
                .hasMessageContaining("5.0 m off");
    }

    @Test
    void aDoubleGreenIsSeenFromBothItsHoles() {
        Outline shared = Shapes.rectangle(0, 0, 40, 24);
        assertPlace(place(shared, NORTH, 10, 5), 5, 19, Side.LEFT, 10, Third.FRONT, Lateral.LEFT);
        assertPlace(place(shared, SOUTH, 10, 5), 19, 5, Side.RIGHT, 10, Third.BACK, Lateral.RIGHT);
    }

    @Test
    void squaredOffTheForemostFrontPoint() {
        // a front that runs from (0, 6) to (20, 0): squared off, on counts from 0; along the chord at 10, from 3
        Outline slantedFront = Shapes.polygon(0, 6, 20, 0, 20, 30, 0, 30);
        MapPoint point = new MapPoint(10, 11);
        assertPlace(
                frame(slantedFront, NORTH, OnConvention.SQUARED_OFF_FRONT).place(point),
                11,
                19,
                Side.LEFT,
                10,
                Third.MIDDLE,
                Lateral.CENTRE);
        assertPlace(
                frame(slantedFront, NORTH, OnConvention.ALONG_CHORD).place(point),
                8,
                19,
                Side.LEFT,
                10,
                Third.FRONT,
                Lateral.CENTRE);
    }

    @Test
    void squaredOffAFrontMark() {
        Mark mark = new Mark(Mark.Kind.FRONT_MARK, "front 7", new MapPoint(3, 2));
        Mark head = new Mark(Mark.Kind.SPRINKLER_HEAD, "head 7-1", new MapPoint(3, -9));
        GreenFrame frame = frame(RECTANGLE, NORTH, OnConvention.SQUARED_OFF_FRONT, mark, head);
        assertPlace(frame.place(new MapPoint(5, 11)), 9, 19, Side.LEFT, 5, Third.FRONT, Lateral.LEFT);
        assertThat(frame.depthMetres()).isCloseTo(28, within(1e-12));
        assertThat(frame.place(new MapPoint(5, 1)).onMetres()).isCloseTo(-1, within(1e-12));
        assertThat(frame.place(new MapPoint(5, 1)).third()).isEqualTo(Third.FRONT);
        assertThat(frame.find(9, Side.LEFT, 5))
                .hasValueSatisfying(found ->
                        assertThat(found.distanceMetres(new MapPoint(5, 11))).isLessThan(1e-9));
    }

    @Test
    void pointsOfTheEdgeHaveAPlaceToo() {
        assertPlace(place(RECTANGLE, NORTH, 20, 12), 12, 18, Side.RIGHT, 0, Third.MIDDLE, Lateral.RIGHT);
        assertPlace(place(RECTANGLE, NORTH, 0, 0), 0, 30, Side.LEFT, 0, Third.FRONT, Lateral.LEFT);
        assertPlace(place(RECTANGLE, NORTH, 20, 30), 30, 0, Side.RIGHT, 0, Third.BACK, Lateral.RIGHT);
        // on the wall of the bay, where the line of play runs along the edge: the piece is that of the ground beside it
        assertPlace(place(KIDNEY, NORTH, 8, 15), 15, 15, Side.LEFT, 0, Third.MIDDLE, Lateral.LEFT);
    }

    @Test
    void findsThePlaceMeant() {
        GreenFrame frame = frame(RECTANGLE, NORTH, OnConvention.ALONG_CHORD);
        assertThat(frame.find(22, Side.LEFT, 4).orElseThrow().distanceMetres(new MapPoint(4, 22)))
                .isLessThan(1e-9);
        assertThat(frame.findAll(End.BACK, 8, Side.RIGHT, 6).get(0).distanceMetres(new MapPoint(14, 22)))
                .isLessThan(1e-9);
        // from the farther side: 13 from the left of 20
        assertThat(frame.find(22, Side.LEFT, 13).orElseThrow().distanceMetres(new MapPoint(13, 22)))
                .isLessThan(1e-9);
        assertThat(frame.find(31, Side.LEFT, 4)).isEmpty();
        assertThat(frame.find(22, Side.LEFT, 21)).isEmpty();
    }

    @Test
    void ofSeveralPlacesTheOneWithTheNamedSideNearerComesFirst() {
        // 5 on and 4 from the left: before the bay (4, 5), and beyond it (4, 25), where on counts from 20. Both lie 4
        // from the
        // edge; and 12 from the left is the far side at (12, 5) alone, as 12 + 8 = 20
        GreenFrame frame = frame(KIDNEY, NORTH, OnConvention.ALONG_CHORD);
        assertThat(frame.findAll(End.FRONT, 5, Side.LEFT, 4))
                .extracting(point -> Math.rint(point.east()) + " " + Math.rint(point.north()))
                .containsExactlyInAnyOrder("4.0 5.0", "4.0 25.0");
        assertThat(frame.findAll(End.FRONT, 5, Side.LEFT, 12)).hasSize(1);
    }

    @Test
    void whereAWholeLineFitsItsMiddleIsGiven() {
        // a square on its corner: left of the middle line and below it, on and side are both x + y + 10, so 5 and 5 fit
        // from
        // (−5, 0) to (0, −5); the middle is (−2.5, −2.5)
        GreenFrame frame = frame(Shapes.polygon(0, -10, 10, 0, 0, 10, -10, 0), NORTH, OnConvention.ALONG_CHORD);
        assertThat(frame.find(5, Side.LEFT, 5).orElseThrow().distanceMetres(new MapPoint(-2.5, -2.5)))
                .isLessThan(1e-6);
    }
}
