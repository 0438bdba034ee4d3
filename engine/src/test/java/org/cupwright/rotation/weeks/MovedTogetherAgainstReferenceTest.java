package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Holes of a day that are moved anyway, chosen together, against every combination of them. */
class MovedTogetherAgainstReferenceTest {
    private static final int DAYS = 3;
    private static final double CHANGE = 400;
    private static final Policy POLICY = Policy.defaults().with(WeeksPolicy.WEIGHT_EVEN_DAYS, 0.0);

    @Test
    void theyLieWhereTheyAreBestTogether_andStayThereOnceTheyDo() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("holes moved together", 500, 40);
        int better = 0;
        for (int i = 0; i < count; i++) {
            WeeksRequest request = MadeWeeks.changedDaily(MadeWeeks.unshared(MadeWeeks.odd(random, DAYS, 4, 5)));
            Map<String, List<Optional<Stand>>> stands = MadeWeeks.anyStands(request, random);
            WeeksModel model =
                    new WeeksModel(request, POLICY, Standing.of(new ChangeRequest(request, stands), new boolean[] {
                        true, true, true, true
                    }));
            Choices choices = new Choices(model);
            Chosen.fill(choices, model, random);
            int day = random.nextInt(DAYS);
            List<Integer> greens = IntStream.range(0, model.greenCount())
                    .filter(green -> model.table(green).open(day) && random.nextInt(3) > 0)
                    .boxed()
                    .toList();
            SlowDay slow = new SlowDay(request, model, choices, day, stands, CHANGE);
            Optional<SlowDay.Best> best = slow.best(greens);
            double was = slow.now().points();
            int[][] before = choices.copy();
            boolean said = new MovedTogether(model, choices, day, cells(greens, day)).choose();
            assertOthersStay(choices, day, greens, before);
            int[][] after = choices.copy();
            assertThat(new MovedTogether(model, choices, day, cells(greens, day)).choose())
                    .as("case %s, once more", i)
                    .isFalse();
            assertThat(choices.copy()).as("case %s, once more", i).isDeepEqualTo(after);
            if (best.isEmpty() || Math.abs(best.get().points() - was) < 0.05) {
                continue;
            }
            boolean pays = best.get().points() < was;
            assertThat(said).as("case %s", i).isEqualTo(pays);
            double wanted = pays ? best.get().points() : was;
            assertThat(slow.now().points()).as("case %s", i).isCloseTo(wanted, within(0.05));
            better += pays ? 1 : 0;
        }
        assertThat(better).isGreaterThan(count / 3);
    }

    private static List<Repair.Cell> cells(List<Integer> greens, int day) {
        return greens.stream().map(green -> new Repair.Cell(green, day)).toList();
    }

    private static void assertOthersStay(Choices choices, int day, List<Integer> greens, int[][] before) {
        for (int green = 0; green < before.length; green++) {
            for (int on = 0; on < DAYS; on++) {
                if (on != day || !greens.contains(green)) {
                    assertThat(choices.chosen(green, on)).isEqualTo(before[green][on]);
                }
            }
        }
    }
}
