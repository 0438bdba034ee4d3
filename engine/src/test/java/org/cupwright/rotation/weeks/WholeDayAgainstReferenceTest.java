package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** The holes of one day chosen anew, against every combination of them, given the other days. */
class WholeDayAgainstReferenceTest {
    private static final int DAYS = 3;

    @Test
    void noOtherHolesOfTheDayAreBetterTogether_andTheOtherDaysStay() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("whole days", 500, 25);
        int settled = 0;
        for (int i = 0; i < count; i++) {
            WeeksRequest request = MadeWeeks.unshared(MadeWeeks.odd(random, DAYS, 3, 5));
            WeeksModel model = new WeeksModel(request, Policy.defaults());
            Choices choices = new Choices(model);
            Chosen.fill(choices, model, random);
            int day = random.nextInt(DAYS);
            List<Integer> greens = IntStream.range(0, model.greenCount())
                    .filter(green -> model.table(green).open(day))
                    .filter(green -> model.table(green).stays().begins(day))
                    .boxed()
                    .toList();
            SlowDay slow = new SlowDay(request, model, choices, day, Map.of(), 0);
            Optional<SlowDay.Best> best = slow.best(greens);
            int[][] before = choices.copy();
            WholeDay.choose(model, choices, day);
            assertOthersStay(model, choices, day, before);
            if (best.isPresent()) {
                settled++;
                assertThat(slow.now().thirdsOff())
                        .as("case %s", i)
                        .isEqualTo(best.get().thirdsOff());
                assertThat(slow.now().points())
                        .as("case %s", i)
                        .isCloseTo(best.get().points(), within(0.05));
            }
        }
        assertThat(settled).isGreaterThan(count * 3 / 4);
    }

    private static void assertOthersStay(WeeksModel model, Choices choices, int day, int[][] before) {
        for (int green = 0; green < before.length; green++) {
            for (int on = 0; on < DAYS; on++) {
                if (model.table(green).stays().begin(on) != day) {
                    assertThat(choices.chosen(green, on)).isEqualTo(before[green][on]);
                }
            }
        }
    }

    /** One green has ground in front alone, one in the middle; for the third the back takes care that costs so much. */
    private static String placeOfTheThird(double care) {
        List<Candidate> front = List.of(MadeGreens.good(15, 5, DifficultyClass.MEDIUM));
        List<Candidate> middle = List.of(MadeGreens.good(15, 15, DifficultyClass.MEDIUM));
        List<Candidate> either = List.of(
                MadeGreens.good(15, 5, DifficultyClass.MEDIUM),
                MadeGreens.candidate(15, 25, Verdict.CAUTION, Optional.of(DifficultyClass.MEDIUM), true, 3));
        WeeksModel model = new WeeksModel(
                MadeWeeks.request(
                        1,
                        MadeWeeks.rests(1, 1),
                        MadeWeeks.green("1", 1, front),
                        MadeWeeks.green("2", 1, middle),
                        MadeWeeks.green("3", 1, either)),
                Policy.defaults().with(RotationPolicy.WEIGHT_CARE, care));
        Choices choices = new Choices(model);
        WholeDay.choose(model, choices, 0);
        return model.table(2).spot(choices.chosen(2, 0)).third().orElseThrow().name();
    }

    @Test
    void evenThirdsAreWorthLessThanWhatAHoleInAWrongThirdCosts() {
        assertThat(placeOfTheThird(299.9)).isEqualTo("BACK");
        assertThat(placeOfTheThird(300)).isEqualTo("FRONT");
        assertThat(placeOfTheThird(300.1)).isEqualTo("FRONT");
    }
}
