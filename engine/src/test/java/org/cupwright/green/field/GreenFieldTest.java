package org.cupwright.green.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** An invented green six metres wide and four deep; spots lie every half metre, each stands for the square about it. */
class GreenFieldTest {
    private static final Outline GREEN = Shapes.rectangle(0.1, 0.1, 6.1, 4.1);

    /** Nothing is known north of three metres; five in the south-western corner, three in the east, else nought. */
    private static final ToDoubleFunction<MapPoint> VALUE = at -> {
        if (at.north() > 3.05) {
            return Double.NaN;
        }
        if (at.east() < 1.55 && at.north() < 1.55) {
            return 5;
        }
        return at.east() > 4.05 ? 3 : 0;
    };

    @Test
    void eachPartThatHangsTogetherIsAnArea_theLargestFirst() {
        List<GroundArea> areas = new GreenField(GREEN, VALUE).areasAbove(1);
        assertThat(areas).hasSize(2);
        GroundArea east = areas.get(0);
        GroundArea corner = areas.get(1);
        assertThat(east.greatest()).isEqualTo(3);
        assertThat(corner.greatest()).isEqualTo(5);
        // spots at 4.5 … 6.0 by 0.5 … 3.0: squares from 4.25 to 6.25, cut at 6.1, by 0.25 to 3.25
        assertThat(east.squareMetres()).isCloseTo(1.85 * 3, within(1e-9));
        // spots at 0.5 … 1.5 each way
        assertThat(corner.squareMetres()).isCloseTo(1.5 * 1.5, within(1e-9));
        assertThat(VALUE.applyAsDouble(east.inside())).isEqualTo(3);
        assertThat(corner.shape().getEnvelopeInternal().getMaxX()).isCloseTo(1.75, within(1e-9));
    }

    @Test
    void whatIsOnlyAsGreatAsTheLimitIsNotAbove() {
        GreenField field = new GreenField(GREEN, VALUE);
        assertThat(field.areasAbove(3)).hasSize(1);
        assertThat(field.areasAbove(5)).isEmpty();
        assertThat(field.allAbove(5).shape().isEmpty()).isTrue();
        assertThat(field.allAbove(5).greatest()).isNaN();
    }

    @Test
    void allAboveIsOnePartInPieces() {
        GreenField field = new GreenField(GREEN, VALUE);
        GroundArea all = field.allAbove(1);
        assertThat(all.shape().getNumGeometries()).isEqualTo(2);
        assertThat(all.greatest()).isEqualTo(5);
        assertThat(all.squareMetres()).isCloseTo(1.85 * 3 + 1.5 * 1.5, within(1e-9));
        assertThat(all.inside().east()).as("the larger piece").isGreaterThan(4.25);
        GroundArea together = GroundArea.together(field.areasAbove(1));
        assertThat(together.squareMetres()).isCloseTo(all.squareMetres(), within(1e-9));
        assertThat(together.greatest()).isEqualTo(5);
        assertThat(GroundArea.together(List.of()).greatest()).isNaN();
    }

    /** Spots hang together side by side: not across the green, and not corner to corner. */
    @Test
    void oppositeEdgesAreNotBesideEachOther() {
        List<GroundArea> edges =
                new GreenField(GREEN, at -> at.east() < 0.7 || at.east() > 5.9 ? 1 : 0).areasAbove(0.5);
        assertThat(edges).hasSize(2);
        assertThat(edges.get(0).squareMetres()).isCloseTo(0.5 * 3.85, within(1e-9));
        assertThat(edges.get(1).squareMetres()).isCloseTo(0.35 * 3.85, within(1e-9));
        List<GroundArea> corners =
                new GreenField(GREEN, at -> Math.abs(at.east() - at.north()) < 0.1 ? 1 : 0).areasAbove(0.5);
        assertThat(corners).as("corner to corner is not together").hasSize(8);
    }

    /** Its outermost spots lie on its edge: of their squares half is on the green, of those in a corner a quarter. */
    private static final Outline ON_SPOTS = Shapes.rectangle(0, 0, 6, 4);

    private static boolean isAt(MapPoint at, double east, double north) {
        return at.distanceMetres(new MapPoint(east, north)) < 0.1;
    }

    @Test
    void spotsOnTheEdgeCount() {
        List<GroundArea> east = new GreenField(ON_SPOTS, at -> at.east() > 5.9 ? 1 : 0).areasAbove(0.5);
        assertThat(east).hasSize(1);
        assertThat(east.get(0).squareMetres()).isCloseTo(0.25 * 4, within(1e-9));
        List<GroundArea> north = new GreenField(ON_SPOTS, at -> at.north() > 3.9 ? 1 : 0).areasAbove(0.5);
        assertThat(north).hasSize(1);
        assertThat(north.get(0).squareMetres()).isCloseTo(0.25 * 6, within(1e-9));
        GreenField corners = new GreenField(ON_SPOTS, at -> at.east() * at.north() > 23.9 || isAt(at, 0, 0) ? 1 : 0);
        assertThat(corners.areasAbove(0.5))
                .hasSize(2)
                .allSatisfy(corner -> assertThat(corner.squareMetres()).isCloseTo(0.0625, within(1e-9)));
        assertThat(new GreenField(ON_SPOTS, MapPoint::east).quantile(1)).isEqualTo(6);
        assertThat(new GreenField(ON_SPOTS, MapPoint::north).quantile(1)).isEqualTo(4);
    }

    /** The last spot of a row and the first of the next are numbered one after the other, and six metres apart. */
    @Test
    void theEndOfARowIsNotBesideTheBeginningOfTheNext() {
        assertThat(new GreenField(ON_SPOTS, at -> isAt(at, 6, 1) || isAt(at, 0, 1.5) ? 1 : 0).areasAbove(0.5))
                .hasSize(2);
        assertThat(new GreenField(ON_SPOTS, at -> isAt(at, 6, 1) || isAt(at, 0, 1) || isAt(at, 0, 1.5) ? 1 : 0)
                        .areasAbove(0.5))
                .hasSize(2);
    }

    /** Column and row of a spot: those at 0.5, 1.0, 1.5 … are the first, second, third. */
    private static String drawn(MapPoint at, String... rows) {
        int column = (int) Math.round(at.east() / 0.5) - 1;
        int row = (int) Math.round(at.north() / 0.5) - 1;
        return row < rows.length && column < rows[row].length() ? rows[row].substring(column, column + 1) : ".";
    }

    /** From its first spot this part is reached going down, right, up and left, in turn. */
    @Test
    void aPartThatWindsIsOne() {
        String[] rows = {
            "x...xx", //
            "x.x..x", //
            "x.xxxx", //
            "x.....", //
            "xxxxxx", //
            ".....x", //
            "..xxxx"
        };
        assertThat(new GreenField(GREEN, at -> drawn(at, rows).equals("x") ? 1 : 0).areasAbove(0.5))
                .hasSize(2);
        String[] joined = rows.clone();
        joined[3] = "x....x";
        List<GroundArea> one = new GreenField(GREEN, at -> drawn(at, joined).equals("x") ? 1 : 0).areasAbove(0.5);
        assertThat(one).hasSize(1);
        long spots = String.join("", joined).chars().filter(sign -> sign == 'x').count();
        assertThat(one.get(0).squareMetres()).isCloseTo(0.25 * spots, within(1e-9));
    }

    @Test
    void aQuantileIsOfTheKnownSpots() {
        GreenField field = new GreenField(Shapes.rectangle(0.1, 0.1, 2.05, 0.55), at -> {
            return at.east() > 1.5 ? Double.NaN : 10 * at.east();
        });
        // known are the spots at 0.5, 1.0 and 1.5 m: 5, 10 and 15
        assertThat(field.quantile(0)).isCloseTo(5, within(1e-9));
        assertThat(field.quantile(0.49)).isCloseTo(5, within(1e-9));
        assertThat(field.quantile(0.5)).isCloseTo(10, within(1e-9));
        assertThat(field.quantile(0.99)).isCloseTo(10, within(1e-9));
        assertThat(field.quantile(1)).isCloseTo(15, within(1e-9));
        assertThat(new GreenField(GREEN, at -> Double.NaN).quantile(0.5)).isNaN();
    }
}
