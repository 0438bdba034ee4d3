package org.cupwright.holelocation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.RestsOn;
import org.cupwright.message.Message;
import org.junit.jupiter.api.Test;

class JudgementTest {
    private static RuleResult says(RuleId rule, Outcome outcome) {
        return result(rule, outcome, Optional.empty());
    }

    private static RuleResult result(RuleId rule, Outcome outcome, Optional<Outcome> leans) {
        OptionalDouble none = OptionalDouble.empty();
        return new RuleResult(rule, none, "m", none, none, none, outcome, leans, Message.of("rule.invented"));
    }

    private static final List<RuleResult> RULES = List.of(
            says(RuleId.LEVEL, Outcome.PASS),
            says(RuleId.EDGE, Outcome.CAUTION),
            says(RuleId.HAZARD, Outcome.FAIL),
            says(RuleId.PLUG, Outcome.CAUTION),
            says(RuleId.HOLLOW, Outcome.FAIL));

    private static Judgement judgement(Verdict verdict, RestsOn restsOn, Set<RuleId> setAside) {
        return new Judgement(
                new MapPoint(3, 4), verdict, restsOn, RULES, setAside, Difficulty.unknown(), Optional.empty());
    }

    private static Optional<RuleId> deciding(Verdict verdict, RuleId... setAside) {
        return judgement(verdict, RestsOn.SURVEY, Set.of(setAside)).deciding();
    }

    @Test
    void theFirstRuleThatSaysSoDecidesUnlessItIsSetAside() {
        assertThat(deciding(Verdict.FAIL)).contains(RuleId.HAZARD);
        assertThat(deciding(Verdict.FAIL, RuleId.HAZARD)).contains(RuleId.HOLLOW);
        assertThat(deciding(Verdict.CAUTION)).contains(RuleId.EDGE);
        assertThat(deciding(Verdict.CAUTION, RuleId.EDGE)).contains(RuleId.PLUG);
        assertThat(deciding(Verdict.PASS)).isEmpty();
        assertThat(deciding(Verdict.NOT_SURVEYED)).isEmpty();
    }

    @Test
    void everyRuleOfAJudgementIsFound() {
        Judgement judgement = judgement(Verdict.FAIL, RestsOn.SURVEY, Set.of());
        assertThat(judgement.rule(RuleId.PLUG)).isEqualTo(RULES.get(3));
        assertThatIllegalStateException()
                .isThrownBy(() -> judgement.rule(RuleId.RIDGE))
                .withMessageContaining("lacks ridge");
    }

    private static boolean vouched(RestsOn restsOn, PersonsOpinion.Kind... said) {
        Judgement alone = judgement(Verdict.PASS, restsOn, Set.of());
        Optional<PersonsOpinion> word = List.of(said).stream()
                .map(kind -> new PersonsOpinion(kind, Optional.empty(), Optional.empty(), Optional.empty()))
                .findFirst();
        return new Judgement(alone.position(), alone.verdict(), restsOn, RULES, Set.of(), alone.difficulty(), word)
                .vouchedFor();
    }

    @Test
    void whatWasMeasuredOrIsSaidToBeGoodIsVouchedFor() {
        assertThat(vouched(RestsOn.SURVEY)).isTrue();
        assertThat(vouched(RestsOn.LEVELS, PersonsOpinion.Kind.BAD)).isTrue();
        assertThat(vouched(RestsOn.OUTLINE)).isFalse();
        assertThat(vouched(RestsOn.OUTLINE, PersonsOpinion.Kind.BAD)).isFalse();
        assertThat(vouched(RestsOn.OUTLINE, PersonsOpinion.Kind.GOOD)).isTrue();
    }

    @Test
    void onlyACautionLeansAndOnlyToAnAnswer() {
        assertThat(result(RuleId.EDGE, Outcome.CAUTION, Optional.of(Outcome.FAIL))
                        .leans())
                .contains(Outcome.FAIL);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> result(RuleId.EDGE, Outcome.FAIL, Optional.of(Outcome.PASS)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> result(RuleId.EDGE, Outcome.CAUTION, Optional.of(Outcome.NOT_CHECKED)));
    }

    @Test
    void concessionsNameTheirRuleAndWhetherTheyGoAllTheWay() {
        assertThat(Concession.OLD_HOLE_CLOSER.rule()).isEqualTo(RuleId.OLD_HOLE);
        assertThat(Concession.values())
                .filteredOn(Concession::inPart)
                .containsExactly(Concession.OLD_HOLE_CLOSER, Concession.EDGE);
    }

    @Test
    void withoutItsClassADifficultyKeepsItsNumbers() {
        Difficulty ranked = new Difficulty(
                OptionalDouble.of(1.8),
                Optional.of(DifficultyClass.HARDER),
                OptionalDouble.of(0.5),
                OptionalDouble.of(0.9));
        assertThat(ranked.unranked())
                .isEqualTo(new Difficulty(
                        OptionalDouble.of(1.8), Optional.empty(), OptionalDouble.of(0.5), OptionalDouble.of(0.9)));
    }
}
