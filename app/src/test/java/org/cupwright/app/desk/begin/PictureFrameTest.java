package org.cupwright.app.desk.begin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.cupwright.app.storage.SettingUp.Known;
import org.cupwright.app.storage.SettingUp.PictureOnGround;
import org.cupwright.course.MapPoint;
import org.junit.jupiter.api.Test;

/** How a picture lies on the ground, by cases worked out by hand. */
class PictureFrameTest {
    private static final double CLOSE = 1e-9;

    private static PictureFrame frame(Known first, Known second) {
        return PictureFrame.of(new PictureOnGround(4000, 3000, first, second));
    }

    private static void lies(MapPoint at, double east, double north) {
        assertThat(at.east()).isCloseTo(east, within(CLOSE));
        assertThat(at.north()).isCloseTo(north, within(CLOSE));
    }

    /** North up, a pixel half a metre: 100 px right are 50 m east, 40 px down 20 m south. */
    @Test
    void northUp() {
        PictureFrame frame =
                frame(new Known(100, 200, new MapPoint(1000, 2000)), new Known(500, 200, new MapPoint(1200, 2000)));
        lies(frame.ground(200, 240), 1050, 1980);
        assertThat(frame.metresPerPixel()).isCloseTo(0.5, within(CLOSE));
        assertThat(frame.up().degrees()).isCloseTo(0, within(CLOSE));
    }

    /** Taken flying west: up in the picture is west, so right is north. 200 px are 100 m. */
    @Test
    void turnedByAQuarter() {
        PictureFrame frame =
                frame(new Known(100, 200, new MapPoint(1000, 2000)), new Known(300, 200, new MapPoint(1000, 2100)));
        lies(frame.ground(100, 100), 950, 2000);
        lies(frame.ground(140, 260), 1030, 2020);
        assertThat(frame.up().degrees()).isCloseTo(270, within(CLOSE));
    }

    /**
     * By a triangle of 3, 4 and 5: 50 px straight right are (40, 30) m on the ground, a metre a pixel; a pixel up is
     * then (−0.6, 0.8) m.
     */
    @Test
    void turnedAslant() {
        PictureFrame frame = frame(new Known(0, 0, new MapPoint(100, 100)), new Known(50, 0, new MapPoint(140, 130)));
        lies(frame.ground(0, -10), 94, 108);
        lies(frame.ground(10, 20), 100 + 8 + 12, 100 + 6 - 16);
        assertThat(frame.metresPerPixel()).isCloseTo(1, within(CLOSE));
    }

    @Test
    void bothPointsLieWhereTheyAreKnown_andPixelsComeBack() {
        long seed = 20260620;
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            Known first = known(random);
            Known second = known(random);
            PictureFrame frame = frame(first, second);
            MapPoint at = frame.ground(second.right(), second.down());
            assertThat(at.distanceMetres(second.at())).as("seed %d", seed).isLessThan(1e-6);
            PictureFrame.Pixel back = frame.pixel(frame.ground(1234, 567));
            assertThat(back.right()).isCloseTo(1234, within(1e-3));
            assertThat(back.down()).isCloseTo(567, within(1e-3));
        }
    }

    private static Known known(Random random) {
        MapPoint at = new MapPoint(600_000 + 1000 * random.nextDouble(), 5_000_000 + 1000 * random.nextDouble());
        return new Known(4000 * random.nextDouble(), 3000 * random.nextDouble(), at);
    }

    @Test
    void onePointTwiceIsNoFrame() {
        Known point = new Known(10, 10, new MapPoint(0, 0));
        assertThatThrownBy(() -> frame(point, new Known(10, 10, new MapPoint(50, 0))))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
