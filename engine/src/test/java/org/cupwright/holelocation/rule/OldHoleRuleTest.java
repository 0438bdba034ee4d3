package org.cupwright.holelocation.rule;

import static org.cupwright.holelocation.rule.RuleAssert.assertRule;

import org.cupwright.green.GroundItem;
import org.cupwright.holelocation.Outcome;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.junit.jupiter.api.Test;

class OldHoleRuleTest {
    private static Rule rule(GroundItem... items) {
        return new OldHoleRule(Days.ground(items), Policy.defaults());
    }

    @Test
    void threePacesAreKeptFromAHoleWhoseGroundRests() {
        Rule rule = rule(Days.restingHole(0, 0, 3));
        assertRule(rule.judge(Spots.at(2.73, 0))).says(Outcome.FAIL, "fail").hasMargin(-0.01);
        assertRule(rule.judge(Spots.at(2.74, 0)))
                .says(Outcome.CAUTION, "caution")
                .hasMargin(2.74 - 4.88);
    }

    @Test
    void theLastFourHolesAreKeptFromWhetherTheyRestOrNot() {
        Rule rule = rule(Days.restedHole(0, 0, 28));
        assertRule(rule.judge(Spots.at(1, 0))).says(Outcome.CAUTION, "caution");
        assertRule(rule.judge(Spots.at(4.87, 0))).says(Outcome.CAUTION, "caution");
        assertRule(rule.judge(Spots.at(4.88, 0))).says(Outcome.PASS, "pass").hasMargin(0);
    }

    @Test
    void theFifthLastHoleNoLongerCountsOnceItHasRested() {
        Rule rule = rule(
                Days.restedHole(0, 0, 25),
                Days.restedHole(20, 0, 24),
                Days.restedHole(30, 0, 23),
                Days.restedHole(40, 0, 22),
                Days.restedHole(50, 0, 21));
        assertRule(rule.judge(Spots.at(0, 0))).says(Outcome.PASS, "pass");
    }

    @Test
    void aHoleOfMoreThanFourWeeksAgoIsNoneOfTheLastHoweverFewCameAfterIt() {
        assertRule(rule(Days.restedHole(0, 0, 29)).judge(Spots.at(0, 0))).says(Outcome.PASS, "none");
    }

    @Test
    void aGreenWithoutOldHolesPasses() {
        assertRule(rule().judge(Spots.at(0, 0))).says(Outcome.PASS, "none");
    }
}
