package org.cupwright.holelocation.levelround;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaneFit;
import org.cupwright.holelocation.rule.LevelLimits;
import org.junit.jupiter.api.Test;

/** The arithmetic of a round, by hand. */
class RoundMathTest {
    private static final Offset<Double> EXACT = within(1e-12);

    /** How exact the normal distribution is taken to be, see {@link Chances}. */
    private static final Offset<Double> OF_NORMAL = within(2.5e-4);

    private static final GradientSpread NOTHING = new GradientSpread(0, 0, 0);

    private static void equal(GradientSpread actual, double east2, double eastNorth, double north2) {
        assertThat(actual.east2()).isCloseTo(east2, EXACT);
        assertThat(actual.eastNorth()).isCloseTo(eastNorth, EXACT);
        assertThat(actual.north2()).isCloseTo(north2, EXACT);
    }

    @Test
    void spreadsAddSubtractAndInvert() {
        GradientSpread spread = new GradientSpread(4, 2, 3);
        equal(spread.plus(new GradientSpread(1, 0.5, 2)), 5, 2.5, 5);
        equal(spread.less(new GradientSpread(1, 0.5, 2)), 3, 1.5, 1);
        // determinant 4·3 − 2·2 = 8
        equal(spread.inverse(), 3.0 / 8, -2.0 / 8, 4.0 / 8);
    }

    @Test
    void theDeviationIsThatAlongADirection() {
        GradientSpread spread = new GradientSpread(4, 2, 3);
        assertThat(spread.along(1, 0)).isCloseTo(2, EXACT);
        assertThat(spread.along(0, 1)).isCloseTo(Math.sqrt(3), EXACT);
        // 0.36·4 + 2·0.6·0.8·2 + 0.64·3 = 1.44 + 1.92 + 1.92
        assertThat(spread.along(0.6, 0.8)).isCloseTo(Math.sqrt(5.28), EXACT);
        assertThat(new GradientSpread(-1e-18, 0, 0).along(1, 0)).isZero();
    }

    @Test
    void whatAReadingTakesOffIsCKC() {
        // C = [1 2; 3 4], K = [2 1; 1 3]: C K = [4 7; 10 15], C K C' = [4+14 12+28; 10+30 30+60]
        equal(Tie.of(new double[] {1, 2, 3, 4}).taken(new GradientSpread(2, 1, 3)), 18, 40, 90);
    }

    @Test
    void aTieAfterAnotherReadingIsLessByWhatBothOweToIt() {
        // C₁ K = [4 7; 10 15] as above; C₂' = [1 5; 3 7] for C₂ = [1 3; 5 7]
        // C₁ K C₂' = [4+21 20+49; 10+45 50+105]
        Tie after = new Tie(100, 200, 300, 400)
                .after(new Tie(1, 2, 3, 4), new GradientSpread(2, 1, 3), new Tie(1, 3, 5, 7));
        assertThat(after).isEqualTo(new Tie(100 - 25, 200 - 69, 300 - 55, 400 - 155));
    }

    private static RoundSpot spot(double east, double north) {
        return new RoundSpot(new MapPoint(east, north), Optional.empty(), Optional.empty(), 1);
    }

    @Test
    void aWalkBeginsInFrontAndIsTheShortest() {
        RoundSpot front = spot(0, 0);
        RoundSpot left = spot(-3, 4);
        RoundSpot right = spot(2, 5);
        RoundSpot back = spot(-2, 9);
        // 0–left 5, left–right 5.10, right–back 5.66; 0–right 5.39, right–left 5.10, left–back 5.10: 15.59 is least
        assertThat(Walk.over(List.of(back, left, right, front), MapPoint::north))
                .containsExactly(front, right, left, back);
        // the other way round it begins at the other end: back–left 5.10, left–front 5, front–right 5.39
        assertThat(Walk.over(List.of(front, left, right, back), point -> -point.north()))
                .containsExactly(back, left, front, right);
        assertThat(Walk.over(List.of(), MapPoint::north)).isEmpty();
        assertThat(Walk.over(List.of(back), MapPoint::north)).containsExactly(back);
    }

    @Test
    void theExpectedShareIsOfTheUndecidedGround() {
        assertThat(new LevelRound(List.of(), 40, 10).expectedShare()).isEqualTo(0.25);
        assertThat(new LevelRound(List.of(), 0, 0).expectedShare()).isZero();
    }

    @Test
    void aSpotKnowsItsDirectionOfSteepestRise() {
        MapPoint at = new MapPoint(1, 2);
        OpenSpot rising = OpenSpot.of(at, new PlaneFit(0.03, -0.04, 4e-6, 1e-6, 9e-6), true);
        assertThat(rising.slopePercent()).isCloseTo(5, EXACT);
        assertThat(rising.unitEast()).isCloseTo(0.6, EXACT);
        assertThat(rising.unitNorth()).isCloseTo(-0.8, EXACT);
        equal(rising.now(), 4e-6, 1e-6, 9e-6);
        assertThat(rising.undecided()).isTrue();
        OpenSpot level = OpenSpot.of(at, new PlaneFit(0, 0, 4e-6, 0, 9e-6), false);
        assertThat(List.of(level.unitEast(), level.unitNorth())).containsExactly(1.0, 0.0);
    }

    /** A spot that rises eastwards, its slope known with a deviation in points. */
    private static OpenSpot rising(double percent, double deviationPoints) {
        double variance = Math.pow(deviationPoints / 100, 2);
        return OpenSpot.of(new MapPoint(0, 0), new PlaneFit(percent / 100, 0, variance, 0, variance), true);
    }

    private static GradientSpread taken(double deviationPoints) {
        double variance = Math.pow(deviationPoints / 100, 2);
        return new GradientSpread(variance, 0, variance);
    }

    /** Passes below 2, caution to 3, fails above. */
    private final Chances chances = new Chances(new LevelLimits(3, 2, 0));

    @Test
    void aReadingThatSettlesAllDecidesForSure() {
        assertThat(chances.decided(rising(1.9, 0.3), taken(0.3))).isCloseTo(1, OF_NORMAL);
    }

    @Test
    void aReadingThatTellsNothingLeavesTheAnswerAsItIs() {
        assertThat(chances.decided(rising(1.9, 0.3), NOTHING)).isZero();
        assertThat(chances.decided(rising(1.3, 0.3), NOTHING)).isEqualTo(1); // 1.3 + 0.6 < 2
        assertThat(chances.decided(rising(2.5, 0.2), NOTHING)).isEqualTo(1); // between 2.4 and 2.6
        assertThat(chances.decided(rising(3.7, 0.3), NOTHING)).isEqualTo(1); // 3.7 − 0.6 > 3
        assertThat(chances.decided(rising(2.5, 0.3), NOTHING)).isZero(); // 1.9 to 3.1
    }

    @Test
    void inBetweenItIsTheChanceOfASlopeFarEnoughFromEveryBound() {
        // error 0.5 = √(0.3² + 0.4²): the reading shows the part of 0.4, 0.3 stays, two of them are 0.6; the slope
        // shown
        // must lie below 1.4 or above 3.6, as 2.6 to 2.4 is nowhere: Φ((1.4 − 2)/0.4) + 1 − Φ((3.6 − 2)/0.4)
        // = Φ(−1.5) + Φ(−4) = 0.06681 + 0.00003
        assertThat(chances.decided(rising(2, 0.5), taken(0.4))).isCloseTo(0.06684, within(5e-4));
        // the other way: 0.4 stays hidden of 0.5 by 0.3 shown; below 1.2, above 3.8: Φ(−2.667) = 0.00383
        assertThat(chances.decided(rising(2, 0.5), taken(0.3))).isCloseTo(0.00383, within(5e-4));
        // 0.1 = √(0.06² + 0.08²): below 1.88, 2.12 to 2.88, above 3.12, about 2.04 with 0.08:
        // Φ(−2) + Φ(10.5) − Φ(1) = 0.02275 + 1 − 0.84134
        assertThat(chances.decided(rising(2.04, 0.1), taken(0.08))).isCloseTo(0.18141, within(7.5e-4));
    }

    @Test
    void aSpotPassesIfTheSlopeShownIsFarEnoughBelowTheBound() {
        // as above: Φ((1.4 − 1.8)/0.4) = Φ(−1) = 0.15866
        assertThat(chances.passes(rising(1.8, 0.5), taken(0.4))).isCloseTo(0.15866, OF_NORMAL);
        assertThat(chances.passes(rising(1.3, 0.3), NOTHING)).isEqualTo(1);
        assertThat(chances.passes(rising(1.5, 0.3), NOTHING)).isZero();
    }

    @Test
    void onAWetDayLevelGroundDoesNotPass() {
        Chances wet = new Chances(new LevelLimits(3, 2, 1));
        // between 1 + 0.12 and 2 − 0.12 about 1.2 with 0.08: Φ(8.5) − Φ(−1) = 1 − 0.15866
        assertThat(wet.passes(rising(1.2, 0.1), taken(0.08))).isCloseTo(0.84134, OF_NORMAL);
        assertThat(wet.passes(rising(0.5, 0.1), NOTHING)).isZero();
        // the bounds cross: 1 + 1.2 and 2 − 1.2
        assertThat(wet.passes(rising(1.5, 0.75), taken(0.45))).isZero();
    }

    @Test
    void groundIsDecidedIfTheAnswerHoldsOverTwoErrors() {
        List<Boolean> decided = Stream.of(0.3, 0.24, 0.2)
                .map(error -> chances.decided(new PlaneFit(0.015, 0, error * error / 1e4, 0, error * error / 1e4)))
                .toList();
        assertThat(decided).containsExactly(false, true, true); // 1.5 + 0.6, 1.98 and 1.9 against 2
    }
}
