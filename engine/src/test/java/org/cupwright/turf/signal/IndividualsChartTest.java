package org.cupwright.turf.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class IndividualsChartTest {
    @Test
    void whatLiesOnALimitIsWithinIt() {
        IndividualsChart chart = new IndividualsChart(List.of(1.5, 2.0, 3.0, 3.5), 2.5, 1, 2, 3, 1);
        assertThat(chart.outside()).containsExactly(0, 3);
        assertThat(chart.outsideMoves()).isEmpty(); // the middle one is as long as its limit
        assertThat(new IndividualsChart(List.of(3.5, 2.0, 3.0), 2.5, 1, 2, 3, 1).outsideMoves())
                .containsExactly(1);
    }

    /** Ten tens and a forty: mean 140/11, moves 30/10, reach 3·3/1.128 = 7.979. */
    @Test
    void aJumpIsOutsideOnItsSideAndSoIsItsMove() {
        List<Double> values = new ArrayList<>(Collections.nCopies(10, 10.0));
        values.add(40.0);
        IndividualsChart up = IndividualsChart.of(values);
        assertThat(up.mean()).isCloseTo(12.727, within(0.0005));
        assertThat(up.upperLimit()).isCloseTo(20.706, within(0.0005));
        assertThat(up.lowerLimit()).isCloseTo(4.749, within(0.0005));
        assertThat(up.outside()).containsExactly(10);
        assertThat(up.outsideMoves()).containsExactly(10);
        values.set(10, -20.0); // mean 80/11, down to -0.706
        assertThat(IndividualsChart.of(values).outside()).containsExactly(10);
    }

    @Test
    void oneValueMakesNoChartAndTwoDo() {
        assertThat(IndividualsChart.of(List.of(1.0, 3.0)).meanMove()).isEqualTo(2);
        assertThatThrownBy(() -> IndividualsChart.of(List.of(1.0))).hasMessageContaining("there are 1");
    }
}
