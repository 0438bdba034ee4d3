package org.cupwright.holelocation.rule;

import static org.cupwright.holelocation.rule.RuleAssert.assertRule;

import org.cupwright.green.Coverage;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.policy.Policy;
import org.junit.jupiter.api.Test;

class EvenGradeRuleTest {
    private final Rule rule = new EvenGradeRule(Grids.elsewhere(), Policy.defaults());

    private RuleResult judge(double points, double error) {
        return rule.judge(Spots.alone(Spots.bend(points, error)));
    }

    @Test
    void passesWhereTheChangeIsAtMostTheLimitWithTwoErrorsAdded() {
        assertRule(judge(2.0, 0)).says(Outcome.PASS, "pass");
        assertRule(judge(0.9, 0.5)).says(Outcome.PASS, "pass").hasMargin(1.1);
    }

    @Test
    void aHumpCountsLikeAHollow() {
        assertRule(judge(-2.5, 0)).says(Outcome.FAIL, "fail").hasMargin(-0.5);
    }

    @Test
    void failsWhereItIsAboveTheLimitWithTwoErrorsTakenOff() {
        assertRule(judge(3.1, 0.5)).says(Outcome.FAIL, "fail");
    }

    @Test
    void leansInBetween() {
        assertRule(judge(1.5, 0.5)).says(Outcome.CAUTION, "check").leans(Outcome.PASS);
        assertRule(judge(2.5, 0.5)).says(Outcome.CAUTION, "check").leans(Outcome.FAIL);
    }

    @Test
    void aChangeKnownTooBadlyIsNotChecked() {
        assertRule(judge(0.1, 1.0)).says(Outcome.CAUTION, "check");
        assertRule(judge(0.1, 1.01)).says(Outcome.NOT_CHECKED, "uncertain").isClear();
        assertRule(rule.judge(Spots.alone(Spots.slope(1, 0)))).says(Outcome.NOT_CHECKED, "notChecked");
        assertRule(rule.judge(Spots.alone(Spots.unknown(Coverage.NOT_MEASURED))))
                .says(Outcome.NOT_CHECKED, "notChecked");
    }

    @Test
    void whereTheSlopeIsMarginalTheWideDiscIsACaution() {
        assertRule(rule.judge(Spots.alone(Spots.bends(1, 1.9, 0)))).says(Outcome.PASS, "pass");
        assertRule(rule.judge(Spots.alone(Spots.bends(1, 2.1, 0))))
                .says(Outcome.CAUTION, "wide")
                .isClear()
                .hasMargin(-0.1);
        assertRule(rule.judge(Spots.alone(Spots.bends(1, 1.9, 0.1))))
                .says(Outcome.CAUTION, "wideCheck")
                .leans(Outcome.PASS);
        assertRule(rule.judge(Spots.alone(Spots.bends(3, 0, 0)))).says(Outcome.FAIL, "fail");
    }

    @Test
    void theWorstGroundAboutThePositionCounts() {
        assertRule(rule.judge(Spots.with(Spots.bend(1, 0.1), Spots.bend(3, 0.1))))
                .says(Outcome.FAIL, "fail");
        assertRule(rule.judge(Spots.with(Spots.bend(1, 0.1), Spots.bend(1, 2)))).says(Outcome.NOT_CHECKED, "uncertain");
    }

    /** The sentence about a gap names the change, and here there is none to name. */
    @Test
    void besideAGapAnUncertainChangeIsNotChecked() {
        JudgedPosition judged = Spots.with(Spots.bend(0.5, 1.5), Spots.unknown(Coverage.NOT_SURVEYED));
        assertRule(rule.judge(judged)).says(Outcome.NOT_CHECKED, "uncertain");
        JudgedPosition known = Spots.with(Spots.bend(0.5, 0.1), Spots.unknown(Coverage.NOT_SURVEYED));
        assertRule(rule.judge(known)).says(Outcome.CAUTION, "gap");
    }
}
