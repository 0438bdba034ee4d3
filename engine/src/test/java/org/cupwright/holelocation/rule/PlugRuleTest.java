package org.cupwright.holelocation.rule;

import static org.cupwright.holelocation.rule.RuleAssert.assertRule;

import org.cupwright.holelocation.Outcome;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.junit.jupiter.api.Test;

class PlugRuleTest {
    private final Rule rule = new PlugRule(Days.ground(Days.plug(0, 0)), Policy.defaults());

    @Test
    void onAPlugFails() {
        assertRule(rule.judge(Spots.at(0.14, 0))).says(Outcome.FAIL, "fail").hasMargin(-0.01);
    }

    @Test
    void nearAPlugIsACaution() {
        assertRule(rule.judge(Spots.at(0.16, 0)))
                .says(Outcome.CAUTION, "caution")
                .isClear();
        assertRule(rule.judge(Spots.at(0, 0.90)))
                .says(Outcome.CAUTION, "caution")
                .hasMargin(-0.01);
    }

    @Test
    void furtherAwayAndWithoutPlugsPasses() {
        assertRule(rule.judge(Spots.at(0, 0.92))).says(Outcome.PASS, "pass");
        assertRule(new PlugRule(Days.ground(), Policy.defaults()).judge(Spots.at(0, 0)))
                .says(Outcome.PASS, "none");
    }
}
