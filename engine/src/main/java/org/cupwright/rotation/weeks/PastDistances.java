package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleToLongFunction;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;

/** How far a green's spots are on each day from the holes that were there before the plan. */
final class PastDistances {
    private final double[][] resting;
    private final double[][] last;
    private final double[][] plugs;
    private final long[][] conflicts;

    /**
     * @param past the holes before the plan of all that are played to the green
     * @param lastHoles which of them count among the last
     */
    PastDistances(
            GreenTable green, List<PastHole> past, LastHoles lastHoles, PlanCalendar calendar, HolePrices prices) {
        int days = calendar.size();
        this.resting = far(days, green.size());
        this.last = far(days, green.size());
        this.plugs = far(days, green.size());
        this.conflicts = new long[days][green.size()];
        for (PastHole hole : past) {
            LocalDate left = hole.leftOn().orElse(calendar.date(0));
            int restsUntil = calendar.restsUntil(left);
            for (int day = 0; day <= restsUntil; day++) {
                rest(green, hole.at(), day, calendar.restLeft(left, day), prices);
            }
            for (int day = restsUntil + 1; day <= calendar.soonAfterRestUntil(left); day++) {
                long soon = prices.soonAfterRest(calendar.soonAfterRest(left, day));
                within(prices.restMetres, green, hole.at(), conflicts[day], metres -> soon);
            }
            // Plugs of holes left before the plan lie on the ground of its days; this one is set on the first.
            int plugUntil = hole.leftOn().isPresent() ? 0 : calendar.plugShowsUntil(left);
            for (int day = 1; day <= plugUntil; day++) {
                nearest(plugs[day], green, hole.at());
            }
        }
        for (int day = 0; day < days; day++) {
            for (PastHole hole : lastHoles.past(day)) {
                nearest(last[day], green, hole.at());
            }
            for (GroundItem plug : green.green().days().get(day).ground().counting(GroundItem.Kind.PLUG)) {
                nearest(plugs[day], green, MapPoint.of(plug.place().getCoordinate()));
            }
        }
    }

    private static double[][] far(int days, int spots) {
        double[][] far = new double[days][spots];
        for (double[] day : far) {
            Arrays.fill(day, Double.POSITIVE_INFINITY);
        }
        return far;
    }

    private void rest(GreenTable green, MapPoint hole, int day, double restLeft, HolePrices prices) {
        nearest(resting[day], green, hole);
        within(prices.restMetres, green, hole, conflicts[day], metres -> prices.resting(restLeft, metres));
    }

    /** Adds what spots cost that are nearer to a hole than so many metres. */
    private static void within(
            double most, GreenTable green, MapPoint hole, long[] costs, DoubleToLongFunction ofMetres) {
        for (int spot = 0; spot < costs.length; spot++) {
            double metres = green.at(spot).distanceMetres(hole);
            costs[spot] += metres < most ? ofMetres.applyAsLong(metres) : 0;
        }
    }

    private static void nearest(double[] metres, GreenTable green, MapPoint hole) {
        for (int spot = 0; spot < metres.length; spot++) {
            metres[spot] = Math.min(metres[spot], green.at(spot).distanceMetres(hole));
        }
    }

    /** Metres to the nearest whose ground rests. */
    double resting(int day, int spot) {
        return resting[day][spot];
    }

    /** Metres to the nearest of those among the last. */
    double last(int day, int spot) {
        return last[day][spot];
    }

    /** Metres to the nearest plug that shows: of the hole in use before the plan, and those that lie there anyway. */
    double plug(int day, int spot) {
        return plugs[day][spot];
    }

    /** What it costs to cut on ground that rests about them, in thousandths of a point. */
    long conflicts(int day, int spot) {
        return conflicts[day][spot];
    }
}
