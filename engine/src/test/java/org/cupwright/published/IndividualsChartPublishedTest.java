package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.turf.signal.IndividualsChart;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Charts of single values and moving ranges on published data. */
class IndividualsChartPublishedTest {
    /**
     * "Jets", a sample data set of SAS/QC: 20 inner diameters, cm. Limits derived with 3/1.128 and 3.267; half a last
     * digit.
     */
    @Test
    @DisplayName("Jets: 80.39, limits 66.2243 and 94.5557, moves up to 17.4011")
    void jets() {
        IndividualsChart chart = IndividualsChart.of(List.of(
                78.4, 80.1, 84.4, 79.1, 80.4, 83.5, 73.8, 83.5, 75.0, 76.8, 70.5, 80.3, 82.4, 79.4, 86.4, 90.5, 77.7,
                82.5, 79.9, 83.2));
        assertThat(chart.mean()).isCloseTo(80.39, within(0.005));
        assertThat(chart.meanMove()).isCloseTo(5.32632, within(0.000005));
        assertThat(chart.upperLimit()).isCloseTo(94.5557, within(0.00005));
        assertThat(chart.lowerLimit()).isCloseTo(66.2243, within(0.00005));
        assertThat(chart.upperMoveLimit())
                .isCloseTo(17.4011, within(0.00006)); // half a digit of MR̄ and of the product
        assertThat(chart.outside()).isEmpty();
    }

    /**
     * NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2 (data recalled): limits as printed, half a last digit.
     */
    @Test
    @DisplayName("Handbook: 50.81, moves of 1.8778, limits 45.8159 and 55.8041")
    void handbook() {
        IndividualsChart chart =
                IndividualsChart.of(List.of(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1));
        assertThat(chart.mean()).isCloseTo(50.81, within(0.005));
        assertThat(chart.meanMove()).isCloseTo(1.8778, within(0.00005));
        assertThat(chart.outside()).isEmpty();
        assertThat(chart.upperLimit()).isCloseTo(55.8041, within(0.00005));
        assertThat(chart.lowerLimit()).isCloseTo(45.8159, within(0.00005));
    }
}
