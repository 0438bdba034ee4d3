package org.cupwright.app.maps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.junit.jupiter.api.Test;

/** Marks over the small green's card, by hand: a place is drawn at x = 20 (east + 5), y = 20 (15 − north). */
class SpotMarksTest {
    private static final Hole HOLE = SmallMap.hole(List.of(), List.of());
    private static final MapFrame FRAME = new MapFrame(HOLE, 400, 400);

    /** As large as the picture's letters ask for, whatever it lies over. */
    private static final double RING = 0.8 * 17;

    private static String drawn(SpotMarks marks) {
        return marks.drawn(FRAME);
    }

    @Test
    void askedSpotIsARingAboutIt() {
        String svg = drawn(new SpotMarks(
                Optional.of(new MapPoint(3, 7)), Optional.empty(), Optional.empty(), List.of(), List.of()));
        assertThat(SmallMap.groups(svg, "asked"))
                .singleElement()
                .asString()
                .startsWith(SmallMap.circle(160, 160, RING));
        assertThat(svg).contains("viewBox=\"0 0 400 400\"");
        assertThat(SmallMap.groups(svg, "held")).isEmpty();
        assertThat(SmallMap.groups(svg, "better")).isEmpty();
        assertThat(SmallMap.groups(svg, "way")).isEmpty();
    }

    @Test
    void heldSpotIsASquareAboutItAndABetterOneABrokenRing() {
        String svg = drawn(new SpotMarks(
                Optional.empty(),
                Optional.of(new MapPoint(1, 2)),
                Optional.of(new MapPoint(8, 9)),
                List.of(),
                List.of()));
        assertThat(SmallMap.groups(svg, "held"))
                .containsExactly(
                        SmallMap.path("M" + SmallMap.number(120 - RING) + " " + SmallMap.number(260 - RING) + "h"
                                + SmallMap.number(2 * RING) + "v" + SmallMap.number(2 * RING) + "h"
                                + SmallMap.number(-2 * RING) + "Z"));
        assertThat(SmallMap.groups(svg, "better")).containsExactly(SmallMap.circle(260, 120, RING));
    }

    @Test
    void ballsWayIsALineThroughItsPlacesWithAPointAtItsEnd() {
        String svg = drawn(new SpotMarks(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(new MapPoint(0, 0), new MapPoint(5, 0), new MapPoint(6, 1))));
        assertThat(SmallMap.groups(svg, "way"))
                .containsExactly(SmallMap.path("M100.000 300.000L200.000 300.000L220.000 280.000"));
        assertThat(SmallMap.groups(svg, "way-end")).containsExactly(SmallMap.circle(220, 280, 0.35 * 17));
    }

    @Test
    void placesToLayTheLevelAreNumbered() {
        String svg = drawn(new SpotMarks(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(new MapPoint(2, 2), new MapPoint(4, 2)),
                List.of()));
        assertThat(SmallMap.groups(svg, "reading")).hasSize(2);
        assertThat(SmallMap.groups(svg, "reading").get(0)).contains("x=\"140.000\"", ">1<");
        assertThat(SmallMap.groups(svg, "reading").get(1)).contains("x=\"180.000\"", ">2<");
    }

    /** What is drawn of a green makes the key under it higher, and moves nothing of the ground. */
    @Test
    void groundLiesAtTheSamePlaceOfEveryPicture() {
        GreenDrawing plain = MadeDrawing.of(HOLE);
        MapPoint at = new MapPoint(3, 7);
        MapFrame ground = GreenMap.groundFrame(HOLE);
        MapFrame full = SmallMap.MAP.frame(plain.withSpots(List.of(at)));
        assertThat(full.height()).isGreaterThan(ground.height());
        assertThat(full.x(at)).isCloseTo(ground.x(at), within(1e-9));
        assertThat(full.y(at)).isCloseTo(ground.y(at), within(1e-9));
        assertThat(ground.ground(ground.x(at), ground.y(at)).distanceMetres(at)).isLessThan(1e-9);
    }
}
