package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.cupwright.roll.Capture;
import org.cupwright.roll.DropCapture;
import org.cupwright.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The drop rule of Holmes, American Journal of Physics 59 (1991), recalled; its numbers derived with g = 9.81 m/s². */
class CapturePublishedTest {
    private final Capture capture = new DropCapture();

    /** Derived; tolerance: half the last printed digit. */
    @ParameterizedTest
    @CsvSource({"0, 1.3141", "0.010, 1.2761", "0.020, 1.1521", "0.030, 0.8767", "0.032665, 0.6520"})
    void greatestSpeedAtOffset(double offsetMetres, double metresPerSecond) {
        assertThat(capture.greatestMetresPerSecond(offsetMetres)).isCloseTo(metresPerSecond, within(5e-5));
        assertThat(capture.greatestMetresPerSecond(-offsetMetres)).isCloseTo(metresPerSecond, within(5e-5));
    }

    /**
     * 4.3 ft/s centred and 2.1 ft/s at the drop rule's end, printed in a secondary text; tolerance: half the last
     * digit.
     */
    @ParameterizedTest
    @CsvSource({"0, 4.3", "0.032665, 2.1"})
    void printedFeetPerSecond(double offsetMetres, double feetPerSecond) {
        double feet = LengthUnit.FOOT.fromMetres(capture.greatestMetresPerSecond(offsetMetres));

        assertThat(feet).isCloseTo(feetPerSecond, within(0.05));
    }

    /**
     * Our continuation: no jump where the drop rule ends, nor at the rim; beside a square root, so 1e-9 m moves it by
     * 1e-4.
     */
    @ParameterizedTest
    @CsvSource({"0.032665", "0.054"})
    void continuousWhereOneRuleTakesOver(double offsetMetres) {
        double inside = capture.greatestMetresPerSecond(offsetMetres - 1e-9);
        double outside = capture.greatestMetresPerSecond(offsetMetres + 1e-9);

        assertThat(outside).isCloseTo(inside, within(5e-4)).isLessThanOrEqualTo(inside);
    }

    @Test
    void nothingFallsInBeyondTheRimAndARestingBallOverTheHoleDoes() {
        assertThat(capture.captures(0.0541, 0)).isFalse();
        assertThat(capture.captures(0.0539, 0)).isTrue();
        assertThat(capture.captures(0, 1.32)).isFalse();
        assertThat(capture.captures(0, 1.31)).isTrue();
        assertThat(capture.holdsAtRest(0.0539)).isTrue();
        assertThat(capture.holdsAtRest(0.0541)).isFalse();
    }
}
