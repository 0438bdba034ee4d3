package org.cupwright.roll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.Surface;
import org.cupwright.testing.Shapes;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;

class BallRollerTest {
    private static final MapPoint ORIGIN = new MapPoint(0, 0);
    private static final Heading NORTH = new Heading(0);
    private static final Heading EAST = new Heading(90);
    private static final GreenSpeed TEN_FEET = new GreenSpeed(10);
    private static final Surface LEVEL = MadeSurface.plane(0, 0);

    @Test
    void ballThatLeavesTheGreenEndsOnItsEdge() {
        Outline outline = Shapes.circle(0, 0, 1.7);

        Roll roll = new BallRoller(LEVEL, TEN_FEET, Edge.of(outline)).roll(ORIGIN, new Heading(20), 1.8288);

        assertThat(roll.end()).isEqualTo(RollEnd.OFF_GREEN);
        assertThat(outline.distanceToEdgeMetres(roll.stop())).isLessThan(1e-6);
        assertThat(roll.pathMetres()).isCloseTo(ORIGIN.distanceMetres(roll.stop()), within(1e-9));
        double deceleration = TEN_FEET.decelerationOnLevel();
        double leaves = Math.sqrt(1.8288 * 1.8288 - 2 * deceleration * roll.pathMetres());
        assertThat(roll.seconds()).isCloseTo((1.8288 - leaves) / deceleration, within(1e-6));
    }

    /** 1 mm before its stop, within the part that is rolled in closed form. */
    @Test
    void ballThatLeavesTheGreenInItsLastMillimetresEndsOnItsEdge() {
        Outline outline = Shapes.rectangle(-5, -5, 3.047, 5);

        Roll roll = new BallRoller(LEVEL, TEN_FEET, Edge.of(outline)).roll(ORIGIN, EAST, 1.8288);

        assertThat(roll.end()).isEqualTo(RollEnd.OFF_GREEN);
        assertThat(roll.stop().east()).isCloseTo(3.047, within(1e-6));
    }

    @Test
    void ballThatStopsJustShortOfTheEdgeRestsOnTheGreen() {
        Outline outline = Shapes.rectangle(-5, -5, 3.0481, 5);

        Roll roll = new BallRoller(LEVEL, TEN_FEET, Edge.of(outline)).roll(ORIGIN, EAST, 1.8288);

        assertThat(roll.end()).isEqualTo(RollEnd.REST);
    }

    @Test
    void ballThatStartsOffTheGreenIsOffAtOnce() {
        Edge edge = Edge.of(Shapes.rectangle(1, 1, 2, 2));

        Roll roll = new BallRoller(LEVEL, TEN_FEET, edge).roll(ORIGIN, EAST, 1);

        assertThat(roll).isEqualTo(new Roll(ORIGIN, 0, 0, 0, RollEnd.OFF_GREEN));
    }

    @Test
    void ballAtRestStaysWhereTheSlopeHoldsIt() {
        Roll roll = new BallRoller(MadeSurface.plane(0, 0.07), TEN_FEET).roll(ORIGIN, EAST, 0);

        assertThat(roll).isEqualTo(new Roll(ORIGIN, 0, 0, 0, RollEnd.REST));
    }

    @Test
    void ballLaidOnTooSteepASlopeRunsAwayDownTheFallLine() {
        Roll roll = new BallRoller(MadeSurface.plane(0, 0.09), TEN_FEET).roll(ORIGIN, EAST, 0);

        assertThat(roll.end()).isEqualTo(RollEnd.RUNNING);
        assertThat(roll.stop().north()).isLessThan(-90);
        assertThat(roll.stop().east()).isCloseTo(0, within(1e-9));
        assertThat(roll.seconds()).isLessThanOrEqualTo(BallRoller.MOST_SECONDS);
    }

    /** Straight up a slope of 9 % at ρ 7.83 %: up v²/(2(σ+f)), then back past the start. */
    @Test
    void ballThatTurnsRoundOnASteepSlopeComesBack() {
        double slope = 0.09;
        BallRoller roller = new BallRoller(MadeSurface.plane(0, slope), TEN_FEET);
        double cosSlope = 1 / Math.sqrt(1 + slope * slope);
        double braking = 5.0 / 7.0 * 9.81 * cosSlope * (slope + TEN_FEET.rollingResistance());

        RollState state = BallAtTime.after(1 / braking, roller, 0, 1, 1);
        assertThat(state.end).isNull();
        assertThat(state.north).isCloseTo(cosSlope / (2 * braking), within(1e-6));

        Roll roll = roller.roll(ORIGIN, NORTH, 1);
        assertThat(roll.end()).isEqualTo(RollEnd.RUNNING);
        assertThat(roll.stop().north()).isLessThan(-90);
    }

    /** A tier of 0.2 m in 1.5 m (13 % on average): short of its top the ball comes back and rests at its foot. */
    @Test
    void ballThatDoesNotClimbATierRollsBackAndRests() {
        Surface tier = MadeSurface.plane(0, 0).withTier(new MadeSurface.Tier(2, 0, 1, 0, 0.2, 1.5));

        Roll roll = new BallRoller(tier, TEN_FEET).roll(ORIGIN, EAST, 2.0);

        assertThat(roll.end()).isEqualTo(RollEnd.REST);
        assertThat(roll.stop().east()).isLessThan(1.3);
        assertThat(roll.pathMetres()).isGreaterThan(roll.stop().east() + 0.3);
    }

    @Test
    void pathIsLongerAlongTheGroundThanOnTheMap() {
        Roll roll = new BallRoller(MadeSurface.plane(0.06, 0), TEN_FEET).roll(ORIGIN, EAST, 1.5);

        assertThat(roll.pathMetres()).isCloseTo(roll.stop().east(), within(1e-9));
        assertThat(roll.pathGroundMetres()).isCloseTo(roll.pathMetres() * Math.sqrt(1 + 0.06 * 0.06), within(1e-9));
    }

    /** On the level a ball rolls straight: the way is a row of places on a line, from its start to where it stops. */
    @Test
    void wayOnTheLevelIsALineToWhereTheBallStops() {
        List<MapPoint> path = new BallRoller(LEVEL, TEN_FEET).path(ORIGIN, EAST, 1.8288, 0.25);

        assertThat(path.get(0)).isEqualTo(ORIGIN);
        assertThat(path.get(path.size() - 1).distanceMetres(ORIGIN)).isCloseTo(3.048, within(1e-6));
        for (int i = 1; i < path.size(); i++) {
            assertThat(path.get(i).north()).isCloseTo(0, within(1e-9));
            double step = path.get(i).east() - path.get(i - 1).east();
            assertThat(step).isPositive().isLessThan(0.25 + 0.2 + 1e-9);
            assertThat(i == path.size() - 1 || step >= 0.25 - 1e-9).isTrue();
        }
    }

    @Test
    void wayEndsWhereTheRollEnds() {
        BallRoller roller = new BallRoller(MadeSurface.gentle(4, 10), TEN_FEET);
        List<MapPoint> path = roller.path(ORIGIN, new Heading(35), 2.1, 0.1);

        assertThat(path.get(path.size() - 1))
                .isEqualTo(roller.roll(ORIGIN, new Heading(35), 2.1).stop());
    }

    @Test
    void wayOfABallOffTheGreenIsItsStart() {
        Edge edge = (east, north) -> east > 1;
        assertThat(new BallRoller(LEVEL, TEN_FEET, edge).path(ORIGIN, EAST, 1, 0.1))
                .containsExactly(ORIGIN);
    }

    /** The green's speed is how far the measuring bar's ball rolls on the level: 10 ft at 1.8288 m/s. */
    @Test
    void launchForTheLevelIsThatOfTheMeasuringBarAtTheGreensSpeed() {
        BallRoller roller = new BallRoller(LEVEL, TEN_FEET);

        assertThat(roller.launchForLevel(3.048)).isCloseTo(1.8288, within(1e-9));
        assertThat(roller.roll(ORIGIN, EAST, roller.launchForLevel(7)).pathMetres())
                .isCloseTo(7, within(1e-5));
    }

    @Test
    void stateCanBeUsedAgain() {
        BallRoller roller = new BallRoller(MadeSurface.gentle(4, 10), TEN_FEET);
        RollState state = new RollState();

        roller.stopOf(1, 2, 0.6, 0.8, 1.5, state);
        Roll first = state.toRoll();
        roller.stopOf(-3, 0, 1, 0, 2.5, state);
        roller.stopOf(1, 2, 0.6, 0.8, 1.5, state);

        assertThat(state.toRoll()).isEqualTo(first);
        assertThat(state.velocityEast).isZero();
    }

    @Test
    void launchMustBeASpeed() {
        BallRoller roller = new BallRoller(LEVEL, TEN_FEET);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> roller.roll(ORIGIN, EAST, -1))
                .withMessageContaining("launch speed -1.0 m/s");
        assertThatIllegalArgumentException().isThrownBy(() -> roller.roll(ORIGIN, EAST, Double.NaN));
    }
}
