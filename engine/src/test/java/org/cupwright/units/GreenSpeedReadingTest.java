package org.cupwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class GreenSpeedReadingTest {
    @Test
    void theSameBothWaysIsLevel() {
        GreenSpeedReading reading = new GreenSpeedReading(9.5, 9.5);

        assertThat(reading.speed()).isEqualTo(new GreenSpeed(9.5));
        assertThat(reading.slope()).isZero();
    }

    @Test
    void fartherUpThanDownIsASlipOfThePen() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new GreenSpeedReading(9, 14))
                .withMessageContaining("try the two the other way round");
    }

    @Test
    void noDistanceIsNoReading() {
        assertThatIllegalArgumentException().isThrownBy(() -> new GreenSpeedReading(9, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new GreenSpeedReading(Double.NaN, 9));
    }

    @Test
    void aReadingOutsideWhatGreensHaveIsNoSpeed() {
        GreenSpeedReading reading = new GreenSpeedReading(20, 2);

        assertThatIllegalArgumentException().isThrownBy(reading::speed);
    }
}
