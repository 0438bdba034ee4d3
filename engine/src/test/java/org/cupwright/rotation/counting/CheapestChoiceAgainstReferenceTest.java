package org.cupwright.rotation.counting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.LongUnaryOperator;
import org.cupwright.rotation.counting.CheapestChoice.Choice;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/**
 * The search and the tables against enumeration of every choice, and against one table over all counts for more
 * greens.
 */
class CheapestChoiceAgainstReferenceTest {
    private static final long NEVER = CountingTable.IMPOSSIBLE;

    @Test
    void findsWhatEnumerationFinds() {
        int cases = Suite.count("cheapest choice against enumeration", 5000, 500);
        for (int i = 0; i < cases; i++) {
            long seed = Suite.seed() * 1_000_003 + i;
            Random random = new Random(seed);
            List<List<Option>> greens = greens(random, 1 + random.nextInt(6), 5);
            LongUnaryOperator end = end(random);
            Optional<Choice> found = CheapestChoice.find(greens, guided(greens, end));
            long least = enumerate(greens, end, 0, 0, 0);
            assertThat(found.map(Choice::cost).orElse(NEVER))
                    .as("seed %d", seed)
                    .isEqualTo(least);
            found.ifPresent(choice -> assertThat(recounted(greens, end, choice))
                    .as("seed %d", seed)
                    .isEqualTo(least));
        }
    }

    @Test
    void findsWhatOneTableOverAllCountsFinds() {
        int cases = Suite.count("cheapest choice against the whole table", 200, 10);
        for (int i = 0; i < cases; i++) {
            long seed = Suite.seed() * 2_000_003 + i;
            Random random = new Random(seed);
            List<List<Option>> greens = greens(random, 9, 12);
            LongUnaryOperator end = end(random);
            long least = new CountingTable(greens, List.of(Split.values()), end, tally -> true).leastFrom(0);
            assertThat(CheapestChoice.find(greens, guided(greens, end))
                            .map(Choice::cost)
                            .orElse(NEVER))
                    .as("seed %d", seed)
                    .isEqualTo(least);
        }
    }

    /** As the day's search does: two tables that each leave one split out, the true end cost at the end. */
    private static LongUnaryOperator guided(List<List<Option>> greens, LongUnaryOperator end) {
        CountingTable across =
                new CountingTable(greens, List.of(Split.THIRD, Split.LATERAL), seeing(end, Split.LATERAL), t -> true);
        CountingTable ranks = new CountingTable(
                greens, List.of(Split.THIRD, Split.DIFFICULTY), seeing(end, Split.DIFFICULTY), t -> true);
        return tally -> Tally.holes(tally) == greens.size()
                ? end.applyAsLong(tally)
                : Math.max(across.leastFrom(tally), ranks.leastFrom(tally));
    }

    private static LongUnaryOperator seeing(LongUnaryOperator end, Split split) {
        return tally -> end.applyAsLong(tally & (Tally.HOLES | Split.THIRD.mask() | split.mask()));
    }

    /** Even thirds asked for, or not; sides and difficulty at a price. */
    private static LongUnaryOperator end(Random random) {
        boolean strict = random.nextBoolean();
        int lateral = random.nextInt(40);
        int rank = random.nextInt(40);
        return tally -> {
            if (strict && Shares.THIRDS.holesOff(Split.THIRD.parts(tally)) > 0) {
                return NEVER;
            }
            return (long) lateral * Shares.THIRDS.holesOff(Split.LATERAL.parts(tally))
                    + (long) rank * Shares.THIRDS.holesOff(Split.DIFFICULTY.parts(tally));
        };
    }

    private static List<List<Option>> greens(Random random, int count, int most) {
        List<List<Option>> greens = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<Option> options = new ArrayList<>();
            int size = 1 + random.nextInt(most);
            boolean placed = random.nextInt(6) > 0;
            for (int j = 0; j < size; j++) {
                long tally = Tally.HOLE;
                if (placed) {
                    tally += Split.THIRD.one(random.nextInt(3)) + Split.LATERAL.one(random.nextInt(3));
                }
                if (random.nextInt(6) > 0) {
                    tally += Split.DIFFICULTY.one(random.nextInt(3));
                }
                options.add(new Option(tally, random.nextInt(50)));
            }
            greens.add(options);
        }
        return greens;
    }

    private static long enumerate(List<List<Option>> greens, LongUnaryOperator end, int green, long tally, long cost) {
        if (green == greens.size()) {
            long last = end.applyAsLong(tally);
            return last == NEVER ? NEVER : cost + last;
        }
        long least = NEVER;
        for (Option option : greens.get(green)) {
            least = Math.min(least, enumerate(greens, end, green + 1, tally + option.tally(), cost + option.cost()));
        }
        return least;
    }

    private static long recounted(List<List<Option>> greens, LongUnaryOperator end, Choice choice) {
        long tally = 0;
        long cost = 0;
        for (int i = 0; i < greens.size(); i++) {
            Option option = greens.get(i).get(choice.options().get(i));
            tally += option.tally();
            cost += option.cost();
        }
        assertThat(choice.tally()).isEqualTo(tally);
        return cost + end.applyAsLong(tally);
    }
}
