package org.cupwright.rotation.weeks;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.cupwright.rotation.counting.Tally;

/**
 * A plan under work: which spot has the hole on which green and day, and what that costs. Not safe for use by several
 * threads.
 */
final class Choices {
    private final WeeksModel model;
    private final int[][] chosen;
    private final long[][] costs;
    private final long[] tallies;
    private final double[] leaves;
    private final long[] balances;
    private long total;
    private long work;

    /** A plan without any hole. */
    Choices(WeeksModel model) {
        this.model = model;
        this.chosen = new int[model.greenCount()][model.dayCount()];
        for (int[] green : chosen) {
            Arrays.fill(green, GreenTable.NONE);
        }
        this.costs = new long[model.greenCount()][model.dayCount()];
        this.tallies = new long[model.dayCount()];
        this.leaves = new double[model.dayCount()];
        this.balances = new long[model.dayCount()];
        for (int day = 0; day < balances.length; day++) {
            balances[day] = model.day(day).cost(0, 0);
            total += balances[day];
        }
    }

    int chosen(int green, int day) {
        return chosen[green][day];
    }

    long total() {
        return total;
    }

    /** What the greens of the days cost together on which a day's hole is there. */
    long balance(int green, int day) {
        Stays stays = model.table(green).stays();
        return LongStream.of(Arrays.copyOfRange(balances, stays.begin(day), stays.end(day)))
                .sum();
    }

    /** What the greens of a day cost together. */
    long balance(int day) {
        return balances[day];
    }

    long tally(int day) {
        return tallies[day];
    }

    /** By how much the leaves of a day's holes together are more than usual, m. */
    double leaveOff(int day) {
        return leaves[day];
    }

    /** How many holes were priced: the search's measure of work, the same on every machine. */
    long work() {
        return work;
    }

    int holes(int day) {
        return Tally.holes(tallies[day]);
    }

    /** By how much the plan would be dearer with the hole of a green elsewhere on a day, and as long as it stays. */
    long change(int green, int day, int spot) {
        Stays stays = model.table(green).stays();
        long change = greenChange(green, day, spot);
        for (int on = stays.begin(day); on < stays.end(day); on++) {
            change += balanceWith(green, on, spot) - balances[on];
        }
        return change;
    }

    /** The same, of what the greens cost by themselves. */
    long greenChange(int green, int day, int spot) {
        Stays stays = model.table(green).stays();
        int begin = stays.begin(day);
        int before = chosen[green][begin];
        Arrays.fill(chosen[green], begin, stays.end(day), spot);
        long change = 0;
        for (int other : model.sharing(green)) {
            for (int later = begin; later <= model.green(green).reach(begin); later++) {
                change += priced(other, later) - costs[other][later];
            }
        }
        Arrays.fill(chosen[green], begin, stays.end(day), before);
        return change;
    }

    /** What a hole costs is paid on the day it is cut. */
    private long priced(int green, int day) {
        work++;
        int spot = chosen[green][day];
        if (spot == GreenTable.NONE || !model.table(green).stays().cut(day)) {
            return 0;
        }
        return model.green(green).cost(day, spot, chosen) + model.stay().of(green, day, spot);
    }

    /**
     * Never more than {@link #change}, and quicker: other holes cost no less with this one there than without it.
     *
     * @param without {@link #greenChange} to no hole
     */
    long leastChange(int green, int day, int spot, long without) {
        Stays stays = model.table(green).stays();
        long change = leastGreenChange(green, day, spot, without);
        for (int on = stays.begin(day); on < stays.end(day); on++) {
            change += balanceWith(green, on, spot) - balances[on];
        }
        return change;
    }

    /** Never more than {@link #greenChange}, in the same way. */
    long leastGreenChange(int green, int day, int spot, long without) {
        work++;
        return without + model.stay().of(green, day, spot) + model.green(green).cost(day, spot, chosen);
    }

    /** What a hole at a spot costs on its day, balance and all, whatever it does to the days after it. */
    long ofDay(int green, int day, int spot) {
        return model.green(green).cost(day, spot, chosen) + balanceWith(green, day, spot);
    }

    private long balanceWith(int green, int day, int spot) {
        return model.day(day).cost(tallyWith(green, day, spot), leaveWith(green, day, spot));
    }

    private long tallyWith(int green, int day, int spot) {
        GreenTable table = model.table(green);
        int before = chosen[green][day];
        return tallies[day]
                - (before == GreenTable.NONE ? 0 : table.tally(before))
                + (spot == GreenTable.NONE ? 0 : table.tally(spot));
    }

    private double leaveWith(int green, int day, int spot) {
        GreenTable table = model.table(green);
        int before = chosen[green][day];
        return leaves[day]
                - (before == GreenTable.NONE ? 0 : table.leaveOff(before))
                + (spot == GreenTable.NONE ? 0 : table.leaveOff(spot));
    }

    /** Puts the hole of a green elsewhere on a day, and on all days of its stay. */
    void put(int green, int day, int spot) {
        Stays stays = model.table(green).stays();
        int begin = stays.begin(day);
        for (int on = begin; on < stays.end(day); on++) {
            balance(green, on, spot);
        }
        for (int other : model.sharing(green)) {
            for (int later = begin; later <= model.green(green).reach(begin); later++) {
                long cost = priced(other, later);
                total += cost - costs[other][later];
                costs[other][later] = cost;
            }
        }
    }

    private void balance(int green, int day, int spot) {
        long tally = tallyWith(green, day, spot);
        leaves[day] = leaveWith(green, day, spot);
        tallies[day] = tally;
        long balance = model.day(day).cost(tally, leaves[day]);
        total += balance - balances[day];
        balances[day] = balance;
        chosen[green][day] = spot;
    }

    /** The greens that have holes on resting ground. */
    int[] greensWithSetAside() {
        RestingHoles resting = new RestingHoles(model);
        return IntStream.range(0, chosen.length)
                .filter(green -> resting.count(this, List.of(green)) > 0)
                .toArray();
    }

    /** The choices as they are, to come back to. */
    int[][] copy() {
        int[][] copy = new int[chosen.length][];
        for (int green = 0; green < copy.length; green++) {
            copy[green] = chosen[green].clone();
        }
        return copy;
    }

    /** Back to choices that were copied. */
    void restore(int[][] copied) {
        for (int green = 0; green < copied.length; green++) {
            for (int day = 0; day < copied[green].length; day++) {
                if (chosen[green][day] != copied[green][day]) {
                    put(green, day, copied[green][day]);
                }
            }
        }
    }
}
