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
 * together, to the easier third. On ground that is the same everywhere all of it is easier. Good ground is what does
 * not fail; without any, or where nothing is known of the ground, there is no class.
 */
final class Thirds {
    private final Optional<double[]> bounds;

    Thirds(double[] meanLeavesOfGoodGround) {
        double[] sorted = Arrays.stream(meanLeavesOfGoodGround)
                .filter(leave -> !Double.isNaN(leave))
                .map(Thirds::toMillimetre)
                .sorted()
                .toArray();
        this.bounds = sorted.length == 0
                ? Optional.empty()
                : Optional.of(new double[] {sorted[(sorted.length - 1) / 3], sorted[2 * (sorted.length - 1) / 3]});
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
