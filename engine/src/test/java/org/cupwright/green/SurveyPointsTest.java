package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class SurveyPointsTest {
    private static final double[] EAST = {1, 2, 3};
    private static final double[] NORTH = {4, 5, 6};
    private static final double[] HEIGHT = {7, 8, 9};

    private final SurveyPoints scattered = SurveyPoints.scattered(EAST, NORTH, HEIGHT);

    @Test
    void aGridHasACellAndAnErrorAndScatteredPointsHaveNeither() {
        SurveyPoints grid = SurveyPoints.grid(0.5, 0.01, EAST, NORTH, HEIGHT);
        assertThat(grid.gridCellMetres()).hasValue(0.5);
        assertThat(grid.givenSigmaMetres()).hasValue(0.01);
        assertThat(scattered.gridCellMetres()).isEmpty();
        assertThat(scattered.givenSigmaMetres()).isEmpty();
    }

    @Test
    void somePointsKeepTheirOrderAndKind() {
        SurveyPoints some = SurveyPoints.grid(0.5, 0.01, EAST, NORTH, HEIGHT).where(i -> i != 1);
        assertThat(some.count()).isEqualTo(2);
        assertThat(some.east(1)).isEqualTo(3);
        assertThat(some.north(1)).isEqualTo(6);
        assertThat(some.heightMetres(1)).isEqualTo(9);
        assertThat(some.gridCellMetres()).hasValue(0.5);
    }

    @Test
    void theSamePointsAreThoseOfTheSameNumbersAndKind() {
        List<SurveyPoint> points =
                List.of(new SurveyPoint(1, 4, 7), new SurveyPoint(2, 5, 8), new SurveyPoint(3, 6, 9));
        assertThat(scattered.sameAs(SurveyPoints.scattered(points))).isTrue();
        assertThat(scattered.sameAs(SurveyPoints.scattered(HEIGHT, NORTH, HEIGHT)))
                .isFalse();
        assertThat(scattered.sameAs(SurveyPoints.scattered(EAST, HEIGHT, HEIGHT)))
                .isFalse();
        assertThat(scattered.sameAs(SurveyPoints.scattered(EAST, NORTH, EAST))).isFalse();
        SurveyPoints grid = SurveyPoints.grid(0.5, 0.01, EAST, NORTH, HEIGHT);
        assertThat(grid.sameAs(SurveyPoints.grid(0.5, 0.01, EAST, NORTH, HEIGHT)))
                .isTrue();
        assertThat(grid.sameAs(SurveyPoints.grid(0.6, 0.01, EAST, NORTH, HEIGHT)))
                .isFalse();
        assertThat(grid.sameAs(SurveyPoints.grid(0.5, 0.02, EAST, NORTH, HEIGHT)))
                .isFalse();
        assertThat(grid.sameAs(scattered)).isFalse();
    }

    @Test
    void whatIsNoSurveyIsRefused() {
        double[] two = {1, 2};
        double[] unknown = {7, Double.NaN, 9};
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurveyPoints.scattered(two, NORTH, HEIGHT))
                .withMessageContaining("2, 3, 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurveyPoints.scattered(EAST, NORTH, two))
                .withMessageContaining("3, 3, 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurveyPoints.scattered(EAST, NORTH, unknown))
                .withMessageContaining("point 1");
        assertThatIllegalArgumentException().isThrownBy(() -> SurveyPoints.scattered(unknown, NORTH, HEIGHT));
        assertThatIllegalArgumentException().isThrownBy(() -> SurveyPoints.scattered(EAST, unknown, HEIGHT));
        assertThatIllegalArgumentException().isThrownBy(() -> SurveyPoints.grid(0, 0.01, EAST, NORTH, HEIGHT));
        assertThatIllegalArgumentException().isThrownBy(() -> SurveyPoints.grid(0.5, 0, EAST, NORTH, HEIGHT));
    }
}
