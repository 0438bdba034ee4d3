package org.cupwright.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayScore.Pick;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Invented greens: any choice of positions can be scored, and none scores better than the plan. */
class DayScoreTest {
    private static final Policy POLICY = Policy.defaults();
    private static final List<GreenCandidates> GREENS = MadeGreens.random(new Random(Suite.seed()), 9, 12);

    private static double points(DayScore score) {
        return score.points(term -> POLICY.get(term.weight()));
    }

    @Test
    void noChoiceByLotIsBetterThanThePlan() {
        DayPlan plan = new DayPlanner(POLICY)
                .plan(new DayRequest(LocalDate.of(2026, 5, 4), GREENS, List.of(), false, Suite.seed()));
        Random random = new Random(Suite.seed());
        for (int i = 0; i < 1000; i++) {
            List<Pick> picks = GREENS.stream()
                    .map(green -> new Pick(
                            green,
                            green.candidates()
                                    .get(random.nextInt(green.candidates().size()))))
                    .filter(pick -> pick.candidate().usable())
                    .toList();
            DayScore score = DayScore.of(picks, POLICY, false);
            if (picks.size() == GREENS.size()) {
                assertThat(score.thirdsOff()).isGreaterThanOrEqualTo(plan.thirdsOff());
                assertThat(score.thirdsOff() > plan.thirdsOff() || points(score) >= points(plan.score()) - 0.01)
                        .as("seed " + Suite.seed() + ", choice " + i)
                        .isTrue();
            }
        }
    }

    @Test
    void theScoreOfThePlansOwnChoiceIsThePlans() {
        DayPlan plan = new DayPlanner(POLICY)
                .plan(new DayRequest(LocalDate.of(2026, 5, 4), GREENS, List.of(), false, Suite.seed()));
        List<Pick> picks = GREENS.stream()
                .filter(green -> plan.find(green.hole()).isPresent())
                .map(green -> new Pick(green, plan.find(green.hole()).get().candidate()))
                .toList();
        DayScore score = DayScore.of(picks, POLICY, false);
        assertThat(score.thirdsOff()).isEqualTo(plan.thirdsOff());
        assertThat(points(score)).isCloseTo(points(plan.score()), within(1e-9));
    }
}
