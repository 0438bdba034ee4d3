package org.cupwright.green.surveyed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Four points about a spot, or two, worked out by hand. */
class SpreadTest {
    private static Spread of(double... eastNorth) {
        Spread spread = new Spread();
        for (int i = 0; i < eastNorth.length; i += 2) {
            spread.add(eastNorth[i], eastNorth[i + 1]);
        }
        return spread;
    }

    /** Squares of 1, 0, 0 and 1 across: their mean is a half. */
    @Test
    void acrossTheDirectionInWhichTheySpreadMost() {
        assertThat(of(1, 0, 0, 2, 0, -2, -1, 0).leastMetres()).isCloseTo(Math.sqrt(0.5), within(1e-12));
        assertThat(of(0, 1, 2, 0, -2, 0, 0, -1).leastMetres()).isCloseTo(Math.sqrt(0.5), within(1e-12));
    }

    /** Two of them √2 off on one diagonal, two 2 √2 off on the other: the mean square across it is 4 / 4. */
    @Test
    void alongADiagonal() {
        assertThat(of(1, 1, -1, -1, 2, -2, -2, 2).leastMetres()).isCloseTo(1, within(1e-12));
        assertThat(of(1, -1, -1, 1, 2, 2, -2, -2).leastMetres()).isCloseTo(1, within(1e-12));
    }

    /** Where the spot lies among them makes no difference to how they spread. */
    @Test
    void aboutTheirOwnMiddleAndNotTheSpot() {
        assertThat(of(1 + 3, 1 + 5, -1 + 3, -1 + 5, 2 + 3, -2 + 5, -2 + 3, 2 + 5)
                        .leastMetres())
                .isCloseTo(1, within(1e-12));
        assertThat(of(1 - 7, 0 + 2, 0 - 7, 2 + 2, 0 - 7, -2 + 2, -1 - 7, 0 + 2).leastMetres())
                .isCloseTo(Math.sqrt(0.5), within(1e-12));
    }

    @Test
    void onOneLineTheyDoNotSpread() {
        assertThat(of(1, 2, 2, 4, 3, 6).leastMetres()).isCloseTo(0, within(1e-6));
        assertThat(of(4, 3).leastMetres()).isZero();
        assertThat(of().leastMetres()).isZero();
    }

    @Test
    void theNearestAndTheirNumber() {
        Spread spread = of(6, 8, 3, -4, 9, 12);
        assertThat(spread.count()).isEqualTo(3);
        assertThat(spread.nearestMetres()).isEqualTo(5);
        assertThat(of().count()).isZero();
        assertThat(of().nearestMetres()).isInfinite();
    }
}
