package org.cupwright.rotation.counting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SharesTest {
    @Test
    void thirdsOfEighteenAreSix() {
        assertThat(Shares.THIRDS.holesOff(new Parts(6, 6, 6))).isZero();
        assertThat(Shares.THIRDS.holesOff(new Parts(7, 6, 5))).isEqualTo(1);
        assertThat(Shares.THIRDS.holesOff(new Parts(18, 0, 0))).isEqualTo(12);
    }

    @Test
    void everyRoundingIsAsGood() {
        assertThat(Shares.THIRDS.holesOff(new Parts(3, 4, 3))).isZero();
        assertThat(Shares.THIRDS.holesOff(new Parts(0, 1, 0))).isZero();
        assertThat(Shares.THIRDS.holesOff(new Parts(5, 3, 2))).isEqualTo(1);
        assertThat(Shares.THIRDS.holesOff(new Parts(0, 0, 0))).isZero();
    }

    @Test
    void aBusyDayHasNineEasierSixMediumThreeHarder() {
        assertThat(new Shares(3, 2, 1).holesOff(new Parts(9, 6, 3))).isZero();
        assertThat(new Shares(3, 2, 1).holesOff(new Parts(6, 6, 6))).isEqualTo(3);
    }

    /** Against the definition: the fewest holes to move until some even spread is reached. */
    @Test
    void holesOffIsTheShortestWayToAnEvenSpread() {
        for (Shares shares : new Shares[] {Shares.THIRDS, new Shares(3, 2, 1), new Shares(1, 1, 0)}) {
            for (int holes = 0; holes <= 20; holes++) {
                for (int first = 0; first <= holes; first++) {
                    for (int second = 0; first + second <= holes; second++) {
                        Parts parts = new Parts(first, second, holes - first - second);
                        assertThat(shares.holesOff(parts))
                                .as("%s, %s", shares, parts)
                                .isEqualTo(shortestWay(shares, parts));
                    }
                }
            }
        }
    }

    private static int shortestWay(Shares shares, Parts parts) {
        int holes = parts.total();
        double sum = shares.first() + shares.second() + shares.third();
        int shortest = Integer.MAX_VALUE;
        for (int first = 0; first <= holes; first++) {
            for (int second = 0; first + second <= holes; second++) {
                int third = holes - first - second;
                boolean even = rounded(first, holes * shares.first() / sum)
                        && rounded(second, holes * shares.second() / sum)
                        && rounded(third, holes * shares.third() / sum);
                if (even) {
                    int moved = Math.abs(first - parts.first())
                            + Math.abs(second - parts.second())
                            + Math.abs(third - parts.third());
                    shortest = Math.min(shortest, moved / 2);
                }
            }
        }
        return shortest;
    }

    private static boolean rounded(int count, double share) {
        return Math.abs(count - share) < 1 - 1e-9;
    }

    @Test
    void refusesSharesOfNothing() {
        assertThatThrownBy(() -> new Shares(0, 0, 0)).hasMessageContaining("not shares");
        assertThatThrownBy(() -> new Shares(2, -1, 0)).hasMessageContaining("not shares");
    }
}
