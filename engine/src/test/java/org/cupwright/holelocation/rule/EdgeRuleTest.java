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

class EdgeRuleTest {
    /** 20 m square about the origin. */
    private static final Hole SQUARE = Hole.of("1", Shapes.rectangle(-10, -10, 10, 10));

    private final Rule rule = new EdgeRule(new PuttingArea(SQUARE), Policy.defaults());

    @Test
    void fourPacesAreKeptFromTheEdge() {
        // 4 · 0.914 = 3.656 m, the caution ends half a pace later at 4.113 m
        assertRule(rule.judge(Spots.at(10 - 3.65, 0)))
                .says(Outcome.FAIL, "fail")
                .hasMargin(-0.006);
        assertRule(rule.judge(Spots.at(10 - 3.66, 0)))
                .says(Outcome.CAUTION, "caution")
                .isClear();
        assertRule(rule.judge(Spots.at(0, 10 - 4.11))).says(Outcome.CAUTION, "caution");
        assertRule(rule.judge(Spots.at(0, -10 + 4.12))).says(Outcome.PASS, "pass");
    }

    @Test
    void offTheGreenTheDistanceIsNegative() {
        assertRule(rule.judge(Spots.at(12, 0))).says(Outcome.FAIL, "fail").hasMargin(-2 - 3.656);
        assertRule(rule.judge(Spots.at(500, 0))).says(Outcome.FAIL, "fail").hasMargin(-490 - 3.656);
    }

    @Test
    void aFalseFrontCountsAsOffTheGreen() {
        Hazard falseFront = new Hazard(Hazard.Kind.FALL_OFF, Shapes.area(-11, -11, 11, -11, 11, -5, -11, -5));
        Rule beyond = new EdgeRule(new PuttingArea(SQUARE.withHazards(List.of(falseFront))), Policy.defaults());
        assertRule(beyond.judge(Spots.at(0, -1.4))).says(Outcome.FAIL, "fail").hasMargin(3.6 - 3.656);
        assertRule(beyond.judge(Spots.at(0, -8))).says(Outcome.FAIL, "fail").hasMargin(-3 - 3.656);
        assertRule(beyond.judge(Spots.at(0, 0))).says(Outcome.PASS, "pass");
    }

    @Test
    void aBunkerInsideTheGreenHasAnEdgeToo() {
        Hazard fallOff = new Hazard(Hazard.Kind.FALL_OFF, Shapes.area(-1, -1, 1, -1, 1, 1, -1, 1));
        Rule around = new EdgeRule(new PuttingArea(SQUARE.withHazards(List.of(fallOff))), Policy.defaults());
        assertRule(around.judge(Spots.at(4, 0))).says(Outcome.FAIL, "fail").hasMargin(3 - 3.656);
    }
}
