package org.cupwright.holelocation.levelround;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.cupwright.course.MapPoint;

/** The shortest way over a few spots, beginning with the foremost: every order is tried, by what is left to walk. */
final class Walk {
    private Walk() {}

    static List<RoundSpot> over(List<RoundSpot> spots, ToDoubleFunction<MapPoint> forward) {
        List<RoundSpot> best = new ArrayList<>();
        List<RoundSpot> left = new ArrayList<>(spots);
        left.sort((one, other) -> Double.compare(forward.applyAsDouble(one.at()), forward.applyAsDouble(other.at())));
        if (left.isEmpty()) {
            return best;
        }
        List<RoundSpot> way = new ArrayList<>(List.of(left.remove(0)));
        double[] shortest = {Double.POSITIVE_INFINITY};
        extend(way, left, 0, shortest, best);
        return best;
    }

    private static void extend(
            List<RoundSpot> way, List<RoundSpot> left, double metres, double[] shortest, List<RoundSpot> best) {
        if (metres >= shortest[0]) {
            return;
        }
        if (left.isEmpty()) {
            shortest[0] = metres;
            best.clear();
            best.addAll(way);
            return;
        }
        MapPoint here = way.get(way.size() - 1).at();
        for (int i = 0; i < left.size(); i++) {
            RoundSpot next = left.remove(i);
            way.add(next);
            extend(way, left, metres + here.distanceMetres(next.at()), shortest, best);
            way.remove(way.size() - 1);
            left.add(i, next);
        }
    }
}
