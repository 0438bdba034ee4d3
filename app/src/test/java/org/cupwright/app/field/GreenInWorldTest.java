package org.cupwright.app.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.ZoneOffset;
import java.util.List;
import org.cupwright.app.field.cases.Case;
import org.cupwright.app.field.cases.SquareGreen;
import org.cupwright.course.CourseFrame;
import org.junit.jupiter.api.Test;

/** What a phone is told of where a green lies in the world leads within a millimetre of where it really is. */
class GreenInWorldTest {
    @Test
    void sixNumbersAreEnoughAboutAGreen() throws IOException {
        List<Double> world = List.of();
        int phones = 0;
        for (Case one : Case.read("phones.txt")) {
            if (one.word().equals("green")) {
                CourseFrame frame = new CourseFrame((int) one.number("epsg"), ZoneOffset.UTC);
                world = GreenInWorld.of(SquareGreen.of(one), frame).numbers();
                continue;
            }
            double east = one.number("lon") - world.get(0);
            double north = one.number("lat") - world.get(1);
            assertThat(world.get(2) * east + world.get(3) * north)
                    .as("%s", one)
                    .isCloseTo(one.point("at")[0], within(0.001));
            assertThat(world.get(4) * east + world.get(5) * north)
                    .as("%s", one)
                    .isCloseTo(one.point("at")[1], within(0.001));
            phones++;
        }
        assertThat(phones).isEqualTo(400);
    }
}
