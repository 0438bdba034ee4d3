package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.SharedGreen;

/** A request in numbers, for the search: greens, days, what choices cost. Immutable once made. */
final class WeeksModel {
    /**
     * Where holes stand already, days that play equally hard weigh so much less: else a hole that somebody fixed in a
     * hard place would move two others. Our choice.
     */
    private static final double EVEN_WHEN_CHANGED = 0.1;

    private final PlanCalendar calendar;
    private final List<GreenTable> tables;
    private final List<GreenCosts> greens;
    private final List<DayBalance> days;
    private final List<List<Integer>> sharing;
    private final List<Aims> aims;
    private final long worthOfAThird;
    private final double restMetres;
    private final boolean keepsSharedApart;
    private final StayPrice stay;

    WeeksModel(WeeksRequest request, Policy policy) {
        this(request, policy, Standing.nothing(request));
    }

    /** @param standing where the holes stand that are to be moved as little as can be */
    WeeksModel(WeeksRequest request, Policy policy, Standing standing) {
        this.calendar = new PlanCalendar(request.days(), request.rests());
        Aims usual = new Aims(policy, false);
        Aims busy = new Aims(policy, true);
        this.aims = request.days().stream()
                .map(day -> request.busy().contains(day) ? busy : usual)
                .toList();
        HolePrices prices = new HolePrices(policy, usual);
        this.worthOfAThird = prices.thirdsOff(1);
        this.restMetres = prices.restMetres;
        this.keepsSharedApart = prices.leastOnSharedMetres() >= restMetres;
        this.tables = IntStream.range(0, request.greens().size())
                .parallel()
                .mapToObj(green -> new GreenTable(
                        request.greens().get(green), standing.choice(green), calendar, policy, aims, prices))
                .toList();
        this.stay = new StayPrice(standing, tables, prices.change());
        this.sharing = sharing(request);
        this.greens = IntStream.range(0, tables.size())
                .parallel()
                .mapToObj(green -> new GreenCosts(tables, sharing.get(green), calendar, policy, prices))
                .toList();
        double leave = tables.stream().mapToDouble(GreenTable::usualLeave).sum();
        double even = policy.get(WeeksPolicy.WEIGHT_EVEN_DAYS) * (standing.isAnything() ? EVEN_WHEN_CHANGED : 1);
        Map<Aims, DayBalance> balances = new HashMap<>();
        balances.put(usual, new DayBalance(usual, prices, even, leave));
        balances.put(busy, new DayBalance(busy, prices, 0, leave)); // a busy day is meant to be easier
        this.days = aims.stream().map(balances::get).toList();
    }

    /** For each green its own number first, then those of the holes that share it. */
    private static List<List<Integer>> sharing(WeeksRequest request) {
        List<String> holes = request.greens().stream().map(GreenWeeks::hole).toList();
        List<List<Integer>> sharing = new ArrayList<>();
        for (int green = 0; green < holes.size(); green++) {
            List<Integer> numbers = new ArrayList<>(List.of(green));
            for (SharedGreen pair : request.sharedGreens()) {
                if (pair.first().equals(holes.get(green)) && holes.contains(pair.second())) {
                    numbers.add(holes.indexOf(pair.second()));
                } else if (pair.second().equals(holes.get(green)) && holes.contains(pair.first())) {
                    numbers.add(holes.indexOf(pair.first()));
                }
            }
            sharing.add(List.copyOf(numbers));
        }
        return sharing;
    }

    PlanCalendar calendar() {
        return calendar;
    }

    int greenCount() {
        return greens.size();
    }

    int dayCount() {
        return calendar.size();
    }

    GreenTable table(int green) {
        return tables.get(green);
    }

    GreenCosts green(int green) {
        return greens.get(green);
    }

    DayBalance day(int day) {
        return days.get(day);
    }

    /** Nearer to an old hole than this the ground rests. */
    double restMetres() {
        return restMetres;
    }

    /** Whether two holes of a day on one green may never be nearer to each other than to an old one. */
    boolean keepsSharedApart() {
        return keepsSharedApart;
    }

    /** What a hole in a third too many costs, in thousandths of a point. */
    long worthOfAThird() {
        return worthOfAThird;
    }

    /** What moving a hole costs that stands already, besides all else. */
    StayPrice stay() {
        return stay;
    }

    Aims aims(int day) {
        return aims.get(day);
    }

    /** The green's own number first, then those of the holes that share it. */
    List<Integer> sharing(int green) {
        return sharing.get(green);
    }
}
