package org.cupwright.rotation.weeks;

import java.util.List;
import java.util.stream.IntStream;

/** What it costs to move a hole that stands already, in thousandths of a point; all others go anywhere for nothing. */
final class StayPrice {
    private final int[][] stands;
    private final List<GreenTable> tables;
    private final long price;

    StayPrice(Standing standing, List<GreenTable> tables, long price) {
        this.stands = IntStream.range(0, tables.size())
                .mapToObj(green -> standing.numbers(green, tables.get(green)))
                .toArray(int[][]::new);
        this.tables = tables;
        this.price = price;
    }

    /** For a hole that is cut on a day at a spot, over all the days it is there. */
    long of(int green, int day, int spot) {
        long sum = 0;
        for (int on = day; on < tables.get(green).stays().end(day); on++) {
            int stand = stands[green][on];
            sum += stand == GreenTable.NONE || stand == spot ? 0 : price;
        }
        return sum;
    }

    /** Where the hole stands; {@link GreenTable#NONE} where it has none. */
    int stand(int green, int day) {
        return stands[green][day];
    }

    long price() {
        return price;
    }
}
