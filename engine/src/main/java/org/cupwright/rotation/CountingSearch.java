package org.cupwright.rotation;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongUnaryOperator;
import java.util.function.ToLongFunction;
import org.cupwright.rotation.counting.CheapestChoice;
import org.cupwright.rotation.counting.CheapestChoice.Choice;
import org.cupwright.rotation.counting.CountingTable;
import org.cupwright.rotation.counting.Option;
import org.cupwright.rotation.counting.Split;
import org.cupwright.rotation.counting.Tally;

/**
 * The best plan of one day, exactly, by counting.
 *
 * <p>First, how even front, middle and back can be at all: counting thirds alone. Then, among the plans that are as
 * even as that, the one of least price: best first over counts, guided by two smaller tables that each leave one split
 * out (see docs/decisions/0003).
 */
final class CountingSearch implements DaySearch {
    private final List<OpenGreen> greens;
    private final Aims aims;
    private final int thirdsOff;
    private final CountingTable thirdsReachable;

    CountingSearch(List<OpenGreen> greens, Aims aims) {
        this.greens = greens;
        this.aims = aims;
        this.thirdsOff = Math.toIntExact(
                new CountingTable(priced(one -> 0), List.of(Split.THIRD), aims::thirdsOff, tally -> true).leastFrom(0));
        this.thirdsReachable = new CountingTable(
                priced(one -> 0),
                List.of(Split.THIRD),
                tally -> thirdsAreBest(tally) ? 0 : CountingTable.IMPOSSIBLE,
                tally -> true);
    }

    @Override
    public int thirdsOff() {
        return thirdsOff;
    }

    @Override
    public Choice find() {
        List<List<Option>> options = greens.stream().map(OpenGreen::options).toList();
        CountingTable across = table(options, List.of(Split.THIRD, Split.LATERAL), this::ofDay);
        CountingTable difficulty = table(options, List.of(Split.THIRD, Split.DIFFICULTY), this::ofDay);
        LongUnaryOperator atLeast = tally -> Tally.holes(tally) == greens.size()
                ? endPrice(tally, this::ofDay)
                : Math.max(across.leastFrom(tally), difficulty.leastFrom(tally));
        return CheapestChoice.find(options, atLeast)
                .orElseThrow(() -> new IllegalStateException("no plan has its thirds off by " + thirdsOff
                        + " holes, though counting says one has; please report this"));
    }

    @Override
    public Map<Term, Double> bounds() {
        Map<Term, Double> bounds = new EnumMap<>(Term.class);
        for (Term term : Term.values()) {
            CountingTable table = table(
                    priced(one -> millionths(one.terms().get(term))),
                    seenBy(term),
                    tally -> millionths(aims.ofDay(term, tally)));
            bounds.put(term, table.leastFrom(0) / 1e6);
        }
        return bounds;
    }

    private long ofDay(long tally) {
        return Price.ofDay(tally, aims);
    }

    private static List<Split> seenBy(Term term) {
        return switch (term) {
            case NEAR_YESTERDAY,
                    CLOSE_TO_YESTERDAY,
                    SAME_THIRD,
                    CARE,
                    DOUBTFUL,
                    NOT_VOUCHED_FOR,
                    NO_ROOM,
                    LITTLE_ROOM -> List.of(Split.THIRD);
            case LEFT_RIGHT, LATERAL -> List.of(Split.THIRD, Split.LATERAL);
            case DIFFICULTY -> List.of(Split.THIRD, Split.DIFFICULTY);
        };
    }

    private static long millionths(double value) {
        return Math.round(value * 1e6);
    }

    private CountingTable table(List<List<Option>> options, List<Split> splits, LongUnaryOperator price) {
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

    /** Every candidate of every green, at another price. */
    private List<List<Option>> priced(ToLongFunction<Appraised> price) {
        return greens.stream()
                .map(green -> green.all().stream()
                        .map(one -> new Option(one.option().tally(), price.applyAsLong(one)))
                        .toList())
                .toList();
    }
}
