package org.cupwright.holelocation.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class PuttingAreaTest {
    private static final Hole SQUARE = Hole.of("1", Shapes.rectangle(-5, -5, 5, 5));
    private static final Hazard BESIDE = new Hazard(Hazard.Kind.BUNKER, Shapes.area(6, -1, 8, -1, 8, 1, 6, 1));
    private static final Hazard BEHIND = new Hazard(Hazard.Kind.WATER, Shapes.area(-1, 6, 1, 6, 1, 8, -1, 8));

    /** Point by point against the polygon itself, on a green and a fall-off that lie along no lattice. */
    @Test
    void containsWhatThePolygonCovers() {
        Outline green = Shapes.polygon(100.1, 50.2, 107.3, 51.1, 109.9, 56.3, 103.2, 58.7, 99.3, 54.4);
        Hazard fallOff =
                new Hazard(Hazard.Kind.FALL_OFF, Shapes.area(104.1, 49.2, 110.3, 50.4, 110.1, 54.2, 105.2, 52.3));
        PuttingArea area = new PuttingArea(Hole.of("1", green).withHazards(List.of(fallOff)));
        Geometry left = green.polygon().difference(fallOff.area());
        GeometryFactory factory = new GeometryFactory();
        int on = 0;
        for (int i = 0; i < 150; i++) {
            for (int j = 0; j < 130; j++) {
                double east = 97.013 + 0.1 * i;
                double north = 48.007 + 0.1 * j;
                boolean covered = left.covers(factory.createPoint(new Coordinate(east, north)));
                assertThat(area.contains(east, north)).as("%s, %s", east, north).isEqualTo(covered);
                on += covered ? 1 : 0;
            }
        }
        assertThat(on / 100.0).isCloseTo(left.getArea(), within(0.5));
    }

    @Test
    void theEdgeIsPartOfIt() {
        PuttingArea area = new PuttingArea(SQUARE);
        assertThat(area.contains(5, 0)).isTrue();
        assertThat(area.contains(-5, -5)).isTrue();
        assertThat(area.contains(5.001, 0)).isFalse();
        assertThat(area.contains(0, -5.001)).isFalse();
        assertThat(area.contains(1000, 0)).isFalse();
        assertThat(area.contains(0, -1000)).isFalse();
    }

    @Test
    void theDistanceIsNegativeOffIt() {
        PuttingArea area = new PuttingArea(SQUARE);
        assertThat(area.edgeMetres(new MapPoint(0, 0))).isEqualTo(5);
        assertThat(area.edgeMetres(new MapPoint(3.1, 0))).isCloseTo(1.9, within(1e-12));
        assertThat(area.edgeMetres(new MapPoint(5.5, 0))).isEqualTo(-0.5);
        assertThat(area.edgeMetres(new MapPoint(8, 9))).isEqualTo(-5);
    }

    @Test
    void onlyFallOffsAreTakenFromIt() {
        Hole bunker = SQUARE.withHazards(List.of(new Hazard(Hazard.Kind.BUNKER, Shapes.area(3, 3, 9, 3, 9, 9, 3, 9))));
        Hole fallOff =
                SQUARE.withHazards(List.of(new Hazard(Hazard.Kind.FALL_OFF, Shapes.area(3, 3, 9, 3, 9, 9, 3, 9))));
        assertThat(new PuttingArea(bunker).contains(4, 4)).isTrue();
        assertThat(new PuttingArea(fallOff).contains(4, 4)).isFalse();
        assertThat(new PuttingArea(fallOff).edgeMetres(new MapPoint(0, 3.5))).isEqualTo(1.5);
    }

    @Test
    void aFallOffOverTheWholeGreenIsRefused() {
        Hole covered =
                SQUARE.withHazards(List.of(new Hazard(Hazard.Kind.FALL_OFF, Shapes.area(-6, -6, 6, -6, 6, 6, -6, 6))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PuttingArea(covered))
                .withMessageContaining("whole green of hole 1");
    }

    /** A hazard 1 m off a straight edge and 2 m wide: within 2 m of it lie 2 + 2·√(2² − 1²) = 5.4641 m of the edge. */
    @Test
    void theEdgeNearHazardsIsWhatLiesWithinTheReach() {
        PuttingArea area = new PuttingArea(SQUARE);
        assertThat(area.edgeNear(List.of(BESIDE), 2).getLength()).isCloseTo(5.4641, within(0.005));
        assertThat(area.edgeNear(List.of(BESIDE, BEHIND), 2).getLength()).isCloseTo(10.9282, within(0.01));
        assertThat(area.edgeNear(List.of(BESIDE), 0.9).isEmpty()).isTrue();
        assertThat(area.edgeNear(List.of(), 2).isEmpty()).isTrue();
    }

    @Test
    void itsSpotsReachAMetreBeyondTheOutline() {
        assertThat(new PuttingArea(SQUARE).lattice().spot(0)).isEqualTo(new MapPoint(-6, -6));
    }
}
