package org.cupwright.app.desk.begin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.app.storage.SettingUp.Measure;
import org.cupwright.app.storage.SettingUp.Paced;
import org.cupwright.app.storage.SettingUp.Row;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Outlines by offsets from a line, against shapes whose ground is known. */
class PacedOutlineTest {
    private static final MapPoint FRONT = new MapPoint(500, 800);

    private static Paced paced(double unitMetres, double length, double heading, Row... rows) {
        return new Paced(Measure.METRES, unitMetres, length, List.of(rows), new Heading(heading), Optional.empty());
    }

    /** An oval of 30 by 20 m, measured every 5 m. */
    private static Row[] oval() {
        return IntStream.of(5, 10, 15, 20, 25)
                .mapToObj(on -> new Row(on, half(on), half(on)))
                .toArray(Row[]::new);
    }

    private static double half(double on) {
        return 10 * Math.sqrt(1 - Math.pow((on - 15) / 15, 2));
    }

    /** Its ground is π · 15 · 10 = 471.2 m²; straight lines from point to point would have 437.6 m², 7 % less. */
    @Test
    void anOvalHasItsGround() {
        double known = Math.PI * 15 * 10;
        Polygon oval = PacedOutline.of(paced(1, 30, 0, oval()), FRONT);
        assertThat(oval.isValid()).isTrue();
        assertThat(oval.getArea()).isCloseTo(known, within(0.02 * known));
        double straight = 2 * (half(5) * 5 / 2 + (half(5) + half(10)) * 5 / 2 + (half(10) + half(15)) * 5 / 2) * 2;
        assertThat(straight).isCloseTo(437.6, within(0.1));
    }

    /** Eastwards: the front is where the line begins, left is north, right is south. */
    @Test
    void everyMeasuredPointLiesOnTheEdge() {
        Paced paced = paced(1, 30, 90, new Row(10, 8, 5), new Row(20, 6, 9));
        Outline outline = new Outline(PacedOutline.of(paced, FRONT));
        for (MapPoint at : List.of(
                FRONT,
                new MapPoint(510, 808),
                new MapPoint(520, 806),
                new MapPoint(530, 800),
                new MapPoint(520, 791),
                new MapPoint(510, 795))) {
            assertThat(outline.distanceToEdgeMetres(at)).as("%s", at).isLessThan(1e-9);
        }
        assertThat(outline.contains(new MapPoint(515, 807))).isTrue();
        assertThat(outline.contains(new MapPoint(515, 811))).isFalse();
    }

    /** In paces of 0.914 m everything is 0.914 as long, and the ground 0.914² as large. */
    @Test
    void theUnitScales() {
        double metres = PacedOutline.of(paced(1, 30, 0, oval()), FRONT).getArea();
        double paces = PacedOutline.of(paced(0.914, 30, 0, oval()), FRONT).getArea();
        assertThat(paces / metres).isCloseTo(0.914 * 0.914, within(1e-9));
    }

    /** A square of 20 m whose front and back are edges of their own: drawn round it bulges by 8 % of its ground. */
    @Test
    void aStraightFront() {
        Polygon green =
                PacedOutline.of(paced(1, 20, 0, new Row(0, 10, 10), new Row(10, 10, 10), new Row(20, 10, 10)), FRONT);
        assertThat(green.isValid()).isTrue();
        assertThat(green.getArea()).isGreaterThanOrEqualTo(400).isLessThan(440);
    }

    @Test
    void turningItKeepsItsGround() {
        double north = PacedOutline.of(paced(1, 30, 0, oval()), FRONT).getArea();
        double aslant = PacedOutline.of(paced(1, 30, 237, oval()), FRONT).getArea();
        assertThat(aslant).isCloseTo(north, within(1e-6));
    }
}
