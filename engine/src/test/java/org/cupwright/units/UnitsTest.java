package org.cupwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Values worked out by hand. */
class UnitsTest {
    @ParameterizedTest
    @CsvSource({"0, 0", "359.5, 359.5", "360, 0", "725, 5", "-90, 270", "-725, 355", "-1e-20, 0"})
    void headingsOfAnyNumberOfDegreesLieFromNorthToJustBeforeIt(double any, double degrees) {
        assertThat(Heading.ofDegrees(any).degrees()).isEqualTo(degrees);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 360, Double.NaN})
    void noOtherHeadingIsMade(double degrees) {
        assertThatThrownBy(() -> new Heading(degrees)).hasMessageContaining("heading " + degrees);
    }

    @ParameterizedTest
    @CsvSource({"0, 5, 0", "5, 0, 90", "0, -2, 180", "-3, 0, 270", "1, 1, 45", "-1, 1, 315"})
    void aStepHasTheHeadingThatLeadsThere(double east, double north, double degrees) {
        assertThat(Heading.ofStep(east, north).degrees()).isCloseTo(degrees, within(1e-12));
    }

    @Test
    void aStepOfNoLengthHasNone() {
        assertThatThrownBy(() -> Heading.ofStep(0, 0)).hasMessageContaining("no heading");
    }

    @Test
    void headingsTurnClockwiseAndHaveTheirUnitVector() {
        Heading heading = new Heading(350).turnedClockwise(40);
        assertThat(heading.degrees()).isEqualTo(30);
        assertThat(heading.east()).isCloseTo(0.5, within(1e-15));
        assertThat(heading.north()).isCloseTo(Math.sqrt(3) / 2, within(1e-15));
    }

    @Test
    void greenSpeedsEndAtWhatIsTakenForASlipOfThePen() {
        assertThat(new GreenSpeed(4).plus(-1).feet()).isEqualTo(4);
        assertThat(new GreenSpeed(16).plus(0.5).feet()).isEqualTo(16);
        assertThat(new GreenSpeed(9).plus(1.5).feet()).isEqualTo(10.5);
        assertThatThrownBy(() -> new GreenSpeed(3.999)).hasMessageContaining("3.999 ft");
        assertThatThrownBy(() -> new GreenSpeed(16.001)).hasMessageContaining("16.001 ft");
        assertThat(new GreenSpeed(9)).isLessThan(new GreenSpeed(9.5));
        assertThat(new GreenSpeed(9)).isEqualByComparingTo(new GreenSpeed(9));
    }

    @Test
    void aGreenOfTenFeetHoldsABallUpToSlopesOfSevenPointEightPercent() {
        // 1.8288² / (2 · 3.048) = 3.34450944 / 6.096 = 0.54864; 1.4 · 0.54864 / 9.81 = 0.0782972…
        assertThat(new GreenSpeed(10).decelerationOnLevel()).isCloseTo(0.54864, within(1e-12));
        assertThat(new GreenSpeed(10).rollingResistance()).isCloseTo(0.0782972, within(1e-7));
    }

    @Test
    void lengthsGoThereAndBack() {
        assertThat(LengthUnit.FOOT.toMetres(10)).isCloseTo(3.048, within(1e-12));
        assertThat(LengthUnit.FOOT.fromMetres(3.048)).isCloseTo(10, within(1e-12));
        // by the definition of 1893: 3937 feet are 1200 m
        assertThat(LengthUnit.US_SURVEY_FOOT.toMetres(3937)).isCloseTo(1200, within(1e-9));
        assertThat(LengthUnit.METRE.symbol() + LengthUnit.FOOT.symbol() + LengthUnit.US_SURVEY_FOOT.symbol())
                .isEqualTo("mftusft");
    }

    @Test
    void pacesAreCountedInHalves() {
        assertThat(Paces.fromMetres(9, 0.75)).isEqualTo(12);
        assertThat(Paces.toMetres(12, 0.75)).isEqualTo(9);
        // 5.9 m of 0.75 m are 7.87 paces: 8 to the nearest half, 7½ down
        assertThat(Paces.roundedToHalf(5.9, 0.75)).isEqualTo(8);
        assertThat(Paces.roundedDownToHalf(5.9, 0.75)).isEqualTo(7.5);
        // in binary 0.1 + 0.7 is a hair less than 0.8, and still one pace
        assertThat(Paces.roundedDownToHalf(0.1 + 0.7, 0.8)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "12, 12",
        "12.5, 12.5",
        "'12,5', 12.5",
        "12½, 12.5",
        "½, 0.5",
        "-½, -0.5",
        "+3, 3",
        "-3.25, -3.25",
        "' 7 ', 7"
    })
    void numbersAreReadAsPeopleTypeThem(String text, double number) {
        assertThat(WrittenNumber.find(text)).contains(number);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", ".5", ",5", "-", "5.", "1e3", "1.2.3", "½½", "seven", "٣", "1234567890123456"})
    void whatIsNoSuchNumberIsNone(String text) {
        assertThat(WrittenNumber.find(text)).isEmpty();
    }
}
