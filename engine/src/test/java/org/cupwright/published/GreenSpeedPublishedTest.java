package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.cupchange.ImpossibleFact;
import org.cupwright.green.MadeSurface;
import org.cupwright.message.Message.PlainNumber;
import org.cupwright.roll.BallRoller;
import org.cupwright.roll.Roll;
import org.cupwright.roll.RollEnd;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;
import org.cupwright.units.LengthUnit;
import org.cupwright.units.Physics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a green-speed reading means, against printed and derived values; g = 9.81 m/s². */
class GreenSpeedPublishedTest {
    private static final MapPoint ORIGIN = new MapPoint(0, 0);
    private static final Heading EAST = new Heading(90);

    /** 6.00 ft/s: Holmes, The Physics Teacher 24 (1986), recalled; exact by the international foot. */
    @Test
    void releaseSpeedIsSixFeetASecond() {
        assertThat(LengthUnit.FOOT.fromMetres(GreenSpeed.RELEASE_METRES_PER_SECOND))
                .isCloseTo(6.0, within(1e-12));
    }

    /**
     * Derived 1.8295 m/s, to half the last digit: a ball rolls 30 in down a V-groove of 145° at 20° (the bar's
     * dimensions are recalled), keeps the level part of its speed, slides, then rolls at (5v0 + 2rω0)/7 (textbook). The
     * release speed is within 0.1 % of it.
     */
    @Test
    void releaseSpeedAgreesWithTheGroove() {
        double tilt = Math.toRadians(20);
        double contact = Math.sin(Math.toRadians(145.0 / 2));
        double fall = 30 * 0.0254 * Math.sin(tilt);
        double inGroove = Math.sqrt(2 * Physics.GRAVITY * fall / (1 + 0.4 / (contact * contact)));
        double rolling = (5 * inGroove * Math.cos(tilt) + 2 * inGroove / contact) / 7;

        assertThat(rolling).isCloseTo(1.8295, within(5e-5));
        assertThat(GreenSpeed.RELEASE_METRES_PER_SECOND).isCloseTo(rolling, within(0.001 * rolling));
    }

    /**
     * Derived: ρ = 0.7830/S, μ = 0.5593/S and their values, to half the last digit. Penner, Canadian Journal of Physics
     * 80 (2002), recalled, gives ρ 0.065–0.196, which is S 12 and 4.
     */
    @ParameterizedTest
    @CsvSource({"8, 0.09787, 0.06991", "10, 0.07830, 0.05593", "12, 0.06525, 0.04661"})
    void rollingResistance(double feet, double rho, double mu) {
        GreenSpeed speed = new GreenSpeed(feet);

        assertThat(speed.rollingResistance())
                .isCloseTo(rho, within(5e-6))
                .isCloseTo(0.7830 / feet, within(5e-5 / feet));
        assertThat(speed.decelerationOnLevel() / Physics.GRAVITY)
                .isCloseTo(mu, within(5e-6))
                .isCloseTo(0.5593 / feet, within(5e-5 / feet));
    }

    /** Penner, Canadian Journal of Physics 80 (2002), recalled: the range of ρ; to half the last digit. */
    @ParameterizedTest
    @CsvSource({"12, 0.065", "4, 0.196"})
    void rangeOfRollingResistance(double feet, double rho) {
        assertThat(new GreenSpeed(feet).rollingResistance()).isCloseTo(rho, within(5e-4));
    }

    /**
     * By definition a ball released on the level rolls S feet, and derived: in S/3 seconds; rolled, to a micrometre.
     */
    @ParameterizedTest
    @CsvSource({"6", "8", "10", "12", "14"})
    void ballReleasedOnTheLevelRollsTheReading(double feet) {
        Roll roll = new BallRoller(MadeSurface.plane(0, 0), new GreenSpeed(feet))
                .roll(ORIGIN, EAST, GreenSpeed.RELEASE_METRES_PER_SECOND);

        assertThat(roll.stop().east()).isCloseTo(LengthUnit.FOOT.toMetres(feet), within(1e-6));
        assertThat(roll.seconds()).isCloseTo(feet / 3, within(1e-6));
    }

    /**
     * Brede, USGA Green Section Record 28(6), 1990: 14 ft down, 9 up is 10.957 ft; to half the last digit. Whichever
     * way is read first.
     */
    @Test
    void readingBothWays() {
        assertThat(bothWays(14, 9).feet()).isCloseTo(10.957, within(5e-4));
        assertThat(bothWays(9, 14).feet()).isCloseTo(10.957, within(5e-4));
    }

    /** The same: 20 ft down and 2 up is 3.636 ft, to half the last digit; slower than any green, so it is refused. */
    @Test
    void readingBothWaysOnASlopeTooSteepToReadOn() {
        assertThatThrownBy(() -> bothWays(20, 2)).isInstanceOfSatisfying(ImpossibleFact.class, refused -> {
            assertThat(refused.why().key()).isEqualTo("impossible.outside");
            assertThat(((PlainNumber) refused.why().arguments().get(1)).value()).isCloseTo(3.636, within(5e-4));
        });
    }

    /** Derived: 15 down, 5 up is 7.5 ft on a slope of 5.22 %, half of ρ; to half the last digit. */
    @Test
    void slopeFromReadingBothWays() {
        GreenSpeed speed = bothWays(15, 5);

        assertThat(speed.feet()).isCloseTo(7.5, within(1e-12));
        assertThat(100 * slope(15, 5, speed)).isCloseTo(5.22, within(0.005));
    }

    /** Derived: balls rolled both ways on a plane give back its slope; the speed is longer by the slope's secant. */
    @ParameterizedTest
    @CsvSource({"8, 0.05", "10, 0.02", "12, 0.03"})
    void ballsRolledBothWaysTellSpeedAndSlope(double feet, double slope) {
        BallRoller roller = new BallRoller(MadeSurface.plane(slope, 0), new GreenSpeed(feet));
        double up =
                roller.roll(ORIGIN, EAST, GreenSpeed.RELEASE_METRES_PER_SECOND).pathGroundMetres();
        double down = roller.roll(ORIGIN, new Heading(270), GreenSpeed.RELEASE_METRES_PER_SECOND)
                .pathGroundMetres();

        GreenSpeed speed = bothWays(LengthUnit.FOOT.fromMetres(down), LengthUnit.FOOT.fromMetres(up));

        assertThat(speed.feet()).isCloseTo(feet * Math.sqrt(1 + slope * slope), within(1e-5));
        assertThat(slope(down, up, speed)).isCloseTo(slope, within(0.002 * slope));
    }

    /** Derived: the ways are as (ρ + s) to (ρ − s). */
    private static double slope(double down, double up, GreenSpeed speed) {
        return speed.rollingResistance() * (down - up) / (down + up);
    }

    private static GreenSpeed bothWays(double downFeet, double upFeet) {
        return new SpeedRead(downFeet, OptionalDouble.of(upFeet)).speed();
    }

    /** Derived; Weber, USGA Green Section Record, 1997, graph as quoted; to half the last digit. */
    @ParameterizedTest
    @CsvSource({"8, 9.79", "10, 7.83", "12, 6.52", "14, 5.59"})
    void criticalSlope(double feet, double percent) {
        GreenSpeed speed = new GreenSpeed(feet);
        double rho = speed.rollingResistance();

        assertThat(100 * rho).isCloseTo(percent, within(0.0055));
        assertThat(endOfAGentlePush(speed, 0.99 * rho)).isEqualTo(RollEnd.REST);
        assertThat(endOfAGentlePush(speed, 1.01 * rho)).isEqualTo(RollEnd.RUNNING);
    }

    /**
     * Printed working limits of slope, Golf Course Industry, June 2018, chart after Lemons (our reading of its
     * columns): within 5 % of half of ρ.
     */
    @ParameterizedTest
    @CsvSource({"9, 4.35", "10, 3.90", "11, 3.58", "12, 3.24", "13, 2.99", "14, 2.90"})
    void printedWorkingLimitIsHalfOfRho(double feet, double percent) {
        double half = 100 * 0.5 * new GreenSpeed(feet).rollingResistance();

        assertThat(half).isCloseTo(percent, within(0.05 * percent));
    }

    private static RollEnd endOfAGentlePush(GreenSpeed speed, double slope) {
        return new BallRoller(MadeSurface.plane(-slope, 0), speed)
                .roll(ORIGIN, EAST, 0.05)
                .end();
    }
}
