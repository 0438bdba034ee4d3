package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.cupwright.policy.Policy;
import org.junit.jupiter.api.Test;

class SharingPolicyTest {
    /** Seven by seven points a metre apart, in lines or jumping about (19 and 49 have no common divisor). */
    private static SurveyPoints square(boolean jumping) {
        double[] east = new double[49];
        double[] north = new double[49];
        for (int i = 0; i < 49; i++) {
            int at = jumping ? 19 * i % 49 : i;
            east[i] = at / 7;
            north[i] = at / 7 % 2 == 0 ? at % 7 : 6 - at % 7;
        }
        return SurveyPoints.scattered(east, north, new double[49]);
    }

    private static Sharing of(SurveyKind kind, SurveyPoints points) {
        return SharingPolicy.of(points.as(kind), Policy.defaults());
    }

    @Test
    void theWalkIsMeasuredFromPointToPoint() {
        double[] walked = Walk.metres(square(false));
        assertThat(walked[0]).isZero();
        assertThat(walked[48]).isEqualTo(48);
        assertThat(Walk.isWalked(square(false))).isTrue();
        assertThat(Walk.isWalked(square(true))).isFalse();
    }

    @Test
    void aReceiversDriftRunsAlongTheWalkAndOverTheGroundWhereTheOrderIsNoWalk() {
        assertThat(of(SurveyKind.RTK, square(false))).isEqualTo(new Sharing(0.008, 60, true));
        assertThat(of(SurveyKind.RTK, square(true))).isEqualTo(new Sharing(0.008, 3, false));
    }

    @Test
    void eachKindHasItsOwnAndLevelledPointsShareNothing() {
        assertThat(of(SurveyKind.DRONE, square(true))).isEqualTo(new Sharing(0.008, 3, false));
        assertThat(of(SurveyKind.LIDAR, square(true))).isEqualTo(new Sharing(0.010, 20, false));
        assertThat(of(SurveyKind.SCAN, square(true))).isEqualTo(new Sharing(0.002, 10, false));
        assertThat(of(SurveyKind.LEVELLED, square(true)).isNone()).isTrue();
    }

    @Test
    void aSharedErrorHasALength() {
        assertThatThrownBy(() -> new Sharing(0.01, 0, false)).isInstanceOf(IllegalArgumentException.class);
    }
}
