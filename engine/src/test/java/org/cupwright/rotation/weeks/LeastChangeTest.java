package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** What a change surely costs at least, which spares pricing it. */
class LeastChangeTest {
    @Test
    void itIsNeverMoreThanTheChange_andAllOfItWhereNoLaterHoleMinds() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("least changes", 300, 60);
        for (int i = 0; i < count; i++) {
            WeeksRequest request = MadeWeeks.unshared(MadeWeeks.changedDaily(MadeWeeks.odd(random, 4, 2, 6)));
            WeeksModel model = new WeeksModel(
                    request,
                    Policy.defaults(),
                    Standing.of(
                            new ChangeRequest(request, MadeWeeks.anyStands(request, random)),
                            new boolean[] {true, true}));
            Choices choices = new Choices(model);
            Chosen.fill(choices, model, random);
            for (int green = 0; green < 2; green++) {
                for (int day = 0; day < 4; day++) {
                    long without = choices.greenChange(green, day, GreenTable.NONE);
                    for (int spot : model.table(green).offered(day)) {
                        long ofGreen = choices.greenChange(green, day, spot);
                        long work = choices.work();
                        long leastOfGreen = choices.leastGreenChange(green, day, spot, without);
                        assertThat(choices.work()).as("one hole is priced").isEqualTo(work + 1);
                        long change = choices.change(green, day, spot);
                        long least = choices.leastChange(green, day, spot, without);
                        assertThat(leastOfGreen).isLessThanOrEqualTo(ofGreen);
                        assertThat(change - least).isEqualTo(ofGreen - leastOfGreen);
                        if (day == 3) {
                            assertThat(leastOfGreen).isEqualTo(ofGreen);
                        }
                    }
                }
            }
        }
    }
}
