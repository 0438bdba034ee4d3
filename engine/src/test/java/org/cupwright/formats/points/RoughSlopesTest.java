package org.cupwright.formats.points;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;
import org.junit.jupiter.api.Test;

class RoughSlopesTest {
    private static final double EAST = 484_000;
    private static final double NORTH = 4_432_000;

    /** Points a metre apart from half a metre off the sides of a square, so that every square of 4 m has sixteen. */
    private static SurveyPoints square(int half, DoubleBinaryOperator height) {
        List<SurveyPoint> points = new ArrayList<>();
        for (double x = 0.5 - half; x < half; x++) {
            for (double y = 0.5 - half; y < half; y++) {
                points.add(new SurveyPoint(EAST + x, NORTH + y, height.applyAsDouble(x, y)));
            }
        }
        return SurveyPoints.scattered(points);
    }

    /** Points of a triangle, row by row: east and north hang together. */
    private static SurveyPoints triangle(int rows, DoubleBinaryOperator height) {
        List<SurveyPoint> points = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int i = 0; i <= row; i++) {
                points.add(new SurveyPoint(EAST + i, NORTH + row, height.applyAsDouble(i, row)));
            }
        }
        return SurveyPoints.scattered(points);
    }

    @Test
    void onePlaneHasItsSlopeWhicheverWayItFalls() {
        assertThat(RoughSlopes.whole(triangle(5, (x, y) -> 7 + 0.03 * x + 0.04 * y))
                        .orElseThrow())
                .isCloseTo(0.05, within(1e-9));
        assertThat(RoughSlopes.whole(triangle(5, (x, y) -> 7 - 0.12 * x + 0.05 * y))
                        .orElseThrow())
                .isCloseTo(0.13, within(1e-9));
    }

    @Test
    void tenPointsAreEnoughAndSixAreNot() {
        assertThat(RoughSlopes.whole(triangle(4, (x, y) -> 0.02 * x)).orElseThrow())
                .isCloseTo(0.02, within(1e-9));
        assertThat(RoughSlopes.whole(triangle(3, (x, y) -> 0.02 * x))).isEmpty();
    }

    @Test
    void pointsAlongALineHaveNoSlope() {
        List<SurveyPoint> line = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            line.add(new SurveyPoint(EAST + i, NORTH + 2 * i, 0.05 * i));
        }
        assertThat(RoughSlopes.whole(SurveyPoints.scattered(line))).isEmpty();
        assertThat(RoughSlopes.middle(SurveyPoints.scattered(line))).isEmpty();
    }

    /** 484,000 and 4,432,000 are multiples of four: the roof's ridge is a border of the squares. */
    @Test
    void aRoofIsLevelAsAWholeAndSteepInItsParts() {
        SurveyPoints alongNorth = square(4, (x, y) -> -0.05 * Math.abs(x));
        assertThat(RoughSlopes.whole(alongNorth).orElseThrow()).isCloseTo(0, within(1e-9));
        assertThat(RoughSlopes.middle(alongNorth).orElseThrow()).isCloseTo(0.05, within(1e-9));
        SurveyPoints alongEast = square(4, (x, y) -> -0.05 * Math.abs(y));
        assertThat(RoughSlopes.whole(alongEast).orElseThrow()).isCloseTo(0, within(1e-9));
        assertThat(RoughSlopes.middle(alongEast).orElseThrow()).isCloseTo(0.05, within(1e-9));
    }

    @Test
    void theMiddleOfFourSlopesIsTheThird() {
        SurveyPoints four = square(4, (x, y) -> (x < 0 ? 0.01 : 0.03) * y + (y < 0 ? 0 : 0.04) * x);
        // 0.01, 0.03, √(0.01² + 0.04²) = 0.041231, √(0.03² + 0.04²) = 0.05
        assertThat(RoughSlopes.middle(four).orElseThrow()).isCloseTo(0.041_231, within(1e-6));
    }
}
