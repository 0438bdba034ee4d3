package org.cupwright.rotation;

import java.util.List;
import java.util.function.ToLongFunction;
import org.cupwright.rotation.counting.CheapestChoice.Choice;
import org.cupwright.rotation.counting.CountingTable;
import org.cupwright.rotation.counting.Option;
import org.cupwright.rotation.counting.Split;

/** The best plan of one day, exactly, by counting; see {@link EvenDay}. */
final class CountingSearch implements DaySearch {
    private final List<OpenGreen> greens;
    private final Aims aims;
    private final EvenDay day;

    CountingSearch(List<OpenGreen> greens, Aims aims) {
        this.greens = greens;
        this.aims = aims;
        this.day = new EvenDay(greens.stream().map(OpenGreen::options).toList(), aims);
    }

    @Override
    public int thirdsOff() {
        return day.thirdsOff();
    }

    @Override
    public Choice find() {
        return day.find();
    }

    @Override
    public double bound(Term term) {
        CountingTable table = day.table(
                priced(one -> millionths(one.terms().get(term))),
                seenBy(term),
                tally -> millionths(aims.ofDay(term, tally)));
        return table.leastFrom(0) / 1e6;
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

    /** Every candidate of every green, at another price. */
    private List<List<Option>> priced(ToLongFunction<Appraised> price) {
        return greens.stream()
                .map(green -> green.all().stream()
                        .map(one -> new Option(one.option().tally(), price.applyAsLong(one)))
                        .toList())
                .toList();
    }
}
