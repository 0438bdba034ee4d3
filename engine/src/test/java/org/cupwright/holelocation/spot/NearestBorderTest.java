package org.cupwright.holelocation.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;

class NearestBorderTest {
    private static Coordinate[] line(double... eastNorth) {
        Coordinate[] corners = new Coordinate[eastNorth.length / 2];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new Coordinate(eastNorth[2 * i], eastNorth[2 * i + 1]);
        }
        return corners;
    }

    private static double metres(NearestBorder border, double east, double north) {
        return border.metresFrom(new MapPoint(east, north));
    }

    /** The line from 1, 2 to 4, 6 is 5 m long. */
    @ParameterizedTest
    @CsvSource({
        "2.5, 4, 0", // its middle
        "1.7, 4.6, 1", // from the middle one metre to the left
        "3.3, 3.4, 1", // and to the right
        "4, 18, 12", // beyond its end
        "9, 18, 13",
        "1, -1, 3", // before its start
        "-3, -1, 5"
    })
    void fromALineItIsTheNearestOfItsPointsThatCounts(double east, double north, double expected) {
        NearestBorder border = new NearestBorder(List.<Coordinate[]>of(line(1, 2, 4, 6)));
        assertThat(metres(border, east, north)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void everyPieceOfALineCounts() {
        NearestBorder border = new NearestBorder(List.<Coordinate[]>of(line(0, 0, 10, 0, 10, 10, 0, 10)));
        assertThat(metres(border, 4, 1)).isEqualTo(1);
        assertThat(metres(border, 8, 5)).isEqualTo(2);
        assertThat(metres(border, 4, 7)).isEqualTo(3);
        assertThat(metres(border, 0, 5)).isEqualTo(5);
    }

    @Test
    void ofSeveralLinesTheNearestCountsWhereverItStands() {
        NearestBorder border = new NearestBorder(List.of(line(0, 0, 0, 10), line(20, 3), line(6, 0, 6, 10, 6, 10)));
        assertThat(metres(border, 1, 5)).isEqualTo(1);
        assertThat(metres(border, 4, 5)).isEqualTo(2);
        assertThat(metres(border, 20, 4.5)).isEqualTo(1.5);
        assertThat(metres(border, 6, 14)).isEqualTo(4);
        assertThat(metres(border, 0, -3)).isEqualTo(3);
    }

    @Test
    void withoutLinesItIsInfinitelyFar() {
        assertThat(metres(new NearestBorder(List.of()), 0, 0)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void theBoundaryOfAnAreaIsALine() {
        NearestBorder border =
                NearestBorder.of(Shapes.rectangle(0, 0, 10, 4).polygon().getBoundary());
        assertThat(metres(border, 5, 1)).isEqualTo(1);
        assertThat(metres(border, 13, 8)).isEqualTo(5);
    }
}
