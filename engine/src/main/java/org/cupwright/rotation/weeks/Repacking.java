package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.rotation.shortage.Packing;

/**
 * Plans one green anew on spots that are all far enough apart from each other, so that nothing rests but the spots used
 * lately: where ground is scarce, holes that are changed one by one hardly ever come to lie that closely packed.
 */
final class Repacking {
    /** A spot so near to where a hole was stands for it: our choice, half the distance of the closest spots. */
    private static final double AS_GOOD_AS_THERE_METRES = 0.25;

    private final WeeksModel model;
    private final Choices choices;
    private final SplittableRandom random;

    /** By green: which of its spots are near to which takes longer to find out than all the rest. */
    private final Map<Integer, Packing> packings = new HashMap<>();

    Repacking(WeeksModel model, Choices choices, SplittableRandom random) {
        this.model = model;
        this.choices = choices;
        this.random = random;
    }

    /**
     * Leaves the better of the plan as it was and the one found here.
     *
     * @param aboutPast whether the spots are packed about those that rest before the plan, so that it is in step with
     *     what was planned before
     * @param work how many holes are priced at most
     */
    void run(int green, boolean aboutPast, double hot, double cold, long work, BooleanSupplier goesOn) {
        int[][] before = choices.copy();
        long total = choices.total();
        GreenTable table = model.table(green);
        BitSet all = new BitSet();
        for (int day = 0; day < model.dayCount(); day++) {
            Arrays.stream(table.offered(day)).filter(spot -> !table.eased(spot)).forEach(all::set);
        }
        Packing packing = packings.computeIfAbsent(green, this::packing);
        BitSet kept = aboutPast ? packing.apart(lately(table)) : new BitSet();
        BitSet packed = packing.closer(all, kept, random);
        // Days to come do not count yet: they are still to be planned anew.
        for (int day = 0; day < model.dayCount(); day++) {
            choices.put(green, day, GreenTable.NONE);
        }
        for (int day = 0; day < model.dayCount(); day++) {
            int[] offered = packed(table, day, packed);
            if (offered.length > 0 && table.stays().begins(day)) {
                choices.put(green, day, cheapest(green, day, offered));
            }
        }
        new Tempering(model, choices, random, new int[] {green}, (of, day) -> offer(green, packed, of, day))
                .run(hot, cold, work, goesOn);
        if (choices.total() >= total) {
            choices.restore(before);
        }
    }

    /** The spots nearest to the holes before the plan, the newest first: what rests about them is as if they were. */
    private int[] lately(GreenTable table) {
        List<PastHole> past = new ArrayList<>(table.past());
        Collections.reverse(past);
        return past.stream()
                .filter(hole -> rests(hole))
                .mapToInt(hole -> nearest(table, hole.at()))
                .filter(spot -> spot != GreenTable.NONE)
                .toArray();
    }

    private boolean rests(PastHole hole) {
        LocalDate left = hole.leftOn().orElse(model.calendar().date(0));
        return model.calendar().restsUntil(left) > 0;
    }

    private static int nearest(GreenTable table, MapPoint at) {
        return IntStream.range(0, table.size())
                .filter(spot -> table.at(spot).distanceMetres(at) < AS_GOOD_AS_THERE_METRES)
                .boxed()
                .min(Comparator.comparingDouble(spot -> table.at(spot).distanceMetres(at)))
                .orElse(GreenTable.NONE);
    }

    private Packing packing(int green) {
        GreenTable table = model.table(green);
        List<MapPoint> at = IntStream.range(0, table.size()).mapToObj(table::at).toList();
        return new Packing(at, model.restMetres(), Optional.empty(), 0);
    }

    private int[] offer(int green, BitSet packed, int of, int day) {
        return of == green
                ? packed(model.table(of), day, packed)
                : model.table(of).offered(day);
    }

    /**
     * And those on eased ground, where they are wanted; a day that offers none of them, as where a hole is fixed, keeps
     * what it offers.
     */
    private static int[] packed(GreenTable table, int day, BitSet packed) {
        int[] some = Arrays.stream(table.offered(day))
                .filter(spot -> packed.get(spot) || table.eased(spot))
                .toArray();
        return some.length > 0 ? some : table.offered(day);
    }

    private int cheapest(int green, int day, int[] offered) {
        int best = offered[0];
        long least = Long.MAX_VALUE;
        for (int spot : offered) {
            long cost = choices.change(green, day, spot);
            if (cost < least) {
                least = cost;
                best = spot;
            }
        }
        return best;
    }
}
