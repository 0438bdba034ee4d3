package org.cupwright.holelocation.rule;

import static org.cupwright.holelocation.rule.RuleAssert.assertRule;

import org.cupwright.green.GroundItem;
import org.cupwright.holelocation.Outcome;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.junit.jupiter.api.Test;

class ClosedGroundRuleTest {
    private final Rule rule = new ClosedGroundRule(
            Days.ground(
                    Days.area(GroundItem.Kind.OUT_OF_USE, 0, 0, 4, 4),
                    Days.area(GroundItem.Kind.LIGHT_USE, 10, 0, 14, 4),
                    Days.area(GroundItem.Kind.SAVED, 20, 0, 24, 4)),
            Policy.defaults());

    @Test
    void groundOutOfUseFailsAndSoDoesTheGroundAboutIt() {
        assertRule(rule.judge(Spots.at(2, 2))).says(Outcome.FAIL, "fail").hasMargin(-0.6);
        assertRule(rule.judge(Spots.at(-0.59, 2))).says(Outcome.FAIL, "fail");
        assertRule(rule.judge(Spots.at(-0.61, 2))).says(Outcome.PASS, "pass").hasMargin(0.01);
    }

    @Test
    void groundInLightUseIsACaution() {
        assertRule(rule.judge(Spots.at(12, 2))).says(Outcome.CAUTION, "caution").isClear();
        assertRule(rule.judge(Spots.at(14.59, 2))).says(Outcome.CAUTION, "caution");
        assertRule(rule.judge(Spots.at(14.61, 2))).says(Outcome.PASS, "pass");
    }

    @Test
    void savedGroundIsNotClosed() {
        assertRule(rule.judge(Spots.at(22, 2))).says(Outcome.PASS, "pass");
    }

    @Test
    void aGreenWithoutClosedGroundPasses() {
        assertRule(new ClosedGroundRule(Days.ground(), Policy.defaults()).judge(Spots.at(0, 0)))
                .says(Outcome.PASS, "none");
    }
}
