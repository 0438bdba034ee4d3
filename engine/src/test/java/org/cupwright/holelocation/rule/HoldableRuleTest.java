package org.cupwright.holelocation.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.cupwright.holelocation.rule.RuleAssert.assertRule;

import org.cupwright.green.Coverage;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.junit.jupiter.api.Test;

class HoldableRuleTest {
    private final Rule rule = new HoldableRule(Grids.elsewhere(), Days.dry(10), Policy.defaults());

    private RuleResult judge(double leaveMetres, double slopeErrorPercent) {
        return rule.judge(Spots.alone(Spots.leave(leaveMetres, slopeErrorPercent)));
    }

    @Test
    void passesWithinTwoFeetCautionWithinThreeElseFails() {
        assertRule(judge(0.61, 0)).says(Outcome.PASS, "pass").hasMargin(0);
        assertRule(judge(0.62, 0)).says(Outcome.CAUTION, "caution").isClear();
        assertRule(judge(0.91, 0)).says(Outcome.CAUTION, "caution");
        assertRule(judge(0.92, 0)).says(Outcome.FAIL, "fail").hasMargin(-0.31);
        assertRule(judge(3, 0.3)).says(Outcome.FAIL, "fail");
    }

    @Test
    void theSlopesErrorIsCarriedThroughThePlane() {
        // on 3.5 % at 10 ft a ball is left 0.5425 m; on 3.98 %, where the limit is met, 0.61 m
        double leave = 0.30 * 0.0783 / (0.0783 - 0.035);
        assertRule(judge(leave, 0.23)).says(Outcome.PASS, "pass");
        assertRule(judge(leave, 0.25)).says(Outcome.CAUTION, "check").leans(Outcome.PASS);
    }

    @Test
    void whatWouldFlipWithinTwoErrorsLeans() {
        assertRule(judge(0.58, 0.3)).says(Outcome.CAUTION, "check").leans(Outcome.PASS);
        assertRule(judge(0.64, 0.3)).says(Outcome.CAUTION, "check").leans(Outcome.PASS);
        assertRule(judge(0.88, 0.3)).says(Outcome.CAUTION, "check").leans(Outcome.FAIL);
        assertRule(judge(0.95, 0.3)).says(Outcome.CAUTION, "check").leans(Outcome.FAIL);
    }

    @Test
    void theStandardErrorIsTheSlopesTimesTheLeavesSteepness() {
        // dL/ds = L²/(p·ρ)
        RuleResult result = judge(0.6, 0.1);
        assertThat(result.standardError().orElseThrow()).isCloseTo(0.001 * 0.36 / (0.3 * 0.0783), offset(1e-5));
    }

    @Test
    void theWorstGroundAboutThePositionCounts() {
        assertRule(rule.judge(Spots.with(Spots.leave(0.4, 0), Spots.leave(1, 0))))
                .says(Outcome.FAIL, "fail");
    }

    @Test
    void withoutALeaveItIsNotChecked() {
        assertRule(rule.judge(Spots.alone(Spots.slope(1, 0)))).says(Outcome.NOT_CHECKED, "notChecked");
        assertRule(rule.judge(Spots.alone(Spots.unknown(Coverage.NOT_MEASURED))))
                .says(Outcome.NOT_CHECKED, "notChecked");
    }
}
