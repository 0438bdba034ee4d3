package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.Policy;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;

class LevelReadingTest {
    private static final MapPoint SPOT = new MapPoint(3, 4);

    @Test
    void groundThatFallsEastRisesWest() {
        LevelReading reading = LevelReading.steepest(SPOT, 2.5, new Heading(90), 0.1);

        assertThat(reading.gradientEast()).isCloseTo(-0.025, within(1e-15));
        assertThat(reading.gradientNorth()).isCloseTo(0, within(1e-15));
        assertThat(reading.plane().slopePercent()).isCloseTo(2.5, within(1e-12));
        assertThat(reading.plane().downhill().orElseThrow().degrees()).isCloseTo(90, within(1e-9));
        assertThat(reading.plane().slopeStandardError()).isCloseTo(0.001, within(1e-15));
    }

    @Test
    void twoReadingsAcrossEachOtherGiveTheGradient() {
        LevelReading square = LevelReading.across(SPOT, 1.5, new Heading(0), -2, new Heading(90), 0.1);
        double root = Math.sqrt(0.5);
        LevelReading turned = LevelReading.across(
                SPOT, 100 * root * 0.03, new Heading(45), 100 * root * -0.03, new Heading(315), 0.1);

        assertThat(square.gradientNorth()).isCloseTo(0.015, within(1e-12));
        assertThat(square.gradientEast()).isCloseTo(-0.02, within(1e-12));
        assertThat(turned.gradientEast()).isCloseTo(0.03, within(1e-12));
        assertThat(turned.gradientNorth()).isCloseTo(0, within(1e-12));
    }

    @Test
    void readingsNotQuiteSquareCountForLessAndAlmostAlongEachOtherAreRefused() {
        LevelReading skew = LevelReading.across(SPOT, 1, new Heading(0), 1, new Heading(65), 0.1);

        assertThat(skew.standardError()).isGreaterThan(0.001);
        assertThatThrownBy(() -> LevelReading.across(SPOT, 1, new Heading(0), 1, new Heading(20), 0.1))
                .hasMessageContaining("right angle");
    }

    @Test
    void levelSpotsAreKnownForTheirReachAndNoFurther() {
        LevelReading reading = LevelReading.steepest(SPOT, 2, new Heading(0), 0.1);
        LevelReading later = LevelReading.steepest(SPOT, 3, new Heading(0), 0.1);
        Ground ground = new LevelSpotsGround(List.of(reading, later), Policy.defaults());
        MapPoint near = new MapPoint(3.5, 4.3);
        MapPoint off = new MapPoint(3.5, 4.4);

        assertThat(ground.restsOn()).isEqualTo(RestsOn.LEVELS);
        assertThat(ground.coverageAt(near)).isEqualTo(Coverage.KNOWN);
        assertThat(ground.planeAt(near).orElseThrow().slopePercent()).isCloseTo(3, within(1e-9));
        assertThat(ground.coverageAt(off)).isEqualTo(Coverage.NOT_MEASURED);
        assertThat(ground.planeAt(off)).isEmpty();
        assertThat(ground.surface()).isEmpty();
        assertThat(ground.bendAt(SPOT, 0.91)).isEmpty();
    }

    @Test
    void anOutlineSaysNothingOfSlopes() {
        Ground ground = new LevelSpotsGround(List.of(), Policy.defaults());

        assertThat(ground.restsOn()).isEqualTo(RestsOn.OUTLINE);
        assertThat(ground.coverageAt(SPOT)).isEqualTo(Coverage.NOT_MEASURED);
        assertThat(ground.planeAt(SPOT)).isEmpty();
        assertThat(ground.surveySigmaMetres()).isNaN();
    }
}
