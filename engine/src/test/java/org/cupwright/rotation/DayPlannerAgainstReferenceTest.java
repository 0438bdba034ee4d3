package org.cupwright.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/**
 * The planner against every plan there is, and every plan it makes against the independent recount. Invented greens.
 */
class DayPlannerAgainstReferenceTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private final DayPlanner planner = new DayPlanner(Policy.defaults());

    /** Prices are rounded to a thousandth of a point for each hole and for the day. */
    private static double tolerance(int greens) {
        return 0.0011 * (greens + 1);
    }

    @Test
    void noPlanOfAllIsBetter() {
        int cases = Suite.count("day plan against every plan", 2000, 150);
        for (int i = 0; i < cases; i++) {
            long seed = Suite.seed() * 3_000_017 + i;
            Random random = new Random(seed);
            List<GreenCandidates> greens = MadeGreens.odd(random, 1 + random.nextInt(6), 6);
            DayRequest request = new DayRequest(DAY, greens, List.of(), random.nextBoolean(), seed);
            DayPlan plan = planner.plan(request);
            DayPlanChecker.check(request, plan, "seed " + seed);
            EveryPlan every = new EveryPlan(request);
            assertThat(plan.thirdsOff()).as("seed %d", seed).isEqualTo(every.thirdsOff());
            assertThat(points(plan)).as("seed %d", seed).isCloseTo(every.points(), within(tolerance(greens.size())));
            for (Term term : Term.values()) {
                assertThat(plan.bounds().get(term))
                        .as("seed %d, %s", seed, term)
                        .isCloseTo(every.bounds().get(term), within(1e-5));
            }
        }
    }

    @Test
    void wholeCoursesHoldTheRecount() {
        int cases = Suite.count("day plan of whole courses", 100, 6);
        int[] sizes = {1, 9, 18, 27};
        for (int i = 0; i < cases; i++) {
            long seed = Suite.seed() * 4_000_037 + i;
            Random random = new Random(seed);
            int greens = sizes[i % sizes.length];
            boolean odd = random.nextBoolean();
            DayRequest request = new DayRequest(
                    DAY,
                    odd ? MadeGreens.odd(random, greens, 40) : MadeGreens.random(random, greens, 60),
                    List.of(),
                    random.nextBoolean(),
                    seed);
            DayPlanChecker.check(request, planner.plan(request), "seed " + seed);
        }
    }

    static double points(DayPlan plan) {
        return plan.terms().entrySet().stream()
                .mapToDouble(term -> EveryPlan.WEIGHTS.get(term.getKey()) * term.getValue())
                .sum();
    }
}
