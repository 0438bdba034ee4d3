package org.cupwright.rotation;

import java.util.List;
import java.util.function.LongUnaryOperator;
import org.cupwright.rotation.counting.CheapestChoice;
import org.cupwright.rotation.counting.CheapestChoice.Choice;
import org.cupwright.rotation.counting.CountingTable;
import org.cupwright.rotation.counting.Option;
import org.cupwright.rotation.counting.Split;
import org.cupwright.rotation.counting.Tally;

/**
 * One option for each green of a day, exactly: front, middle and back as even as the options allow, and of all such
 * choices the one of least price.
 *
 * <p>First, how even front, middle and back can be at all: counting thirds alone. Then best first over counts, guided
 * by two smaller tables that each leave one split out (see docs/decisions/0003).
 */
public final class EvenDay {
    private final List<List<Option>> greens;
    private final Aims aims;
    private final int thirdsOff;
    private final CountingTable thirdsReachable;

    /** @param greens the options of each green, priced in {@link Price}s */
    public EvenDay(List<List<Option>> greens, Aims aims) {
        this.greens = greens;
        this.aims = aims;
        List<List<Option>> free = greens.stream()
                .map(options -> options.stream()
                        .map(option -> new Option(option.tally(), 0))
                        .toList())
                .toList();
        this.thirdsOff = Math.toIntExact(
                new CountingTable(free, List.of(Split.THIRD), aims::thirdsOff, tally -> true).leastFrom(0));
        this.thirdsReachable = new CountingTable(
                free,
                List.of(Split.THIRD),
                tally -> thirdsAreBest(tally) ? 0 : CountingTable.IMPOSSIBLE,
                tally -> true);
    }

    /** The fewest holes off even thirds that the options allow. */
    public int thirdsOff() {
        return thirdsOff;
    }

    public Choice find() {
        CountingTable across = table(greens, List.of(Split.THIRD, Split.LATERAL), this::ofDay);
        CountingTable difficulty = table(greens, List.of(Split.THIRD, Split.DIFFICULTY), this::ofDay);
        LongUnaryOperator atLeast = tally -> Tally.holes(tally) == greens.size()
                ? endPrice(tally, this::ofDay)
                : Math.max(across.leastFrom(tally), difficulty.leastFrom(tally));
        return CheapestChoice.find(greens, atLeast)
                .orElseThrow(() -> new IllegalStateException("no plan has its thirds off by " + thirdsOff
                        + " holes, though counting says one has; please report this"));
    }

    private long ofDay(long tally) {
        return Price.ofDay(tally, aims);
    }

    /** A table over other prices that leaves out what is less even than need be. */
    CountingTable table(List<List<Option>> options, List<Split> splits, LongUnaryOperator price) {
        return new CountingTable(
                options,
                splits,
                tally -> endPrice(tally, price),
                tally -> thirdsReachable.leastFrom(tally) < CountingTable.IMPOSSIBLE);
    }

    private long endPrice(long tally, LongUnaryOperator price) {
        return thirdsAreBest(tally) ? price.applyAsLong(tally) : CountingTable.IMPOSSIBLE;
    }

    private boolean thirdsAreBest(long tally) {
        return aims.thirdsOff(tally) == thirdsOff;
    }
}
