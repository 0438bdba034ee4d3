package org.cupwright.holelocation.spot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenLattice;
import org.junit.jupiter.api.Test;

class LatticeDistancesTest {
    private final List<MapPoint> asked = new ArrayList<>();
    private final LatticeDistances distances = new LatticeDistances(new GreenLattice(0, 0, 9, 5), at -> {
        asked.add(at);
        return at.east() + 10 * at.north();
    });

    private double from(double east, double north) {
        return distances.from(new MapPoint(east, north));
    }

    @Test
    void aSpotOfTheLatticeIsWorkedOutOnce() {
        assertThat(from(0.75, 0.5)).isEqualTo(5.75);
        assertThat(from(0.75, 0.5)).isEqualTo(5.75);
        assertThat(from(0, 0)).isZero();
        assertThat(from(0, 0)).isZero();
        assertThat(asked).containsExactly(new MapPoint(0.75, 0.5), new MapPoint(0, 0));
    }

    @Test
    void everyOtherPointIsWorkedOutEachTime() {
        assertThat(from(0.75, 0.5)).isEqualTo(5.75);
        assertThat(from(0.8, 0.5)).isEqualTo(5.8);
        assertThat(from(0.8, 0.5)).isEqualTo(5.8);
        assertThat(from(-3, 0)).isEqualTo(-3);
        assertThat(from(-3, 0)).isEqualTo(-3);
        assertThat(asked).hasSize(5);
    }
}
