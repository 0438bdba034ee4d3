package org.cupwright.rotation.weeks;

import java.util.Arrays;
import java.util.BitSet;
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
     * @param work how many holes are priced at most
     */
    void run(int green, double hot, double cold, long work, BooleanSupplier goesOn) {
        int[][] before = choices.copy();
        long total = choices.total();
        GreenTable table = model.table(green);
        BitSet all = new BitSet();
        for (int day = 0; day < model.dayCount(); day++) {
            Arrays.stream(table.offered(day)).forEach(all::set);
        }
        BitSet packed = packings.computeIfAbsent(green, this::packing).fitting(all, random);
        // Days to come do not count yet: they are still to be planned anew.
        for (int day = 0; day < model.dayCount(); day++) {
            choices.put(green, day, GreenTable.NONE);
        }
        for (int day = 0; day < model.dayCount(); day++) {
            int[] offered = packed(table.offered(day), packed);
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

    private Packing packing(int green) {
        GreenTable table = model.table(green);
        List<MapPoint> at = IntStream.range(0, table.size()).mapToObj(table::at).toList();
        return new Packing(at, model.restMetres(), Optional.empty(), 0);
    }

    private int[] offer(int green, BitSet packed, int of, int day) {
        int[] offered = model.table(of).offered(day);
        return of == green ? packed(offered, packed) : offered;
    }

    /** A day that offers none of them, as where a hole is fixed, keeps what it offers. */
    private static int[] packed(int[] offered, BitSet packed) {
        int[] some = Arrays.stream(offered).filter(packed::get).toArray();
        return some.length > 0 ? some : offered;
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
