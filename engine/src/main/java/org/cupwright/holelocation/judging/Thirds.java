package org.cupwright.holelocation.judging;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.holelocation.Difficulty;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.spot.Leave;

/**
 * Easier, medium and harder by thirds of a green's good ground, by the mean leave.
 *
 * <p>Leaves are compared to the millimetre, so that an even plane is not sorted by rounding errors; equal leaves belong
 * together, to the easier third. Good ground is what does not fail. There is no class without any, where nothing is
 * known of the ground, and on a green that plays the same everywhere: where the middle of its harder third leaves a
 * ball no more than {@link #SAME_METRES} farther off than the middle of its easier one.
 */
final class Thirds {
    /**
     * Our choice: at 10 ft and the usual pace of 0.43 m past the hole, a slope of 1.2 % leaves a ball so much farther
     * off than level ground does, on the mean of all headings.
     */
    private static final double SAME_METRES = 0.01;

    private final Optional<double[]> bounds;

    Thirds(double[] meanLeavesOfGoodGround) {
        double[] sorted = Arrays.stream(meanLeavesOfGoodGround)
                .filter(leave -> !Double.isNaN(leave))
                .map(Thirds::toMillimetre)
                .sorted()
                .toArray();
        boolean same = sorted.length == 0 || at(sorted, 5.0 / 6) - at(sorted, 1.0 / 6) <= SAME_METRES;
        this.bounds = same ? Optional.empty() : Optional.of(new double[] {at(sorted, 1.0 / 3), at(sorted, 2.0 / 3)});
    }

    private static double at(double[] sorted, double share) {
        return sorted[(int) (share * (sorted.length - 1))];
    }

    private static double toMillimetre(double metres) {
        return Math.rint(1000 * metres) / 1000;
    }

    Difficulty of(Leave leave) {
        if (!leave.known()) {
            return Difficulty.unknown();
        }
        return new Difficulty(
                OptionalDouble.empty(),
                bounds.map(known -> rank(toMillimetre(leave.meanMetres()), known)),
                OptionalDouble.of(leave.meanMetres()),
                OptionalDouble.of(leave.worstMetres()));
    }

    private static DifficultyClass rank(double leave, double[] bounds) {
        if (leave <= bounds[0]) {
            return DifficultyClass.EASIER;
        }
        return leave <= bounds[1] ? DifficultyClass.MEDIUM : DifficultyClass.HARDER;
    }
}
