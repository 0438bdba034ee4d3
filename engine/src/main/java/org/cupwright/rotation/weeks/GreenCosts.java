package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.policy.Policy;

/**
 * What the holes of one green cost day by day, in thousandths of a point: each by itself and for the holes before it on
 * the same green. What the greens of a day cost together is {@link DayBalance}'s.
 */
final class GreenCosts {
    /** A hole played to this green: the green's own, or another that shares it. */
    private static final class Source {
        private final int number;
        private final float[][] apart;

        /** By day: the first day of the plan whose hole counts among the last. */
        private final int[] lastFrom;

        /** By day: the first day of the plan whose hole matters at all. */
        private final int[] from;

        private Source(int number, float[][] apart, int days) {
            this.number = number;
            this.apart = apart;
            this.lastFrom = new int[days];
            this.from = new int[days];
        }
    }

    private final GreenTable green;
    private final HolePrices prices;
    private final List<Source> sources = new ArrayList<>();
    private final PastDistances past;
    private final Optional<MapPoint> before;
    private final int[] restsUntil;
    private final int[] plugUntil;
    private final double[][] restLeft;
    private final int[] reach;
    private final long[] sameThird;

    /** @param numbers the numbers, among all tables, of the green's own table and of those that share the green */
    GreenCosts(
            List<GreenTable> tables, List<Integer> numbers, PlanCalendar calendar, Policy policy, HolePrices prices) {
        this.green = tables.get(numbers.get(0));
        this.prices = prices;
        List<GreenTable> here = numbers.stream().map(tables::get).toList();
        LastHoles last = new LastHoles(
                calendar,
                here.stream().map(table -> table.green().past()).toList(),
                here.stream().map(GreenTable::openDays).toList(),
                policy.get(DistancePolicy.LAST_HOLES),
                policy.get(DistancePolicy.LAST_HOLES_DAYS));
        this.past = new PastDistances(
                green,
                here.stream().flatMap(table -> table.green().past().stream()).toList(),
                last,
                calendar,
                prices);
        this.before = green.green().yesterday();
        this.sameThird = new long[green.size()];
        for (int spot = 0; spot < sameThird.length; spot++) {
            Optional<Third> third = green.spot(spot).third();
            boolean same = third.isPresent() && third.equals(green.green().yesterdaysThird());
            sameThird[spot] = same ? prices.sameThird() : 0;
        }
        int days = calendar.size();
        this.restsUntil = new int[days];
        this.plugUntil = new int[days];
        this.restLeft = new double[days][days];
        for (int day = 0; day < days; day++) {
            clocks(day, calendar);
        }
        for (int source = 0; source < numbers.size(); source++) {
            sources.add(source(source, numbers.get(source), green.apart(here.get(source)), last, days));
        }
        this.reach = reaches(days);
    }

    private void clocks(int day, PlanCalendar calendar) {
        LocalDate left = calendar.leftOn(day);
        restsUntil[day] = calendar.restsUntil(left);
        plugUntil[day] = calendar.plugShowsUntil(left);
        for (int later = day + 1; later <= restsUntil[day]; later++) {
            restLeft[day][later] = calendar.restLeft(left, later);
        }
    }

    private Source source(int place, int number, float[][] apart, LastHoles last, int days) {
        Source source = new Source(number, apart, days);
        for (int day = 0; day < days; day++) {
            source.lastFrom[day] = last.from(place, day);
            int from = Math.min(source.lastFrom[day], Math.max(0, day - 1));
            for (int earlier = 0; earlier < day; earlier++) {
                boolean counts = restsUntil[earlier] >= day || plugUntil[earlier] >= day;
                from = counts ? Math.min(from, earlier) : from;
            }
            source.from[day] = from;
        }
        return source;
    }

    /** By day: the last day on which its hole still matters. */
    private int[] reaches(int days) {
        int[] last = new int[days];
        for (int day = 0; day < days; day++) {
            last[day] = day;
            for (int later = day + 1; later < days; later++) {
                int now = later;
                int of = day;
                boolean matters = sources.stream().anyMatch(source -> source.from[now] <= of);
                last[day] = matters ? later : last[day];
            }
        }
        return last;
    }

    GreenTable green() {
        return green;
    }

    /** The last day on which ground rests about a hole that was cut on a day. */
    int restsUntil(int day) {
        return restsUntil[day];
    }

    /** Whether a spot lies on ground that rests about a hole before the plan. */
    boolean onRestingPast(int day, int spot) {
        return past.resting(day, spot) < prices.restMetres;
    }

    /** The last day whose cost depends on where the hole is on a day. */
    int reach(int day) {
        return reach[day];
    }

    /**
     * The cost of one hole on one day.
     *
     * @param chosen by green and day, which spot has the hole; {@link GreenTable#NONE} where none does
     */
    long cost(int day, int spot, int[][] chosen) {
        double resting = past.resting(day, spot);
        double last = past.last(day, spot);
        double plug = past.plug(day, spot);
        long cost = green.own(spot) + past.conflicts(day, spot);
        for (int i = 0; i < sources.size(); i++) {
            Source source = sources.get(i);
            int[] holes = chosen[source.number];
            float[] apart = source.apart[spot];
            for (int earlier = day - 1; earlier >= source.from[day]; earlier--) {
                if (holes[earlier] == GreenTable.NONE) {
                    continue;
                }
                double metres = apart[holes[earlier]];
                if (day <= restsUntil[earlier]) {
                    resting = Math.min(resting, metres);
                    cost += metres < prices.restMetres ? prices.resting(restLeft[earlier][day]) : 0;
                }
                if (earlier >= source.lastFrom[day]) {
                    last = Math.min(last, metres);
                }
                if (earlier < day - 1 && day <= plugUntil[earlier]) {
                    plug = Math.min(plug, metres);
                }
            }
            if (i > 0 && holes[day] != GreenTable.NONE) {
                cost += prices.onSharedGreen(apart[holes[day]]);
            }
        }
        cost += plug < prices.onPlugMetres ? 2 * prices.resting(1) : 0;
        // What is set aside asks for no care besides: the rule about old holes answers once.
        boolean nearLast = resting >= prices.restMetres && last < prices.lastMetres;
        boolean care = green.care(day, spot) || nearLast || plug < prices.plugMetres;
        double room = Math.min(green.room(spot), resting - prices.restMetres);
        if (!care) {
            room = Math.min(room, Math.min(last - prices.lastMetres, plug - prices.plugMetres));
        }
        return cost + (care ? prices.care() : 0) + prices.room(room) + fromYesterday(day, spot, chosen);
    }

    private long fromYesterday(int day, int spot, int[][] chosen) {
        Source own = sources.get(0);
        if (day == 0) {
            return before.map(at -> prices.fromYesterday(green.at(spot).distanceMetres(at)))
                    .orElse(sameThird[spot]);
        }
        int before = chosen[own.number][day - 1];
        return before == GreenTable.NONE ? 0 : prices.fromYesterday(own.apart[spot][before]);
    }
}
