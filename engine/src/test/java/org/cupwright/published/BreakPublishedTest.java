package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.cupwright.course.MapPoint;
import org.cupwright.green.MadeSurface;
import org.cupwright.roll.BallRoller;
import org.cupwright.roll.Roll;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.Heading;
import org.cupwright.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How putts bend on a plane, against derived values and a teaching rule. North is uphill; the hole is at the origin or
 * named.
 */
class BreakPublishedTest {
    /** Speed at which a firm putt passes the hole, m/s. */
    private static final double FIRM = 0.70;

    /**
     * Derived, 3 m straight across the slope, the ball dying at the hole: aim in degrees above it, the offset of the
     * aim at the hole, launch speed. The stop is to a tenth of a millimetre, the offset to half its last digit.
     */
    @ParameterizedTest
    @CsvSource({"10, 0.02, 7.4622, 0.3930, 1.82215", "8, 0.01, 2.9361, 0.1539, 2.02979"})
    void sideHillPuttDiesAtTheHole(double feet, double slope, double aimDegrees, double offset, double launch) {
        double tan = StrictMath.tan(Math.toRadians(aimDegrees));
        double cosSlope = 1 / Math.sqrt(1 + slope * slope);
        Heading aim = Heading.ofStep(1, tan * cosSlope);

        Roll roll =
                new BallRoller(MadeSurface.plane(0, slope), new GreenSpeed(feet)).roll(new MapPoint(0, 0), aim, launch);

        assertThat(roll.stop().distanceMetres(new MapPoint(3, 0))).isLessThan(1e-4);
        assertThat(3 * tan).isCloseTo(offset, within(1e-4));
    }

    /**
     * Grober, arXiv:1106.1698 (abstract read): putts from an arc share one target point; the numbers derived: S 10, 2
     * %, 3 m, at 0.70 m/s past the hole, from 10 to 30 degrees off the fall line, 0.299–0.304 m above the hole for
     * downhill putts and 0.238–0.242 m for uphill ones. To half the last digit.
     */
    @ParameterizedTest
    @CsvSource({"90, 0.299, 0.304", "270, 0.238, 0.242"})
    void puttsFromAnArcShareAnAimPoint(double middleDegrees, double least, double greatest) {
        for (int off = -30; off <= 30; off += 10) {
            if (off != 0) { // straight along the fall line the aim is a line, not a point
                PassingPutt putt = PassingPutt.from(
                        MadeSurface.plane(0, 0.02), new GreenSpeed(10), FIRM, Math.toRadians(middleDegrees + off), 3);
                assertThat(putt.aimNorth()).as("%s degrees off", off).isBetween(least - 5e-4, greatest + 5e-4);
            }
        }
    }

    /**
     * A teaching text's rule: 1 % across at S 9.5–10 breaks about half an inch a foot at a firm pace. The model within
     * 10 % for a putt of 10 ft that passes the hole at 0.7 m/s.
     */
    @Test
    void ruleOfThumbForBreak() {
        for (double feet = 9.5; feet <= 10; feet += 0.25) {
            double length = LengthUnit.FOOT.toMetres(10);
            PassingPutt putt =
                    PassingPutt.from(MadeSurface.plane(0, 0.01), new GreenSpeed(feet), FIRM, Math.PI, length);

            double inchesAFoot = putt.aimNorth() / 0.0254 / 10;

            assertThat(inchesAFoot).as("S %s", feet).isCloseTo(0.5, within(0.05));
        }
    }
}
