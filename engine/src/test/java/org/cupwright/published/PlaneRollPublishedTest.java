package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.cupwright.course.MapPoint;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.roll.BallRoller;
import org.cupwright.roll.PlaneNumbers;
import org.cupwright.roll.PlaneRoll;
import org.cupwright.roll.Roll;
import org.cupwright.roll.RollEnd;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.cupwright.units.Heading;
import org.cupwright.units.Physics;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rolls on a plane against the derived stops of {@link PlaneStop}. */
class PlaneRollPublishedTest {
    static PlaneStop[] stops() {
        return PlaneStop.all();
    }

    /** Derived; tolerance: the last printed digit. */
    @ParameterizedTest
    @MethodSource("stops")
    void closedFormGivesTheDerivedStop(PlaneStop known) {
        PlaneNumbers roll =
                PlaneNumbers.of(known.slope(), known.speed(), known.metresPerSecond(), known.degreesFromDownhill());

        assertThat(roll.down()).isCloseTo(known.down(), within(1e-6));
        assertThat(roll.across()).isCloseTo(known.across(), within(1e-6));
        assertThat(roll.seconds()).isCloseTo(known.seconds(), within(1e-6));
        assertThat(roll.pathGround()).isCloseTo(known.path(), within(1e-6));
    }

    /**
     * Derived; the integrator at its standard steps comes within 1e-5 m and 1e-5 s of it, on a plane that falls to the
     * south.
     */
    @ParameterizedTest
    @MethodSource("stops")
    void rolledBallComesToTheDerivedStop(PlaneStop known) {
        MadeSurface plane = MadeSurface.plane(0, known.slope());
        double cosSlope = 1 / Math.sqrt(1 + known.slope() * known.slope());

        Roll roll = new BallRoller(plane, known.speed())
                .roll(new MapPoint(0, 0), headingOf(known), known.metresPerSecond());

        assertThat(roll.end()).isEqualTo(RollEnd.REST);
        assertThat(-roll.stop().north()).isCloseTo(known.down() * cosSlope, within(1e-5));
        assertThat(roll.stop().east()).isCloseTo(known.across(), within(1e-5));
        assertThat(roll.seconds()).isCloseTo(known.seconds(), within(1e-5));
        assertThat(roll.pathGroundMetres()).isCloseTo(known.path(), within(1e-5));
    }

    /**
     * Derived; within 0.01 m on the surface fitted to a survey of the plane (8 points/m², 1 mm of noise, so that slope
     * is known).
     */
    @ParameterizedTest
    @MethodSource("stops")
    void ballOnASurveyedPlaneComesToTheDerivedStop(PlaneStop known) throws SurveyTooThin {
        MadeSurface plane = MadeSurface.plane(0, known.slope());
        SurveyPoints points = new MadeSurvey(plane, -9, -9, 9, 9, 8, 0.001, Suite.seed()).points();
        SurveyedGround ground = SurveyedGround.fit(Shapes.rectangle(-7, -7, 7, 7), points, Policy.defaults());
        double cosSlope = 1 / Math.sqrt(1 + known.slope() * known.slope());

        Roll roll = new BallRoller(ground.surface().orElseThrow(), known.speed())
                .roll(new MapPoint(0, 0), headingOf(known), known.metresPerSecond());

        assertThat(-roll.stop().north()).as("seed " + Suite.seed()).isCloseTo(known.down() * cosSlope, within(0.01));
        assertThat(roll.stop().east()).as("seed " + Suite.seed()).isCloseTo(known.across(), within(0.01));
    }

    /** Derived; the model of a level spot gives the same as the integrator, also along the map. */
    @ParameterizedTest
    @MethodSource("stops")
    void levelSpotsPlaneGivesWhatTheRolledBallDoes(PlaneStop known) {
        MadeSurface plane = MadeSurface.plane(0, known.slope());
        PlaneFit reading = new PlaneFit(0, known.slope(), 1e-6, 0, 1e-6);
        MapPoint from = new MapPoint(3, 4);

        Roll rolled = new BallRoller(plane, known.speed()).roll(from, headingOf(known), known.metresPerSecond());
        Roll closed = PlaneRoll.roll(reading, known.speed(), from, headingOf(known), known.metresPerSecond());

        assertThat(closed.stop().distanceMetres(rolled.stop())).isLessThan(1e-5);
        assertThat(closed.pathMetres()).isCloseTo(rolled.pathMetres(), within(1e-5));
        assertThat(closed.pathGroundMetres()).isCloseTo(rolled.pathGroundMetres(), within(1e-5));
        assertThat(closed.pathMetres()).isLessThan(closed.pathGroundMetres());
    }

    /** Derived: (7/10)v² = g(ρ·cosα·L + Δz) exactly, L the path in the plane; tolerance: rounding. */
    @ParameterizedTest
    @MethodSource("stops")
    void energyIsWhatFrictionAndClimbTake(PlaneStop known) {
        PlaneNumbers roll =
                PlaneNumbers.of(known.slope(), known.speed(), known.metresPerSecond(), known.degreesFromDownhill());
        double cosSlope = 1 / Math.sqrt(1 + known.slope() * known.slope());
        double climb = -roll.down() * known.slope() * cosSlope;

        double atStart = 0.7 * known.metresPerSecond() * known.metresPerSecond();
        double taken = Physics.GRAVITY * (known.speed().rollingResistance() * cosSlope * roll.pathGround() + climb);

        assertThat(taken).isCloseTo(atStart, within(1e-12));
    }

    /** From straight down (south) towards east, an angle in the plane turned into one on the map. */
    private static Heading headingOf(PlaneStop known) {
        double angle = Math.toRadians(known.degreesFromDownhill());
        double cosSlope = 1 / Math.sqrt(1 + known.slope() * known.slope());
        return Heading.ofStep(StrictMath.sin(angle), -StrictMath.cos(angle) * cosSlope);
    }
}
