package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;

/** Figures of whole plans, worked out by hand. */
class PlanFiguresTest {
    /** Of one green, fixed day by day at spots that leave a ball one, two and six metres off: three are usual. */
    private static WeeksRequest fixed(Set<Integer> busy) {
        double[] leaves = {1, 2, 6};
        List<Candidate> spots = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            spots.add(MadeWeeks.withLeave(MadeGreens.good(5 + 10.0 * i, 15, DifficultyClass.MEDIUM), leaves[i]));
        }
        GreenWeeks green = MadeWeeks.green("1", 3, spots);
        for (int day = 0; day < 3; day++) {
            Wishes there = new Wishes(Optional.of(spots.get(day)), List.of(), false);
            GroundOnDay clear = GroundOnDay.clear(MadeWeeks.FIRST.plusDays(day));
            green = MadeWeeks.with(green, day, new GreenDay(clear, there));
        }
        return new WeeksRequest(
                MadeWeeks.days(3),
                List.of(green),
                List.of(),
                MadeWeeks.rests(1, 1),
                Set.copyOf(busy.stream().map(MadeWeeks.FIRST::plusDays).toList()),
                1);
    }

    private static double hardest(Integer... busy) {
        return new WeeksPlanner(Policy.defaults())
                .plan(fixed(Set.of(busy)), 0, SearchWatch.patient())
                .hardestOffPercent();
    }

    @Test
    void theDayThatDiffersMostIsTold_busyDaysApart() {
        assertThat(hardest()).isCloseTo(100, within(1e-9));
        assertThat(hardest(2)).isCloseTo(200 / 3.0, within(1e-9));
        assertThat(hardest(0, 2)).isCloseTo(100 / 3.0, within(1e-9));
        assertThat(hardest(0, 1, 2)).isZero();
    }

    @Test
    void aPlanTakesSoMuchWorkForEachHole() {
        WeeksRequest request = MadeWeeks.request(
                3,
                MadeWeeks.rests(1, 1),
                MadeWeeks.green("1", 3, MadeWeeks.lattice(4)),
                MadeWeeks.green("2", 3, MadeWeeks.lattice(4)));
        List<Long> most = new ArrayList<>();
        new WeeksPlanner(Policy.defaults()).plan(request, (done, all) -> {
            most.add(all);
            return false;
        });
        assertThat(most).isNotEmpty().containsOnly(6 * WeeksPlanner.WORK_PER_HOLE);
    }

    /** Three holes in front on the left, all of them easier, on both of two days. */
    @Test
    void whatIsUnevenAddsUpOverTheDays() {
        List<Candidate> one = List.of(MadeGreens.good(5, 5, DifficultyClass.EASIER));
        WeeksModel model = new WeeksModel(
                MadeWeeks.request(
                        2,
                        MadeWeeks.rests(1, 1),
                        MadeWeeks.green("1", 2, one),
                        MadeWeeks.green("2", 2, one),
                        MadeWeeks.green("3", 2, one)),
                Policy.defaults());
        assertThat(Evenness.of(model, new int[] {0, 1}, (green, day) -> 0)).isEqualTo(new Evenness(4, 2, 4, 4, 0));
        assertThat(Evenness.of(model, new int[] {1}, (green, day) -> 0)).isEqualTo(new Evenness(2, 1, 2, 2, 0));
        assertThat(Evenness.of(model, new int[] {0, 1}, (green, day) -> GreenTable.NONE))
                .isEqualTo(new Evenness(0, 0, 0, 0, 0));
    }

    private static WeeksRequest greens(int count) {
        return MadeWeeks.request(
                1,
                MadeWeeks.rests(1, 1),
                IntStream.range(0, count)
                        .mapToObj(i -> MadeWeeks.green(Integer.toString(i), 1, List.of()))
                        .toArray(GreenWeeks[]::new));
    }

    @Test
    void moreGreensThanCanBeCountedAreRefused() {
        assertThat(greens(63).greens()).hasSize(63);
        assertThatThrownBy(() -> greens(64))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at most 63 greens, not 64");
    }
}
