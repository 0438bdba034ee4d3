package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.policy.Policy;
import org.junit.jupiter.api.Test;

/** Up to which day a hole matters, of eight days on which it is changed, worked out by hand. */
class ReachTest {
    private static List<Integer> reach(int rest, int plug, int lastHoles) {
        WeeksModel model = new WeeksModel(
                MadeWeeks.request(8, MadeWeeks.rests(rest, plug), MadeWeeks.green("1", 8, MadeWeeks.lattice(8))),
                Policy.defaults().with(DistancePolicy.LAST_HOLES, lastHoles));
        return IntStream.range(0, 8).map(model.green(0)::reach).boxed().toList();
    }

    /**
     * As yesterday's it matters on the day after; that it rests and shows is counted from that day, and three days more
     * count as soon after its rest.
     */
    @Test
    void itMattersAsLongAsItsGroundRestsItsPlugShowsOrItIsOneOfTheLast() {
        assertThat(reach(0, 0, 0)).containsExactly(1, 2, 3, 4, 5, 6, 7, 7);
        assertThat(reach(3, 0, 0)).containsExactly(6, 7, 7, 7, 7, 7, 7, 7);
        assertThat(reach(0, 4, 0)).containsExactly(4, 5, 6, 7, 7, 7, 7, 7);
        assertThat(reach(1, 0, 0)).containsExactly(4, 5, 6, 7, 7, 7, 7, 7);
        assertThat(reach(2, 1, 5)).containsExactly(5, 6, 7, 7, 7, 7, 7, 7);
    }
}
