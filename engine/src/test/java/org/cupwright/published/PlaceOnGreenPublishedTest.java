package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.testing.RandomGreens;
import org.cupwright.testing.Shapes;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;

/**
 * Distance from the centre is on less half the depth: on a green 36 deep, 18 on is 0 and 10 on is −8 (a press
 * explanation, 2016; whole numbers, so exact but for rounding: 1e-9).
 */
class PlaceOnGreenPublishedTest {
    private static double fromCentreMetres(PlaceOnGreen place) {
        return place.onMetres() - (place.onMetres() + place.fromBackMetres()) / 2;
    }

    @Test
    void distanceFromTheCentre() {
        GreenFrame frame = GreenFrame.of(
                        RandomGreens.holeOn(Shapes.rectangle(0, 0, 20, 36), new Heading(0), List.of()),
                        OnConvention.ALONG_CHORD)
                .orElseThrow();
        assertThat(fromCentreMetres(frame.place(new MapPoint(10, 18)))).isCloseTo(0, within(1e-9));
        assertThat(fromCentreMetres(frame.place(new MapPoint(10, 10)))).isCloseTo(-8, within(1e-9));
    }
}
