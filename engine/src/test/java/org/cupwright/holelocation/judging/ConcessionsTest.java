package org.cupwright.holelocation.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.cupwright.holelocation.Concession;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.junit.jupiter.api.Test;

/** By default the edge is conceded down to two paces of 0.914 m, which are 1.828 m, and old holes down to 2.44 m. */
class ConcessionsTest {
    private static final Concessions NONE = concessions();

    private static Concessions concessions(Concession... made) {
        return Concessions.of(List.of(made), Policy.defaults());
    }

    private static RuleResult result(RuleId rule, Outcome outcome, OptionalDouble metres) {
        return new RuleResult(
                rule,
                metres,
                "m",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                outcome,
                Optional.empty(),
                Message.of("rule.invented"));
    }

    private static RuleResult fails(RuleId rule, double metres) {
        return result(rule, Outcome.FAIL, OptionalDouble.of(metres));
    }

    private static RuleResult fails(RuleId rule) {
        return result(rule, Outcome.FAIL, OptionalDouble.empty());
    }

    private static RuleResult says(RuleId rule, Outcome outcome) {
        return result(rule, outcome, OptionalDouble.of(9));
    }

    @Test
    void theEdgeIsConcededDownToTwoPaces() {
        assertThat(NONE.excuses(Concession.EDGE, fails(RuleId.EDGE, 1.828))).isTrue();
        assertThat(NONE.excuses(Concession.EDGE, fails(RuleId.EDGE, 1.827))).isFalse();
        assertThat(NONE.excuses(Concession.EDGE, fails(RuleId.HAZARD, 1.828))).isFalse();
    }

    @Test
    void oldHolesAreConcededDownToADistanceAndThenAltogether() {
        assertThat(NONE.excuses(Concession.OLD_HOLE_CLOSER, fails(RuleId.OLD_HOLE, 2.44)))
                .isTrue();
        assertThat(NONE.excuses(Concession.OLD_HOLE_CLOSER, fails(RuleId.OLD_HOLE, 2.43)))
                .isFalse();
        assertThat(NONE.excuses(Concession.OLD_HOLE, fails(RuleId.OLD_HOLE, 0.1)))
                .isTrue();
        assertThat(NONE.excuses(Concession.OLD_HOLE, fails(RuleId.EDGE, 0.1))).isFalse();
    }

    @Test
    void aWholeRuleIsSetAsideWhateverItSaysAndOneInPartWhereItFails() {
        List<RuleResult> results =
                List.of(says(RuleId.HOLLOW, Outcome.PASS), fails(RuleId.EDGE, 2), says(RuleId.LEVEL, Outcome.FAIL));
        assertThat(concessions(Concession.HOLLOW, Concession.EDGE).setAside(results))
                .containsExactlyInAnyOrder(RuleId.HOLLOW, RuleId.EDGE);
        assertThat(concessions(Concession.EDGE).setAside(List.of(says(RuleId.EDGE, Outcome.CAUTION))))
                .isEmpty();
        assertThat(concessions(Concession.EDGE).setAside(List.of(fails(RuleId.EDGE, 1))))
                .isEmpty();
        assertThat(NONE.setAside(results)).isEmpty();
    }

    @Test
    void theVerdictIsTheWorstOfTheRulesThatCount() {
        RuleResult caution = says(RuleId.LEVEL, Outcome.CAUTION);
        RuleResult failing = fails(RuleId.EDGE, 1);
        RuleResult passing = says(RuleId.PLUG, Outcome.PASS);
        RuleResult unasked = says(RuleId.RIDGE, Outcome.NOT_CHECKED);
        assertThat(Concessions.verdict(List.of(passing, unasked), Set.of(), false))
                .isEqualTo(Verdict.PASS);
        assertThat(Concessions.verdict(List.of(caution, passing), Set.of(), false))
                .isEqualTo(Verdict.CAUTION);
        assertThat(Concessions.verdict(List.of(caution, failing, passing), Set.of(), false))
                .isEqualTo(Verdict.FAIL);
        assertThat(Concessions.verdict(List.of(caution, failing), Set.of(RuleId.EDGE), false))
                .isEqualTo(Verdict.CAUTION);
        assertThat(Concessions.verdict(List.of(caution, failing), Set.of(RuleId.EDGE, RuleId.LEVEL), false))
                .isEqualTo(Verdict.PASS);
        assertThat(Concessions.verdict(List.of(caution), Set.of(), true)).isEqualTo(Verdict.NOT_SURVEYED);
        assertThat(Concessions.verdict(List.of(failing), Set.of(), true)).isEqualTo(Verdict.FAIL);
    }

    private static ConcessionSearch search() {
        return new ConcessionSearch(List.of(Concession.HOLLOW, Concession.RIDGE, Concession.EDGE, Concession.LEVEL));
    }

    /** Every spot of the lattice is a sixteenth of a square metre. */
    @Test
    void concessionsAreMadeInOrderAndThoseNotNeededTakenBack() {
        ConcessionSearch search = search();
        search.add(List.of(fails(RuleId.RIDGE), fails(RuleId.EDGE, 2)), NONE);
        search.add(List.of(fails(RuleId.RIDGE), fails(RuleId.EDGE, 3), says(RuleId.PLUG, Outcome.CAUTION)), NONE);
        search.add(List.of(fails(RuleId.EDGE, 2)), NONE);
        search.add(List.of(fails(RuleId.LEVEL)), NONE);
        search.add(List.of(fails(RuleId.PLUG), fails(RuleId.EDGE, 2)), NONE); // a plug is never conceded
        assertThat(search.find()).containsExactly(new ConcessionStep(Concession.EDGE, 1, 0.0625));
    }

    @Test
    void aConcessionMayBuyNothingByItselfAndBeNeededAllTheSame() {
        ConcessionSearch search = search();
        for (int i = 0; i < 4; i++) {
            search.add(List.of(fails(RuleId.HOLLOW), fails(RuleId.EDGE, 2)), NONE);
        }
        search.add(List.of(fails(RuleId.LEVEL)), NONE);
        assertThat(search.find())
                .containsExactly(
                        new ConcessionStep(Concession.HOLLOW, 0, 0), new ConcessionStep(Concession.EDGE, 4, 0.25));
    }

    @Test
    void whereNothingHelpsNothingIsConceded() {
        ConcessionSearch search = search();
        search.add(List.of(fails(RuleId.EDGE, 1)), NONE);
        search.add(List.of(fails(RuleId.OLD_HOLE, 5)), NONE);
        assertThat(search.find()).isEmpty();
    }

    @Test
    void theLastOfTheOrderIsMadeToo() {
        ConcessionSearch search = search();
        search.add(List.of(fails(RuleId.LEVEL)), NONE);
        assertThat(search.find()).containsExactly(new ConcessionStep(Concession.LEVEL, 1, 0.0625));
    }
}
