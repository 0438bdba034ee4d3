package org.cupwright.holelocation.rule;

import static org.cupwright.holelocation.rule.RuleAssert.assertRule;

import org.cupwright.green.Coverage;
import org.cupwright.holelocation.Outcome;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.junit.jupiter.api.Test;

class LevelRuleTest {
    private final Rule everyDay = new LevelRule(Grids.elsewhere(), Days.dry(10), Policy.defaults());
    private final Rule rainyDay = new LevelRule(Grids.elsewhere(), Days.rainy(10), Policy.defaults());

    private static JudgedPosition slope(double percent, double error) {
        return Spots.alone(Spots.slope(percent, error));
    }

    @Test
    void levelGroundPassesWithItsMargin() {
        assertRule(everyDay.judge(slope(1.8, 0))).says(Outcome.PASS, "pass").hasMargin(1.2);
    }

    @Test
    void cautionBeginsBelowTheCap() {
        assertRule(everyDay.judge(slope(2.49, 0))).says(Outcome.PASS, "pass");
        assertRule(everyDay.judge(slope(2.5, 0)))
                .says(Outcome.CAUTION, "caution")
                .isClear();
        assertRule(everyDay.judge(slope(3.0, 0)))
                .says(Outcome.CAUTION, "caution")
                .isClear();
    }

    @Test
    void aboveTheCapFails() {
        assertRule(everyDay.judge(slope(3.01, 0))).says(Outcome.FAIL, "fail").hasMargin(-0.01);
    }

    @Test
    void onFastGreensHalfTheRollingResistanceIsTheLimit() {
        // 0.5 · 0.7830 / 14 = 2.796 %
        Rule fast = new LevelRule(Grids.elsewhere(), Days.dry(14), Policy.defaults());
        assertRule(fast.judge(slope(2.79, 0))).says(Outcome.CAUTION, "caution");
        assertRule(fast.judge(slope(2.80, 0))).says(Outcome.FAIL, "fail");
    }

    @Test
    void eventsKeepToTheStricterCap() {
        Rule event = new LevelRule(Grids.elsewhere(), Days.event(10), Policy.defaults());
        assertRule(event.judge(slope(2.4, 0))).says(Outcome.PASS, "pass");
        assertRule(event.judge(slope(2.6, 0))).says(Outcome.FAIL, "fail");
    }

    @Test
    void flatGroundIsACautionOnlyWhenRainIsExpected() {
        assertRule(everyDay.judge(slope(0.3, 0))).says(Outcome.PASS, "pass");
        assertRule(rainyDay.judge(slope(0.3, 0)))
                .says(Outcome.CAUTION, "wet")
                .isClear()
                .hasMargin(-0.2);
        assertRule(rainyDay.judge(slope(0.6, 0))).says(Outcome.PASS, "pass");
    }

    @Test
    void whatWouldFlipWithinTwoErrorsLeansToItsOwnSide() {
        assertRule(everyDay.judge(slope(2.3, 0.09))).says(Outcome.PASS, "pass");
        assertRule(everyDay.judge(slope(2.3, 0.11)))
                .says(Outcome.CAUTION, "check")
                .leans(Outcome.PASS);
        assertRule(everyDay.judge(slope(3.2, 0.09))).says(Outcome.FAIL, "fail");
        assertRule(everyDay.judge(slope(3.2, 0.11)))
                .says(Outcome.CAUTION, "check")
                .leans(Outcome.FAIL);
        assertRule(everyDay.judge(slope(2.9, 0.11)))
                .says(Outcome.CAUTION, "check")
                .leans(Outcome.FAIL);
        assertRule(rainyDay.judge(slope(0.6, 0.06)))
                .says(Outcome.CAUTION, "wet")
                .leans(Outcome.PASS);
    }

    @Test
    void theWorstGroundAboutThePositionCounts() {
        JudgedPosition judged = Spots.with(Spots.slope(1, 0), Spots.slope(3.5, 0));
        assertRule(everyDay.judge(judged)).says(Outcome.FAIL, "fail").hasMargin(-0.5);
    }

    @Test
    void besideAGapNothingBetterThanACautionIsSaid() {
        JudgedPosition judged = Spots.with(Spots.slope(1, 0), Spots.unknown(Coverage.NOT_SURVEYED));
        assertRule(everyDay.judge(judged)).says(Outcome.CAUTION, "gap").isClear();
    }

    @Test
    void aLevelReadingSpeaksForTheGroundAboutIt() {
        JudgedPosition judged = Spots.with(Spots.slope(1, 0), Spots.unknown(Coverage.NOT_MEASURED));
        assertRule(everyDay.judge(judged)).says(Outcome.PASS, "pass");
    }

    @Test
    void unknownGroundIsNotChecked() {
        JudgedPosition judged = Spots.alone(Spots.unknown(Coverage.NOT_MEASURED));
        assertRule(everyDay.judge(judged))
                .says(Outcome.NOT_CHECKED, "notChecked")
                .isClear();
    }
}
