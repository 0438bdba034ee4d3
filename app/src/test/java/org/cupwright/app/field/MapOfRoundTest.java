package org.cupwright.app.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.MapFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.testing.RandomGreens;
import org.cupwright.testing.Suite;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;

/** Where a phone finds the ground that somebody taps on the map of a green. */
class MapOfRoundTest {
    private static final int GREENS = 50;

    /** The ground at a place of the map, as {@code ground.js} works it out. */
    private static MapPoint tapped(ArrayNode map, double x, double y) {
        double[] told = map.valueStream().mapToDouble(node -> node.asDouble()).toArray();
        return new MapPoint(told[0] + x * told[2] + y * told[4], told[1] + x * told[3] + y * told[5]);
    }

    @Test
    void leftOnTheMapIsLeftAsSeenFromTheFairwayAndUpIsTheBack() {
        Random random = new Random(Suite.seed());
        for (int i = 0; i < GREENS; i++) {
            Hole hole = RandomGreens.hole(random);
            MapFrame frame = GreenMap.groundFrame(hole);
            ArrayNode map = JsonMapper.shared().createArrayNode();
            GroundOfRound.onMap(frame, map);
            MapPoint point = RandomGreens.pointOn(hole.green(), random);
            double x = frame.x(point);
            double y = frame.y(point);
            assertThat(tapped(map, x, y).distanceMetres(point))
                    .as("seed " + Suite.seed())
                    .isCloseTo(0, within(1e-6));
            Heading play = hole.lineOfPlay().orElseThrow().atGreen();
            MapPoint left = tapped(map, x - 10, y);
            MapPoint back = tapped(map, x, y - 10);
            double toTheRight =
                    (left.east() - point.east()) * play.north() - (left.north() - point.north()) * play.east();
            double onwards = (back.east() - point.east()) * play.east() + (back.north() - point.north()) * play.north();
            assertThat(toTheRight).isNegative();
            assertThat(onwards).isPositive();
        }
    }
}
