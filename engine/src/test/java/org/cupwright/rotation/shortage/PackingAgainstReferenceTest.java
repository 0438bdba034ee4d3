package org.cupwright.rotation.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.cupwright.course.MapPoint;
import org.cupwright.rotation.solver.CpSat;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** How many spots go together, against every choice of them. */
class PackingAgainstReferenceTest {
    private static final double APART = 2.74;
    private static final int SPOTS = 14;

    @Test
    void whatFitsAndWhatIsCountedStandOnEitherSideOfTheTruth_andTheSolverMeetsIt() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("packings", 1000, 100);
        int countedIsTrue = 0;
        for (int i = 0; i < count; i++) {
            List<MapPoint> spots = spots(random);
            BitSet asked = new BitSet();
            for (int spot = 0; spot < SPOTS; spot++) {
                asked.set(spot, random.nextInt(5) > 0);
            }
            int truth = most(spots, asked, 0, new ArrayList<>());
            Packing packing = new Packing(spots, APART, Optional.of(new CpSat()), 10);
            assertThat(packing.fit(asked)).as("case %s", i).isLessThanOrEqualTo(truth);
            int counted = packing.most(asked).holes();
            assertThat(counted).as("case %s", i).isGreaterThanOrEqualTo(truth);
            countedIsTrue += counted == truth ? 1 : 0;
            packing.solve(asked);
            assertThat(packing.most(asked).holes()).as("case %s", i).isEqualTo(truth);
        }
        assertThat(countedIsTrue).isGreaterThan(count / 4);
    }

    private static List<MapPoint> spots(Random random) {
        List<MapPoint> spots = new ArrayList<>();
        while (spots.size() < SPOTS) {
            spots.add(new MapPoint(8 * random.nextDouble(), 8 * random.nextDouble()));
        }
        return spots;
    }

    /** Each spot taken or not, one after another. */
    private static int most(List<MapPoint> spots, BitSet asked, int from, List<MapPoint> taken) {
        if (from == spots.size()) {
            return taken.size();
        }
        int most = most(spots, asked, from + 1, taken);
        MapPoint spot = spots.get(from);
        if (asked.get(from) && taken.stream().allMatch(other -> other.distanceMetres(spot) >= APART)) {
            taken.add(spot);
            most = Math.max(most, most(spots, asked, from + 1, taken));
            taken.remove(taken.size() - 1);
        }
        return most;
    }

    /** What is known of many spots holds for fewer of them. */
    @Test
    void whatWasSolvedOfAllHoldsForAPart() {
        List<MapPoint> ring = new ArrayList<>();
        for (int i = 0; i < 5; i++) { // each is too near to its two neighbours alone: two go together, groups are three
            ring.add(new MapPoint(2 * StrictMath.cos(i * 1.2566), 2 * StrictMath.sin(i * 1.2566)));
        }
        Packing packing = new Packing(ring, APART, Optional.of(new CpSat()), 10);
        BitSet all = new BitSet();
        all.set(0, 5);
        assertThat(packing.most(all)).isEqualTo(new Packing.Most(3, false));
        packing.solve(all);
        assertThat(packing.most(all)).isEqualTo(new Packing.Most(2, true));
        assertThat(packing.fit(all)).isEqualTo(2);
        all.clear(4);
        assertThat(packing.most(all).holes()).isEqualTo(2);
    }
}
