package org.cupwright.roll;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class OutlineEdgeTest {
    /** An invented green of crooked shape with a bunker in it. */
    private static Outline crooked() {
        Polygon shell = Shapes.area(0, 0, 14, -3, 22, 4, 15, 9, 18, 17, 6, 20, 8, 11, -2, 9);
        return new Outline((Polygon) shell.difference(Shapes.area(10, 3, 13, 3, 13, 5, 10.2, 5.5)));
    }

    @Test
    void answersAsTheOutlineDoes() {
        Outline outline = crooked();
        Edge edge = new OutlineEdge(outline);
        Random random = new Random(Suite.seed());
        int count = Suite.count("prepared outline against outline", 200_000, 20_000);
        int on = 0;
        for (int i = 0; i < count; i++) {
            double east = -4 + 30 * random.nextDouble();
            double north = -5 + 27 * random.nextDouble();
            boolean holds = outline.contains(new MapPoint(east, north));
            assertThat(edge.holds(east, north))
                    .as("at %s, %s, seed %s", east, north, Suite.seed())
                    .isEqualTo(holds);
            on += holds ? 1 : 0;
        }
        assertThat(on).isBetween(count / 5, 4 * count / 5);
    }

    @Test
    void cornersOfTheOutlineBelongToTheGreen() {
        Outline outline = crooked();
        Edge edge = new OutlineEdge(outline);

        for (var corner : outline.polygon().getExteriorRing().getCoordinates()) {
            assertThat(edge.holds(corner.x, corner.y)).as("at %s", corner).isTrue();
        }
        assertThat(edge.holds(Double.NaN, 0)).isFalse();
    }
}
