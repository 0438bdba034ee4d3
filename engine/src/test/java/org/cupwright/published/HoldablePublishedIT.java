package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * On a plane the holdable rule is the published working limit of slope.
 *
 * <p>Derived: a ball that runs 0.30 m past on the level stops within 2 ft (0.61 m) down a plane of at most 0.508ρ;
 * tolerance 1 %. Read off a chart after Lemons, Golf Course Industry, June 2018 (its heading is damaged: our reading of
 * its columns): working limits at 9 to 14 ft; tolerance 3 %, the chart being drawn to about that.
 */
class HoldablePublishedIT {
    @ParameterizedTest
    @CsvSource({"9, 4.35", "10, 3.90", "11, 3.58", "12, 3.24", "13, 2.99", "14, 2.90"})
    void theLimitOnAPlaneIsTheWorkingLimit(double speedFeet, double workingLimitPercent) {
        double limit = limitPercent(speedFeet, RestsOn.SURVEY);
        double resistance = new GreenSpeed(speedFeet).rollingResistance();
        assertThat(limit).isCloseTo(50.8 * resistance, withPercentage(1));
        assertThat(limit).isCloseTo(workingLimitPercent, withPercentage(3));
        assertThat(limitPercent(speedFeet, RestsOn.LEVELS)).isCloseTo(50.8 * resistance, withPercentage(1));
    }

    /** The slope at which the rule no longer passes, by halving. */
    private static double limitPercent(double speedFeet, RestsOn restsOn) {
        double resistance = new GreenSpeed(speedFeet).rollingResistance();
        double passes = 45 * resistance;
        double not = 57 * resistance;
        for (int i = 0; i < 6; i++) {
            double middle = (passes + not) / 2;
            boolean pass = outcome(middle / 100, speedFeet, restsOn) == Outcome.PASS;
            passes = pass ? middle : passes;
            not = pass ? not : middle;
        }
        // both ends of the bracket were tried, or the limit lies outside it
        assertThat(passes).isGreaterThan(45 * resistance);
        assertThat(not).isLessThan(57 * resistance);
        return (passes + not) / 2;
    }

    private static Outcome outcome(double slope, double speedFeet, RestsOn restsOn) {
        ModelGround ground =
                ModelGround.exact(MadeSurface.plane(0.6 * slope, 0.8 * slope)).restingOn(restsOn);
        Green green = new Green(Hole.of("1", Shapes.circle(0, 0, 3.1)), ground);
        GreenJudge judge = new GreenJudge(green, Days.dry(speedFeet), Policy.defaults());
        return judge.judge(new MapPoint(0, 0)).rule(RuleId.HOLDABLE).outcome();
    }
}
