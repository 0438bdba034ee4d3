package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.course.MapPoint;

/**
 * The best holes of some greens of a day together, all others being where they are: by trying every combination, each
 * priced by {@link SlowWeeks}. Evenness of difficulty over the days takes no part.
 */
final class SlowDay {
    /** A spot that is dearer by so much than its green's cheapest is not taken: as much as a hole in a wrong third. */
    private static final double A_THIRD = 300;

    /** Prices are rounded: nearer to that limit than this it cannot be told on which side of it a spot is. */
    private static final double UNSETTLED = 0.1;

    /**
     * What the best combination comes to: thirds as even as can be, and of such combinations the cheapest.
     *
     * @param points the holes, and the balance of the day
     */
    record Best(int thirdsOff, double points) {}

    private final WeeksRequest request;
    private final WeeksModel model;
    private final Choices choices;
    private final int day;
    private final Map<String, List<Optional<Stand>>> stands;
    private final double change;

    /**
     * @param stands where holes stand, by hole; may be empty
     * @param change points for each hole that is elsewhere
     */
    SlowDay(
            WeeksRequest request,
            WeeksModel model,
            Choices choices,
            int day,
            Map<String, List<Optional<Stand>>> stands,
            double change) {
        this.request = request;
        this.model = model;
        this.choices = choices;
        this.day = day;
        this.stands = stands;
        this.change = change;
    }

    private SlowWeeks slow() {
        return Chosen.slow(request, model, choices, 0);
    }

    /** What the plan comes to as it is. */
    Best now() {
        return new Best(slow().thirdsOff(day), holes() + slow().balance(day));
    }

    private double holes() {
        return slow().holes() + change * moved();
    }

    private int moved() {
        int moved = 0;
        for (int green = 0; green < model.greenCount(); green++) {
            List<Optional<Stand>> stood =
                    stands.getOrDefault(request.greens().get(green).hole(), List.of());
            for (int on = 0; on < stood.size(); on++) {
                Optional<MapPoint> from =
                        stood.get(on).map(stand -> stand.spot().at());
                Optional<MapPoint> to =
                        model.table(green).find(choices.chosen(green, on)).map(spot -> spot.at());
                moved += from.isPresent() && to.isPresent() && !from.equals(to) ? 1 : 0;
            }
        }
        return moved;
    }

    /** Empty where rounding decides what may be taken; the plan is left as it was. */
    Optional<Best> best(List<Integer> greens) {
        int[][] before = choices.copy();
        List<List<Integer>> may = new ArrayList<>();
        for (int green : greens) {
            Optional<List<Integer>> spots = notTooDear(green);
            if (spots.isEmpty()) {
                return Optional.empty();
            }
            may.add(spots.get());
        }
        Best best = best(greens, may, 0, new Best(Integer.MAX_VALUE, 0));
        choices.restore(before);
        return Optional.of(best);
    }

    private Best best(List<Integer> greens, List<List<Integer>> may, int from, Best best) {
        if (from == greens.size()) {
            Best now = now();
            boolean better =
                    now.thirdsOff < best.thirdsOff || now.thirdsOff == best.thirdsOff && now.points < best.points;
            return better ? now : best;
        }
        Best least = best;
        for (int spot : may.get(from)) {
            choices.put(greens.get(from), day, spot);
            least = best(greens, may, from + 1, least);
        }
        return least;
    }

    private Optional<List<Integer>> notTooDear(int green) {
        int back = choices.chosen(green, day);
        int[] offered = model.table(green).offered(day);
        double[] cost = new double[offered.length];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < offered.length; i++) {
            choices.put(green, day, offered[i]);
            cost[i] = holes();
            least = Math.min(least, cost[i]);
        }
        choices.put(green, day, back);
        List<Integer> may = new ArrayList<>();
        for (int i = 0; i < offered.length; i++) {
            double dearer = cost[i] - least;
            if (Math.abs(dearer - A_THIRD) < UNSETTLED) {
                return Optional.empty();
            }
            if (dearer < A_THIRD) {
                may.add(offered[i]);
            }
        }
        return Optional.of(may);
    }
}
