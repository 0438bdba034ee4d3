package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** The search's prices, which follow every change of a plan, against {@link SlowWeeks}, which works each out anew. */
class WeeksAgainstReferenceTest {
    @Test
    void whatAPlanCostsIsWhatItCostsWorkedOutAnew() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("prices of weeks", 2000, 60);
        for (int i = 0; i < count; i++) {
            WeeksRequest request =
                    MadeWeeks.odd(random, 1 + random.nextInt(8), 1 + random.nextInt(4), 6 + random.nextInt(10));
            WeeksModel model = new WeeksModel(request, Policy.defaults());
            Choices choices = new Choices(model);
            Chosen.fill(choices, model, random);
            for (int change = 0; change < 20; change++) {
                int green = random.nextInt(model.greenCount());
                int day = random.nextInt(model.dayCount());
                int[] offered = model.table(green).offered(day);
                if (offered.length > 0) {
                    int spot = offered[random.nextInt(offered.length)];
                    long before = choices.total();
                    long change1 = choices.change(green, day, spot);
                    choices.put(green, day, spot);
                    assertThat(choices.total() - before).isEqualTo(change1);
                }
            }
            double slow = Chosen.slow(request, model, choices, 200).points();
            // Each price is rounded to a thousandth, some five of them a hole.
            double holes = (double) model.greenCount() * model.dayCount();
            assertThat(choices.total() / 1000.0).as("case %s", i).isCloseTo(slow, within(0.005 * (holes + 5)));
        }
    }

    /**
     * Of all plans of few spots over few days, one by one, the search by as much work as pays finds nearly always the
     * best, and never a poor one.
     */
    @Test
    void whereEveryPlanCanBeLookedAtOneOfTheBestIsFound() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("best weeks of few spots", 200, 10);
        int found = 0;
        for (int i = 0; i < count; i++) {
            WeeksRequest request = MadeWeeks.odd(random, 3, 2, 5);
            WeeksModel model = new WeeksModel(request, Policy.defaults());
            double best = best(request, model, new Choices(model), 0);
            double points = new WeeksPlanner(Policy.defaults())
                    .plan(request, SearchWatch.patient())
                    .points();
            assertThat(points).as("case %s", i).isBetween(best - 0.05, 1.02 * best + 0.05);
            found += points <= best + 0.05 ? 1 : 0;
        }
        assertThat(found).as("best plans found of %s", count).isGreaterThanOrEqualTo(count * 98 / 100);
    }

    private static double best(WeeksRequest request, WeeksModel model, Choices choices, int from) {
        int green = from / model.dayCount();
        if (green == model.greenCount()) {
            return Chosen.slow(request, model, choices, 200).points();
        }
        int day = from % model.dayCount();
        int[] offered = model.table(green).offered(day);
        if (offered.length == 0 || !model.table(green).stays().begins(day)) {
            return best(request, model, choices, from + 1);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int spot : offered) {
            choices.put(green, day, spot);
            best = Math.min(best, best(request, model, choices, from + 1));
        }
        return best;
    }
}
