package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.rotation.EvenDay;
import org.cupwright.rotation.Price;
import org.cupwright.rotation.counting.CheapestChoice.Choice;
import org.cupwright.rotation.counting.Option;
import org.cupwright.rotation.weeks.Repair.Cell;

/**
 * Chooses the holes of a day that are moved anyway together: exactly, as {@link WholeDay} does, all others staying
 * where they are.
 */
final class MovedTogether {
    private record Kind(int spot, long cost) {}

    private final WeeksModel model;
    private final Choices choices;
    private final int day;
    private final List<Cell> moved;

    /** @param moved holes of that day */
    MovedTogether(WeeksModel model, Choices choices, int day, List<Cell> moved) {
        this.model = model;
        this.choices = choices;
        this.day = day;
        this.moved = moved;
    }

    /** Puts them where they are best together; answers whether that is better than where they were. */
    boolean choose() {
        List<List<Kind>> kinds = moved.stream().map(this::kinds).toList();
        List<List<Option>> options = new ArrayList<>();
        for (List<Kind> kind : kinds) {
            options.add(kind.stream()
                    .map(one -> new Option(tally(options.size(), one.spot), Price.ofThousandths(one.cost)))
                    .toList());
        }
        options.addAll(others());
        Choice best = new EvenDay(options, model.aims(day)).find();
        int[][] before = choices.copy();
        long total = choices.total();
        for (int i = 0; i < moved.size(); i++) {
            choices.put(
                    moved.get(i).green(), day, kinds.get(i).get(best.options().get(i)).spot);
        }
        if (choices.total() >= total) {
            choices.restore(before);
            return false;
        }
        return true;
    }

    private long tally(int place, int spot) {
        return model.table(moved.get(place).green()).tally(spot);
    }

    /** The cheapest spot of each third, side and difficulty. */
    private List<Kind> kinds(Cell cell) {
        GreenTable table = model.table(cell.green());
        long without = choices.greenChange(cell.green(), day, GreenTable.NONE);
        Map<Long, Kind> cheapest = new LinkedHashMap<>();
        for (int spot : table.offered(day)) {
            Kind known = cheapest.get(table.tally(spot));
            long least = choices.leastGreenChange(cell.green(), day, spot, without);
            if (known == null || least < known.cost) {
                long cost = choices.greenChange(cell.green(), day, spot);
                if (known == null || cost < known.cost) {
                    cheapest.put(table.tally(spot), new Kind(spot, cost));
                }
            }
        }
        long least = cheapest.values().stream().mapToLong(Kind::cost).min().orElse(0);
        return cheapest.values().stream()
                .map(kind -> new Kind(kind.spot, kind.cost - least))
                .filter(kind -> kind.cost < model.worthOfAThird() || kind.cost == 0)
                .toList();
    }

    private List<List<Option>> others() {
        List<List<Option>> others = new ArrayList<>();
        for (int green = 0; green < model.greenCount(); green++) {
            int spot = choices.chosen(green, day);
            if (spot != GreenTable.NONE && !moved.contains(new Cell(green, day))) {
                others.add(List.of(new Option(model.table(green).tally(spot), 0)));
            }
        }
        return others;
    }
}
