package org.cupwright.holelocation.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.holelocation.rule.RuleAssert.assertRule;

import java.util.List;
import java.util.Optional;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.holelocation.DrawnPolicy;
import org.cupwright.holelocation.DrawnPolicy.OnBadGround;
import org.cupwright.holelocation.Outcome;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.testing.DrawnShapes;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

class DrawnGroundRuleTest {
    private static Rule rule(Policy policy, DrawnItem... drawn) {
        return new DrawnGroundRule(new DrawnOpinions(List.of(drawn), policy), policy);
    }

    private static Rule rule(DrawnItem... drawn) {
        return rule(Policy.defaults(), drawn);
    }

    private static DrawnItem good() {
        return DrawnShapes.area(Kind.GOOD, 10, 0, 20, 10);
    }

    private static DrawnItem bad() {
        return DrawnShapes.area(Kind.BAD, 0, 0, 4, 4);
    }

    @Test
    void badGroundFailsAndSoDoesTheGroundAboutIt() {
        assertRule(rule(bad()).judge(Spots.at(2, 2))).says(Outcome.FAIL, "bad").hasMargin(-0.6);
        assertRule(rule(bad()).judge(Spots.at(-0.59, 2))).says(Outcome.FAIL, "bad");
        assertRule(rule(bad()).judge(Spots.at(-0.61, 2))).says(Outcome.PASS, "unsaid");
    }

    @Test
    void theCourseMaySetThatBadGroundIsACaution() {
        Policy mild = Policy.defaults().with(DrawnPolicy.BAD_GROUND, OnBadGround.CAUTION);
        assertRule(rule(mild, bad()).judge(Spots.at(2, 2)))
                .says(Outcome.CAUTION, "bad")
                .isClear();
    }

    @Test
    void goodGroundAndUsualSpotsPass() {
        Rule rule = rule(good(), DrawnShapes.usual(2, 2));
        assertRule(rule.judge(Spots.at(15, 5))).says(Outcome.PASS, "good");
        assertRule(rule.judge(Spots.at(10, 0))).says(Outcome.PASS, "good");
        assertRule(rule.judge(Spots.at(2.9, 2))).says(Outcome.PASS, "usual");
        assertRule(rule.judge(Spots.at(2.92, 2))).says(Outcome.CAUTION, "offGood");
    }

    @Test
    void offGoodGroundIsACautionOnlyWhereNobodyMeasured() {
        assertRule(rule(good()).judge(Spots.at(0, 0)))
                .says(Outcome.CAUTION, "offGood")
                .isClear();
        assertRule(rule(good()).judge(Spots.alone(Spots.slope(1.5, 0.1)))).says(Outcome.PASS, "unsaid");
    }

    @Test
    void usualSpotsAloneSayNothingOfOtherGround() {
        assertRule(rule(DrawnShapes.usual(8, 8)).judge(Spots.at(0, 0))).says(Outcome.PASS, "unsaid");
    }

    @Test
    void badGroundGoesBeforeGood() {
        Rule rule = rule(DrawnShapes.area(Kind.GOOD, 0, 0, 4, 4), DrawnShapes.usual(2, 2), bad());
        assertRule(rule.judge(Spots.at(2, 2))).says(Outcome.FAIL, "bad");
    }

    @Test
    void aGreenOfWhichNobodySaidAnythingPasses() {
        assertRule(rule().judge(Spots.at(0, 0))).says(Outcome.PASS, "none");
    }

    @Test
    void theSentenceNamesWhoSaysItAndWhen() {
        Message says = rule(good()).judge(Spots.at(15, 5)).says();
        assertThat(says.arguments())
                .containsExactly(
                        new Message.Count(1),
                        new Message.Name(DrawnShapes.PERSON),
                        new Message.Count(1),
                        new Message.Day(DrawnShapes.DATE),
                        new Message.Count(0),
                        new Message.Name(""));
    }

    @Test
    void whatNobodyNoted() {
        PersonsOpinion bare = new PersonsOpinion(Kind.BAD, Optional.of(" wet "), Optional.of(" "), Optional.empty());
        DrawnItem item = new DrawnItem("x", bare, Shapes.area(0, 0, 1, 0, 1, 1));
        assertThat(rule(item).judge(Spots.at(0, 0)).says().arguments())
                .containsExactly(
                        new Message.Count(0),
                        new Message.Name(""),
                        new Message.Count(0),
                        new Message.Name(""),
                        new Message.Count(1),
                        new Message.Name("wet"));
    }
}
