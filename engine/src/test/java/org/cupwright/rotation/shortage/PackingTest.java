package org.cupwright.rotation.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.rotation.exact.ZeroOneAnswer;
import org.cupwright.rotation.exact.ZeroOneAnswer.Outcome;
import org.cupwright.rotation.exact.ZeroOneProblem;
import org.cupwright.rotation.exact.ZeroOneProblem.Count;
import org.cupwright.rotation.exact.ZeroOneSolver;
import org.cupwright.rotation.exact.ZeroOneSolver.SolverMissing;
import org.cupwright.rotation.shortage.Packing.Most;
import org.junit.jupiter.api.Test;

/** Few spots in a row, whose holes are three metres apart at least, so that what fits is seen at once. */
class PackingTest {
    private static final double APART = 3;

    private static BitSet spots(int... spots) {
        BitSet set = new BitSet();
        IntStream.of(spots).forEach(set::set);
        return set;
    }

    private static Packing packing(Optional<ZeroOneSolver> solver, double... east) {
        List<MapPoint> row = IntStream.range(0, east.length)
                .mapToObj(i -> new MapPoint(east[i], 0))
                .toList();
        return new Packing(row, APART, solver, 7);
    }

    private static Packing packing(double... east) {
        return packing(Optional.empty(), east);
    }

    @Test
    void spotsThatAreJustFarEnoughApartBothHaveAHole() {
        assertThat(packing(0, 3).fit(spots(0, 1))).isEqualTo(2);
        assertThat(packing(0, 2.999).fit(spots(0, 1))).isEqualTo(1);
        assertThat(packing(0, 3).most(spots(0, 1))).isEqualTo(new Most(2, false));
        assertThat(packing(0, 2.999).most(spots(0, 1))).isEqualTo(new Most(1, false));
    }

    /** Spots two metres apart: every second one. */
    @Test
    void soManyAsFitDoFitAndNotOneMore() {
        Packing packing = packing(2, 4, 6, 8);
        assertThat(packing.fits(spots(0, 1, 2, 3), 1)).isTrue();
        assertThat(packing.fits(spots(0, 1, 2, 3), 2)).isTrue();
        assertThat(packing.fits(spots(0, 1, 2, 3), 3)).isFalse();
        assertThat(packing.fits(spots(1, 2), 2)).isFalse();
        assertThat(packing.fits(spots(), 0)).isTrue();
    }

    /** The middle one of three takes both others away. */
    @Test
    void aSpotThatTakesFewerOthersAwayComesFirst() {
        Packing packing = packing(2, 0, 4);
        for (int seed = 0; seed < 20; seed++) {
            assertThat(packing.fitting(spots(0, 1, 2), new SplittableRandom(seed)))
                    .as("seed %s", seed)
                    .isEqualTo(spots(1, 2));
        }
    }

    /** Of three in a heap one goes, and each as often as any other. */
    @Test
    void theDrawDecidesBetweenSpotsThatTakeAsManyAway() {
        Packing packing = packing(0, 0.5, 1);
        int[] taken = new int[3];
        for (int seed = 0; seed < 3000; seed++) {
            BitSet one = packing.fitting(spots(0, 1, 2), new SplittableRandom(seed));
            assertThat(one.cardinality()).isEqualTo(1);
            taken[one.nextSetBit(0)]++;
        }
        // Each a thousand times; 26 is a standard deviation of that.
        for (int times : taken) {
            assertThat(times).isBetween(850, 1150);
        }
    }

    /** The first three are too near to each other, and the last two: of these each comes as often. */
    @Test
    void whatWasAlikeBeforeABetterOneDoesNotCount() {
        Packing packing = packing(0, 1, 2, 10, 11);
        int last = 0;
        for (int seed = 0; seed < 3000; seed++) {
            last += packing.fitting(spots(0, 1, 2, 3, 4), new SplittableRandom(seed))
                            .get(4)
                    ? 1
                    : 0;
        }
        assertThat(last).isBetween(1350, 1650);
    }

    @Test
    void everyPairThatIsTooNearStandsInAGroupAndASpotByItselfInNone() {
        assertThat(packing(0, 2, 4, 20).groups()).containsExactlyInAnyOrder(spots(0, 1), spots(1, 2));
        assertThat(packing(0, 1, 2, 20, 21).groups()).containsExactlyInAnyOrder(spots(0, 1, 2), spots(3, 4));
        assertThat(packing(0, 10, 20).groups()).isEmpty();
    }

    /** Keeps what it was asked and answers with a bound. */
    private static final class Asked implements ZeroOneSolver {
        private final List<ZeroOneProblem> problems = new ArrayList<>();
        private final long bound;

        Asked(long bound) {
            this.bound = bound;
        }

        @Override
        public ZeroOneAnswer solve(ZeroOneProblem problem, double mostWork) {
            assertThat(mostWork).isEqualTo(7);
            problems.add(problem);
            return new ZeroOneAnswer(Outcome.FOUND, new BitSet(), bound, bound);
        }
    }

    /** A yes to a hole costs nothing, a yes to none costs one; of spots 0, 1 and 3 only the first two are near. */
    @Test
    void theSolverIsAskedForTheFewestSpotsWithoutAHole() {
        Asked asked = new Asked(1);
        packing(Optional.of(asked), 0, 2, 4, 20).solve(spots(0, 1, 3));
        ZeroOneProblem problem = asked.problems.get(0);
        assertThat(problem.size()).isEqualTo(6);
        for (int spot = 0; spot < 3; spot++) {
            assertThat(problem.cost(2 * spot)).isZero();
            assertThat(problem.cost(2 * spot + 1)).isEqualTo(1);
        }
        List<Count> counts = problem.counts();
        assertThat(counts).extracting(Count::least).containsExactly(1, 1, 1, 0);
        assertThat(counts).extracting(Count::most).containsOnly(1);
        assertThat(counts)
                .extracting(Count::decisions)
                .containsExactly(new int[] {0, 1}, new int[] {2, 3}, new int[] {4, 5}, new int[] {0, 2});
    }

    @Test
    void theSameIsAskedOnceAndWhatComesOfItHoldsForAPart() {
        Asked asked = new Asked(2);
        Packing packing = packing(Optional.of(asked), 0, 3, 6);
        packing.solve(spots(0, 1, 2));
        packing.solve(spots(0, 1, 2));
        assertThat(asked.problems).hasSize(1);
        assertThat(packing.most(spots(0, 1, 2))).isEqualTo(new Most(1, true));
        assertThat(packing.most(spots(1, 2))).isEqualTo(new Most(1, true));
        // As many are counted as were solved: counting is enough.
        assertThat(packing.most(spots(1))).isEqualTo(new Most(1, false));
    }

    /** A solver that has come nowhere says less than nothing. */
    @Test
    void aBoundBelowNothingAndASolverThatIsNotThereProveNothing() {
        for (ZeroOneSolver solver : List.<ZeroOneSolver>of(new Asked(-5), (problem, work) -> {
            throw new SolverMissing(new IllegalStateException("made"));
        })) {
            Packing packing = packing(Optional.of(solver), 0, 2, 10);
            packing.solve(spots(0, 1, 2));
            assertThat(packing.most(spots(0, 1, 2))).isEqualTo(new Most(2, false));
        }
        Packing alone = packing(0, 2, 10);
        alone.solve(spots(0, 1, 2));
        assertThat(alone.most(spots(0, 1, 2))).isEqualTo(new Most(2, false));
    }

    @Test
    void whatIsAskedStaysAsItWas() {
        Packing packing = packing(0, 2, 10);
        BitSet spots = spots(0, 1, 2);
        packing.fit(spots);
        packing.most(spots);
        packing.fitting(spots, new SplittableRandom(1));
        packing.solve(spots);
        assertThat(spots).isEqualTo(spots(0, 1, 2));
    }
}
