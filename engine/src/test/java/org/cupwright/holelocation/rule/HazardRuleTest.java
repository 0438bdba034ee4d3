package org.cupwright.holelocation.rule;

import static org.cupwright.holelocation.rule.RuleAssert.assertRule;

import java.util.List;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.spot.PuttingArea;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

class HazardRuleTest {
    private static final Hole SQUARE = Hole.of("1", Shapes.rectangle(-15, -15, 15, 15));

    private static Rule beside(double nearestEast, Hazard.Kind kind) {
        Hazard hazard = new Hazard(
                kind, Shapes.area(nearestEast, -20, nearestEast + 5, -20, nearestEast + 5, 20, nearestEast, 20));
        Hole hole = SQUARE.withHazards(List.of(hazard));
        return new HazardRule(hole, new PuttingArea(hole), Policy.defaults());
    }

    @Test
    void fivePacesAreKeptFromTheEdgeBesideABunker() {
        // 5 · 0.914 = 4.57 m, the caution ends half a pace later at 5.027 m
        Rule rule = beside(16, Hazard.Kind.BUNKER);
        assertRule(rule.judge(Spots.at(15 - 4.56, 0)))
                .says(Outcome.FAIL, "fail")
                .hasMargin(-0.01);
        assertRule(rule.judge(Spots.at(15 - 4.58, 0)))
                .says(Outcome.CAUTION, "caution")
                .isClear();
        assertRule(rule.judge(Spots.at(15 - 5.02, 0))).says(Outcome.CAUTION, "caution");
        assertRule(rule.judge(Spots.at(15 - 5.03, 0))).says(Outcome.PASS, "pass");
    }

    @Test
    void waterAndFallOffsCountAlike() {
        assertRule(beside(16, Hazard.Kind.WATER).judge(Spots.at(11, 0))).says(Outcome.FAIL, "fail");
        assertRule(beside(16, Hazard.Kind.FALL_OFF).judge(Spots.at(11, 0))).says(Outcome.FAIL, "fail");
    }

    @Test
    void onlyTheEdgeBesideTheHazardIsKeptFrom() {
        assertRule(beside(16, Hazard.Kind.BUNKER).judge(Spots.at(-14, 0))).says(Outcome.PASS, "pass");
    }

    @Test
    void aHazardFurtherThanFivePacesOutsideDoesNotCount() {
        assertRule(beside(15 + 4.56, Hazard.Kind.BUNKER).judge(Spots.at(14, 0))).says(Outcome.FAIL, "fail");
        assertRule(beside(15 + 4.58, Hazard.Kind.BUNKER).judge(Spots.at(14, 0))).says(Outcome.PASS, "none");
    }
}
