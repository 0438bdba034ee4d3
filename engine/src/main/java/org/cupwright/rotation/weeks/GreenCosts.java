package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
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
        private final GreenTable table;
        private final Clock clock;

        /** By day: the first day of the plan whose hole counts among the last. */
        private final int[] lastFrom;

        /** By day: the days before it whose holes matter, each the first of a stay that is over. */
        private final int[][] matter;

        private Source(int number, GreenTable table, Clock clock, int days) {
            this.number = number;
            this.table = table;
            this.clock = clock;
            this.lastFrom = new int[days];
            this.matter = new int[days][];
        }
    }

    /** How long the ground about the holes of a green rests and their plugs show, by the day they were cut. */
    private static final class Clock {
        private final Stays stays;
        private final int[] restsUntil;
        private final int[] soonUntil;
        private final int[] plugUntil;
        private final double[][] restLeft;
        private final long[][] soon;

        private Clock(Stays stays, PlanCalendar calendar, HolePrices prices) {
            int days = calendar.size();
            this.stays = stays;
            this.restsUntil = new int[days];
            this.plugUntil = new int[days];
            this.soonUntil = new int[days];
            this.restLeft = new double[days][days];
            this.soon = new long[days][days];
            for (int day = 0; day < days; day++) {
                LocalDate left = stays.leftOn(day);
                restsUntil[day] = calendar.restsUntil(left);
                plugUntil[day] = calendar.plugShowsUntil(left);
                for (int later = day + 1; later <= restsUntil[day]; later++) {
                    restLeft[day][later] = calendar.restLeft(left, later);
                }
                soonUntil[day] = calendar.soonAfterRestUntil(left);
                for (int later = restsUntil[day] + 1; later <= soonUntil[day]; later++) {
                    soon[day][later] = prices.soonAfterRest(calendar.soonAfterRest(left, later));
                }
            }
        }
    }

    private final GreenTable green;
    private final HolePrices prices;
    private final List<Source> sources = new ArrayList<>();
    private final PastDistances past;
    private final Optional<MapPoint> before;
    private final int[] reach;
    private final long[] sameThird;

    /** @param numbers the numbers, among all tables, of the green's own table and of those that share the green */
    GreenCosts(
            List<GreenTable> tables, List<Integer> numbers, PlanCalendar calendar, Policy policy, HolePrices prices) {
        this.green = tables.get(numbers.get(0));
        this.prices = prices;
        List<GreenTable> here = numbers.stream().map(tables::get).toList();
        LastHoles last = new LastHoles(
                calendar, here, policy.get(DistancePolicy.LAST_HOLES), policy.get(DistancePolicy.LAST_HOLES_DAYS));
        this.past = new PastDistances(
                green, here.stream().flatMap(table -> table.past().stream()).toList(), last, calendar, prices);
        this.before = green.green().yesterday();
        this.sameThird = new long[green.size()];
        for (int spot = 0; spot < sameThird.length; spot++) {
            Optional<Third> third = green.spot(spot).third();
            boolean same = third.isPresent() && third.equals(green.green().yesterdaysThird());
            sameThird[spot] = same ? prices.sameThird() : 0;
        }
        int days = calendar.size();
        for (int source = 0; source < numbers.size(); source++) {
            GreenTable other = here.get(source);
            Clock clock = new Clock(other.stays(), calendar, prices);
            sources.add(source(source, new Source(numbers.get(source), other, clock, days), last));
        }
        this.reach = reaches(days);
    }

    private static Source source(int place, Source source, LastHoles last) {
        Clock clock = source.clock;
        for (int day = 0; day < source.matter.length; day++) {
            int today = day;
            int lastFrom = last.from(place, day);
            source.lastFrom[day] = lastFrom;
            source.matter[day] = IntStream.range(0, day)
                    .filter(clock.stays::begins)
                    .filter(earlier -> clock.stays.end(earlier) <= today)
                    .filter(earlier -> clock.soonUntil[earlier] >= today
                            || clock.plugUntil[earlier] >= today
                            || earlier >= lastFrom)
                    .toArray();
        }
        return source;
    }

    /** By first day of a stay: the last day on which its hole still matters, and be it as yesterday's. */
    private int[] reaches(int days) {
        Stays stays = green.stays();
        int[] last = new int[days];
        for (int day = 0; day < days; day++) {
            last[day] = Math.min(days - 1, stays.end(day));
            for (int later = day + 1; later < days; later++) {
                int now = later;
                int of = day;
                boolean matters = sources.stream()
                        .anyMatch(source -> source.matter[now].length > 0 && source.matter[now][0] <= of);
                last[day] = matters ? Math.max(last[day], later) : last[day];
            }
        }
        return last;
    }

    /** The last day on which ground rests about the hole of a day. */
    int restsUntil(int day) {
        return sources.get(0).clock.restsUntil[day];
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
     * The cost of one hole on the day it is cut.
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
            Clock clock = source.clock;
            for (int earlier : source.matter[day]) {
                if (holes[earlier] == GreenTable.NONE) {
                    continue;
                }
                double metres = green.metres(spot, source.table, holes[earlier]);
                if (day <= clock.restsUntil[earlier]) {
                    resting = Math.min(resting, metres);
                    cost += metres < prices.restMetres ? prices.resting(clock.restLeft[earlier][day], metres) : 0;
                } else if (day <= clock.soonUntil[earlier]) {
                    cost += metres < prices.restMetres ? clock.soon[earlier][day] : 0;
                }
                if (earlier >= source.lastFrom[day]) {
                    last = Math.min(last, metres);
                }
                if (clock.stays.end(earlier) < day && day <= clock.plugUntil[earlier]) {
                    plug = Math.min(plug, metres);
                }
            }
            if (i > 0 && holes[day] != GreenTable.NONE) {
                cost += prices.onSharedGreen(green.metres(spot, source.table, holes[day]));
            }
        }
        cost += plug < prices.onPlugMetres ? 2 * prices.never() : 0;
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
        return before == GreenTable.NONE ? 0 : prices.fromYesterday(green.metres(spot, own.table, before));
    }
}
