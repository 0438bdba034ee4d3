package org.cupwright.holelocation.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.holelocation.rule.RuleAssert.assertRule;

import org.cupwright.course.Outline;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.RestsOn;
import org.cupwright.green.Surface;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

class HollowRuleTest {
    private static final Outline GREEN = Shapes.rectangle(-5, -5, 5, 5);

    /** A round bowl of 2 m radius in ground that falls away from its rim. */
    private static Surface bowl(double depthMetres) {
        return (east, north, out) -> {
            double radius = Math.hypot(east, north);
            boolean inside = radius < 2;
            double slope = inside ? depthMetres * radius / 2 : -0.01;
            out.z = inside ? depthMetres * radius * radius / 4 : depthMetres - 0.01 * (radius - 2);
            out.zx = radius == 0 ? 0 : slope * east / radius;
            out.zy = radius == 0 ? 0 : slope * north / radius;
            out.zxx = 0;
            out.zxy = 0;
            out.zyy = 0;
        };
    }

    private static RuleResult judge(ModelGround ground, DayConditions day, double east) {
        Rule rule = new HollowRule(ground, Grids.measured(GREEN, ground), day, Policy.defaults());
        return rule.judge(Grids.judged(ground, east, 0));
    }

    private static RuleResult inBowl(double depthMetres, double heightError) {
        return judge(ModelGround.exact(bowl(depthMetres)).withHeightError(heightError), Days.rainy(10), 0);
    }

    @Test
    void theDepthIsThatToWhichTheHollowFills() {
        // the rim is seen through the lattice, whose lowest way over it runs 0.06 m inside: 38 mm there
        assertThat(inBowl(0.04, 0).value().orElseThrow()).isBetween(37.5, 40.0);
    }

    @Test
    void passesAtFiveMillimetresCautionToFifteenElseFails() {
        assertRule(inBowl(0.004, 0)).says(Outcome.PASS, "pass");
        assertRule(inBowl(0.012, 0)).says(Outcome.CAUTION, "caution").isClear();
        assertRule(inBowl(0.020, 0)).says(Outcome.FAIL, "fail");
    }

    @Test
    void outsideTheBowlWaterRunsOff() {
        ModelGround ground = ModelGround.exact(bowl(0.02));
        RuleResult result = judge(ground, Days.rainy(10), 3.5);
        assertRule(result).says(Outcome.PASS, "pass");
        assertThat(result.value().orElseThrow()).isZero();
    }

    @Test
    void aDepthThatWouldFlipWithinTwoErrorsLeans() {
        assertRule(inBowl(0.004, 0.001)).says(Outcome.CAUTION, "check").leans(Outcome.PASS);
        assertRule(inBowl(0.018, 0.003)).says(Outcome.CAUTION, "check").leans(Outcome.FAIL);
        assertRule(inBowl(0.040, 0.003)).says(Outcome.FAIL, "fail");
    }

    @Test
    void aCoarseSurveyMayHideAHollowOnFlatGroundButNotOnASlope() {
        ModelGround flat = ModelGround.exact(MadeSurface.plane(0.002, 0)).withHeightError(0.006);
        assertRule(judge(flat, Days.rainy(10), 0))
                .says(Outcome.CAUTION, "check")
                .leans(Outcome.PASS);
        ModelGround sloping = ModelGround.exact(MadeSurface.plane(0.012, 0)).withHeightError(0.006);
        assertRule(judge(sloping, Days.rainy(10), 0)).says(Outcome.PASS, "pass");
    }

    @Test
    void onADryDayItPasses() {
        assertRule(judge(ModelGround.exact(bowl(0.04)), Days.dry(10), 0)).says(Outcome.PASS, "dry");
    }

    @Test
    void withoutASurveyItIsNotChecked() {
        ModelGround levels = ModelGround.exact(bowl(0.04)).restingOn(RestsOn.LEVELS);
        assertRule(judge(levels, Days.rainy(10), 0)).says(Outcome.NOT_CHECKED, "notChecked");
    }
}
