package org.cupwright.app.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.cupwright.message.Problem;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GroundUnitTest {
    /** A pace is 0.9 m here; a foot is 0.3048 m by its definition (international yard and pound agreement, 1959). */
    @ParameterizedTest
    @CsvSource({
        "METRIC, 3, 3, begin.measure.metres, 3",
        "IMPERIAL, 10, 3.048, begin.measure.feet, 9",
        "PACES, 3, 2.7, begin.measure.paces, 3",
        "PACES, 2½, 2.25, begin.measure.paces, 3",
        "IMPERIAL, '2,5', 0.762, begin.measure.feet, 9"
    })
    void whatIsTypedIsInTheUnitThatStandsBehindIt(
            UnitSystem units, String typed, double metres, String key, String usual) {
        GroundUnit unit = new GroundUnit(units, 0.9);
        assertThat(unit.radiusMetres(typed)).isCloseTo(metres, within(1e-9));
        assertThat(unit.key()).isEqualTo(key);
        assertThat(unit.usual(3)).isEqualTo(usual);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "-2", "far", "30.1", "1e9"})
    void whatIsNoDistanceIsRefusedInWords(String typed) {
        assertThatThrownBy(() -> new GroundUnit(UnitSystem.METRIC, 0.9).radiusMetres(typed))
                .isInstanceOfSatisfying(
                        Problem.class, one -> assertThat(one.what().key()).isEqualTo("problem.wish.within"));
    }

    /** Thirty metres are 98.4 ft. */
    @Test
    void asFarAsTheCommandsAllowInEveryUnit() {
        assertThat(new GroundUnit(UnitSystem.IMPERIAL, 0.9).radiusMetres("98.4"))
                .isLessThanOrEqualTo(30);
        assertThatThrownBy(() -> new GroundUnit(UnitSystem.IMPERIAL, 0.9).radiusMetres("98.5"))
                .isInstanceOf(Problem.class);
    }
}
