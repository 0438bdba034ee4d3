package org.cupwright.rotation.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.DaySearch;
import org.cupwright.rotation.OpenGreen;
import org.cupwright.rotation.Price;
import org.cupwright.rotation.Term;
import org.cupwright.rotation.counting.CheapestChoice.Choice;
import org.cupwright.rotation.counting.Option;

/** Takes for each green in turn what looks best by then, and never looks back. */
final class GreedySearch implements DaySearch {
    private final List<OpenGreen> greens;
    private final Aims aims;
    private final Choice choice;

    GreedySearch(List<OpenGreen> greens, Aims aims) {
        this.greens = greens;
        this.aims = aims;
        this.choice = choose();
    }

    private Choice choose() {
        List<Integer> chosen = new ArrayList<>();
        long tally = 0;
        long cost = 0;
        for (OpenGreen green : greens) {
            List<Option> options = green.options();
            long before = tally;
            int best = IntStream.range(0, options.size())
                    .boxed()
                    .min(Comparator.comparingInt((Integer i) ->
                                    aims.thirdsOff(before + options.get(i).tally()))
                            .thenComparingLong(i -> price(before, options.get(i))))
                    .orElseThrow();
            chosen.add(best);
            tally += options.get(best).tally();
            cost += options.get(best).cost();
        }
        return new Choice(chosen, cost + Price.ofDay(tally, aims), tally, greens.size());
    }

    private long price(long before, Option option) {
        return option.cost() + Price.ofDay(before + option.tally(), aims);
    }

    @Override
    public int thirdsOff() {
        return aims.thirdsOff(choice.tally());
    }

    @Override
    public Choice find() {
        return choice;
    }

    /** The least each green can add; of the terms of the whole day no more than that none is below 0. */
    @Override
    public double bound(Term term) {
        return greens.stream()
                .mapToDouble(green -> green.all().stream()
                        .mapToDouble(one -> one.terms().get(term))
                        .min()
                        .orElseThrow())
                .sum();
    }
}
