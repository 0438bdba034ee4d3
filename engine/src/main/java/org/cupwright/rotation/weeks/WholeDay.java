package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.rotation.EvenDay;
import org.cupwright.rotation.Price;
import org.cupwright.rotation.counting.CheapestChoice.Choice;
import org.cupwright.rotation.counting.Option;

/**
 * Chooses all holes of one day anew, those apart that stay from the day before, while the other days are as they
 * are: exactly, as the plan of one day does, with what each
 * choice does to the days before and after in its price.
 *
 * <p>Evenness of difficulty over the days takes no part, and of two holes on one green each is priced with the other
 * where it was.
 */
final class WholeDay {
    /** The cheapest spot of a kind. */
    private record Kind(int spot, long cost) {}

    private final WeeksModel model;
    private final Choices choices;
    private final int day;
    private final List<Integer> greens = new ArrayList<>();
    private final List<List<Kind>> kinds = new ArrayList<>();
    private final List<List<Option>> options = new ArrayList<>();

    private WholeDay(WeeksModel model, Choices choices, int day) {
        this.model = model;
        this.choices = choices;
        this.day = day;
        for (int green = 0; green < model.greenCount(); green++) {
            if (model.table(green).open(day)) {
                add(green);
            }
        }
    }

    /** Puts the day's holes where they are best, given all other days. */
    static void choose(WeeksModel model, Choices choices, int day) {
        new WholeDay(model, choices, day).put();
    }

    private void add(int green) {
        GreenTable table = model.table(green);
        if (!table.stays().begins(day)) {
            int spot = choices.chosen(green, day);
            greens.add(green);
            kinds.add(List.of(new Kind(spot, 0)));
            options.add(List.of(new Option(table.tally(spot), Price.ofThousandths(0))));
            return;
        }
        int[] offered = table.offered(day);
        long[] cost = new long[offered.length];
        long least = Long.MAX_VALUE;
        for (int i = 0; i < offered.length; i++) {
            cost[i] = choices.greenChange(green, day, offered[i]);
            least = Math.min(least, cost[i]);
        }
        Map<Long, Kind> cheapest = new LinkedHashMap<>();
        // Dearer than a hole in a wrong third: no evenness is worth it, and the counting takes evenness first.
        long tooDear = least + model.worthOfAThird();
        for (int i = 0; i < offered.length; i++) {
            if (cost[i] < tooDear || cost[i] == least) {
                Kind kind = new Kind(offered[i], cost[i] - least);
                cheapest.merge(table.tally(offered[i]), kind, (a, b) -> a.cost <= b.cost ? a : b);
            }
        }
        greens.add(green);
        kinds.add(List.copyOf(cheapest.values()));
        options.add(cheapest.entrySet().stream()
                .map(kind -> new Option(kind.getKey(), Price.ofThousandths(kind.getValue().cost)))
                .toList());
    }

    private void put() {
        Choice best = new EvenDay(options, model.aims(day)).find();
        for (int i = 0; i < greens.size(); i++) {
            choices.put(greens.get(i), day, kinds.get(i).get(best.options().get(i)).spot);
        }
    }
}
