package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToLongFunction;
import java.util.function.LongUnaryOperator;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.Term;
import org.cupwright.rotation.counting.CountingTable;
import org.cupwright.rotation.counting.Option;
import org.cupwright.rotation.counting.Split;

/** The bounds of weeks that add up over days: each day the least there is among what it offers, one term alone. */
final class CountedBounds {
    private static final double UNITS = 1e6;

    private final WeeksModel model;

    /**
     * A day is like another if its greens offer the same and the same is wanted of it; a table hands out the same array
     * for days that are alike, and arrays are equal to themselves alone.
     */
    private record Day(Aims aims, List<int[]> offered, List<boolean[]> care, List<Boolean> cut) {}

    private record Least(int thirdsOff, Map<Term, Double> terms) {}

    CountedBounds(WeeksModel model) {
        this.model = model;
    }

    /** @param holesSetAside for how many holes every plan sets a rule aside */
    WeeksBounds of(int holesSetAside) {
        Map<Day, Least> known = new HashMap<>();
        int thirdsOff = 0;
        Map<Term, Double> terms = new EnumMap<>(Term.class);
        for (int day = 0; day < model.dayCount(); day++) {
            int number = day;
            Least least = known.computeIfAbsent(key(day), key -> least(number));
            thirdsOff += least.thirdsOff();
            least.terms().forEach((term, value) -> terms.merge(term, value, Double::sum));
        }
        return new WeeksBounds(holesSetAside, thirdsOff, terms);
    }

    private Day key(int day) {
        List<int[]> offered = new ArrayList<>();
        List<boolean[]> care = new ArrayList<>();
        List<Boolean> cut = new ArrayList<>();
        for (int green = 0; green < model.greenCount(); green++) {
            offered.add(model.table(green).offered(day));
            care.add(model.table(green).care(day));
            cut.add(model.table(green).cut(day));
        }
        return new Day(model.aims(day), offered, care, cut);
    }

    private Least least(int day) {
        Aims aims = model.aims(day);
        Map<Term, Double> terms = new EnumMap<>(Term.class);
        terms.put(Term.LEFT_RIGHT, ofDay(day, Split.LATERAL, tally -> units(aims.ofDay(Term.LEFT_RIGHT, tally))));
        terms.put(Term.LATERAL, ofDay(day, Split.LATERAL, tally -> units(aims.ofDay(Term.LATERAL, tally))));
        terms.put(Term.DIFFICULTY, ofDay(day, Split.DIFFICULTY, tally -> units(aims.ofDay(Term.DIFFICULTY, tally))));
        terms.put(Term.CARE, sum(day, green -> spot -> model.table(green).care(day, spot) ? 1 : 0));
        terms.put(
                Term.DOUBTFUL,
                sum(day, green -> spot -> model.table(green).spot(spot).doubtful() ? 1 : 0));
        double thirds = ofDay(day, Split.THIRD, tally -> units(aims.thirdsOff(tally)));
        return new Least((int) Math.round(thirds), terms);
    }

    private static long units(double value) {
        return Math.round(value * UNITS);
    }

    private double ofDay(int day, Split split, LongUnaryOperator price) {
        List<List<Option>> options = new ArrayList<>();
        for (int green = 0; green < model.greenCount(); green++) {
            GreenTable table = model.table(green);
            if (table.open(day)) {
                options.add(Arrays.stream(table.offered(day))
                        .mapToLong(table::tally)
                        .distinct()
                        .mapToObj(tally -> new Option(tally, 0))
                        .toList());
            }
        }
        return new CountingTable(options, List.of(split), price, tally -> true).leastFrom(0) / UNITS;
    }

    private interface OfGreen {
        IntToLongFunction of(int green);
    }

    private double sum(int day, OfGreen holes) {
        double sum = 0;
        for (int green = 0; green < model.greenCount(); green++) {
            if (!model.table(green).cut(day)) {
                continue; // what a hole costs is paid on the day it is cut
            }
            IntToLongFunction of = holes.of(green);
            sum += Arrays.stream(model.table(green).offered(day))
                    .mapToLong(of::applyAsLong)
                    .min()
                    .orElse(0);
        }
        return sum;
    }
}
