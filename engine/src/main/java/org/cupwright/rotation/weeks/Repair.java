package org.cupwright.rotation.weeks;

import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Mends a plan whose holes mostly can stay: holes that may not are put where they cost least, then one hole after
 * another is moved, and two of a green together, as long as that pays for the moving. Without chance: equal plans are
 * mended equally.
 */
final class Repair {
    /** A hole on a day. */
    record Cell(int green, int day) {}

    private record Move(int spot, long total) {}

    private record TwoMoves(Cell first, int spot, Cell second, int other, long total) {}

    /** So many of its spots, those that cost least, a hole is tried at when another makes way for it: our choice. */
    private static final int TRIES = 60;

    /** So many holes are priced for pairs at most, a fifth of a second: our choice. */
    private static final long MOST_PAIR_WORK = 1_000_000;

    private final WeeksModel model;
    private final Choices choices;
    private final List<Cell> cells;
    private final BooleanSupplier goesOn;
    private long pairWork;

    /** @param cells the holes that may be moved */
    Repair(WeeksModel model, Choices choices, List<Cell> cells, BooleanSupplier goesOn) {
        this.model = model;
        this.choices = choices;
        this.cells = cells.stream()
                .filter(cell -> model.table(cell.green).stays().begins(cell.day))
                .filter(cell -> model.table(cell.green).offered(cell.day).length > 1)
                .toList();
        this.goesOn = goesOn;
    }

    /** Every hole where it stands if it may, where somebody fixed it, and nowhere yet else. */
    static Choices standing(WeeksModel model) {
        Choices choices = new Choices(model);
        for (int green = 0; green < model.greenCount(); green++) {
            GreenTable table = model.table(green);
            for (int day = 0; day < model.dayCount(); day = table.stays().end(day)) {
                int stand = model.stay().stand(green, day);
                if (table.offers(day, stand)) {
                    choices.put(green, day, stand);
                } else if (table.offered(day).length == 1) {
                    choices.put(green, day, table.offered(day)[0]);
                }
            }
        }
        return choices;
    }

    void run() {
        fill();
        boolean better = true;
        while (better && goesOn.getAsBoolean()) {
            better = singles() || wholeDays() || pair();
        }
    }

    private void fill() {
        for (Cell cell : cells) {
            if (choices.chosen(cell.green, cell.day) == GreenTable.NONE) {
                choices.put(cell.green, cell.day, cheapest(cell).spot);
            }
        }
    }

    private boolean singles() {
        boolean better = false;
        for (Cell cell : cells) {
            if (leastWithout(cell) < 0) {
                Move move = cheapest(cell);
                if (move.total < choices.total()) {
                    choices.put(cell.green, cell.day, move.spot);
                    better = true;
                }
            }
        }
        return better;
    }

    private Move cheapest(Cell cell) {
        long without = choices.greenChange(cell.green, cell.day, GreenTable.NONE);
        Move best = new Move(choices.chosen(cell.green, cell.day), Long.MAX_VALUE);
        for (int spot : model.table(cell.green).offered(cell.day)) {
            if (choices.total() + choices.leastChange(cell.green, cell.day, spot, without) < best.total) {
                long total = choices.total() + choices.change(cell.green, cell.day, spot);
                best = total < best.total ? new Move(spot, total) : best;
            }
        }
        return best;
    }

    /** No move of the hole saves more than this says, as nothing costs less than no hole and an even day. */
    private long leastWithout(Cell cell) {
        boolean stands = choices.chosen(cell.green, cell.day) == model.stay().stand(cell.green, cell.day);
        return choices.greenChange(cell.green, cell.day, GreenTable.NONE)
                - choices.balance(cell.green, cell.day)
                + (stands ? model.stay().price() : 0);
    }

    /** Days of which several holes are moved anyway: those chosen together, exactly. */
    private boolean wholeDays() {
        boolean better = false;
        for (int day = 0; day < model.dayCount(); day++) {
            int of = day;
            List<Cell> moved = cells.stream()
                    .filter(cell -> cell.day == of && isMoved(cell))
                    .toList();
            better |= moved.size() > 1 && new MovedTogether(model, choices, day, moved).choose();
        }
        return better;
    }

    private boolean isMoved(Cell cell) {
        return choices.chosen(cell.green, cell.day) != model.stay().stand(cell.green, cell.day);
    }

    /** A hole somewhere, and the one that is too near to it there elsewhere: the first that pays. */
    private boolean pair() {
        for (Cell cell : cells) {
            if (goesOn.getAsBoolean() && pairWork < MOST_PAIR_WORK) {
                long before = choices.work();
                TwoMoves best = bestPair(cell);
                pairWork += choices.work() - before;
                if (best.total < choices.total()) {
                    choices.put(cell.green, cell.day, best.spot);
                    choices.put(best.second.green, best.second.day, best.other);
                    return true;
                }
            }
        }
        return false;
    }

    private TwoMoves bestPair(Cell cell) {
        int back = choices.chosen(cell.green, cell.day);
        TwoMoves best = new TwoMoves(cell, back, cell, back, choices.total());
        for (Move move : tries(cell)) {
            choices.put(cell.green, cell.day, move.spot);
            for (Cell other : inTheWay(cell)) {
                if (choices.total() + leastWithout(other) < best.total) {
                    Move second = cheapest(other);
                    if (second.total < best.total) {
                        best = new TwoMoves(cell, move.spot, other, second.spot, second.total);
                    }
                }
            }
        }
        choices.put(cell.green, cell.day, back);
        return best;
    }

    /** Where a hole might be if another made way: anywhere if it is in trouble, else back where it stood. */
    private List<Move> tries(Cell cell) {
        int stand = model.stay().stand(cell.green, cell.day);
        long price = model.stay().price();
        long without = choices.greenChange(cell.green, cell.day, GreenTable.NONE);
        if (without + (isMoved(cell) ? 2 : 1) * price < 0) {
            return IntStream.of(model.table(cell.green).offered(cell.day))
                    .mapToObj(spot -> new Move(spot, choices.leastChange(cell.green, cell.day, spot, without)))
                    .sorted(Comparator.comparingLong(Move::total))
                    .limit(TRIES)
                    .toList();
        }
        boolean mayGoBack = isMoved(cell) && model.table(cell.green).offers(cell.day, stand);
        return mayGoBack ? List.of(new Move(stand, 0)) : List.of();
    }

    /** The holes that are too near to one on its green, and those of its green or day that were moved before. */
    private List<Cell> inTheWay(Cell cell) {
        return cells.stream()
                .filter(other -> !other.equals(cell) && isInTheWay(cell, other))
                .toList();
    }

    private boolean isInTheWay(Cell cell, Cell other) {
        boolean sameGreen = model.sharing(cell.green).contains(other.green);
        return sameGreen && new Nearness(model, choices).tooNear(cell, other)
                || (sameGreen || cell.day == other.day) && isMoved(other);
    }
}
