package org.cupwright.holelocation.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.cupwright.holelocation.rule.RuleAssert.assertRule;

import org.cupwright.course.Outline;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.RestsOn;
import org.cupwright.green.Surface;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** On ground whose slope grows by a point a metre: at 10 ft it is above 0.69ρ east of 5.403 m and above ρ east of 7.83 m. */
class RidgeRuleTest {
    private static final Outline GREEN = Shapes.rectangle(-3, -3, 12, 3);
    private static final Surface STEEPENING = (east, north, out) -> {
        out.z = 0.005 * east * east;
        out.zx = 0.01 * east;
        out.zy = 0;
        out.zxx = 0.01;
        out.zxy = 0;
        out.zyy = 0;
    };

    private final ModelGround exact = ModelGround.exact(STEEPENING);
    private final ModelGround rough = exact.withSlopeError(0.002);
    private final Rule rule = rule(exact);
    private final Rule roughRule = rule(rough);

    private static Rule rule(ModelGround ground) {
        return new RidgeRule(Grids.measured(GREEN, ground), RestsOn.SURVEY, Days.dry(10), Policy.defaults());
    }

    private RuleResult judge(double east) {
        return rule.judge(Grids.judged(exact, east, 0));
    }

    private RuleResult judgeRough(double east) {
        return roughRule.judge(Grids.judged(rough, east, 0));
    }

    @Test
    void threePacesAreKeptFromGroundWhereABallHardlyStops() {
        assertRule(judge(2.65)).says(Outcome.PASS, "pass");
        assertThat(judge(2.65).value().orElseThrow()).isCloseTo(5.403 - 2.65, offset(0.001));
        assertRule(judge(2.67)).says(Outcome.CAUTION, "caution").isClear();
    }

    @Test
    void tenFeetAreKeptFromGroundWhereItDoesNot() {
        assertRule(judge(4.77)).says(Outcome.CAUTION, "caution").isClear();
        assertRule(judge(4.79)).says(Outcome.FAIL, "fail");
        assertThat(judge(9).value().orElseThrow()).isZero();
    }

    @Test
    void groundThatIsOnlyPossiblySteepMakesItLean() {
        assertRule(judgeRough(4.2)).says(Outcome.CAUTION, "caution").isClear();
        assertRule(judgeRough(4.6)).says(Outcome.CAUTION, "check").leans(Outcome.PASS);
        assertRule(judgeRough(5.0)).says(Outcome.CAUTION, "check").leans(Outcome.FAIL);
        assertRule(judgeRough(5.3)).says(Outcome.FAIL, "fail");
        assertRule(judgeRough(2.4)).says(Outcome.CAUTION, "check").leans(Outcome.PASS);
        assertRule(judgeRough(2.2)).says(Outcome.PASS, "pass");
    }

    @Test
    void aGreenWithoutSteepGroundPasses() {
        ModelGround even = ModelGround.exact(MadeSurface.plane(0.02, 0));
        assertRule(rule(even).judge(Grids.judged(even, 0, 0))).says(Outcome.PASS, "none");
    }

    @Test
    void steepGroundBesideAGapCountsByItself() {
        // the line of 0.69ρ lies in the gap; the first steep spots that are known are those at 6 m
        ModelGround gap = exact.withGap(Shapes.rectangle(4.4, -4, 5.9, 4));
        RuleResult result = rule(gap).judge(Grids.judged(gap, 4.25, 0));
        assertRule(result).says(Outcome.CAUTION, "caution");
        assertThat(result.value().orElseThrow()).isCloseTo(1.75, offset(1e-9));
    }

    @Test
    void withoutASurveyItIsNotChecked() {
        ModelGround levels = exact.restingOn(RestsOn.LEVELS);
        Rule ofLevels = new RidgeRule(Grids.measured(GREEN, levels), RestsOn.LEVELS, Days.dry(10), Policy.defaults());
        assertRule(ofLevels.judge(Grids.judged(levels, 5, 0))).says(Outcome.NOT_CHECKED, "notChecked");
    }
}
