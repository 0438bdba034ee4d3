package org.cupwright.turf.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.cupwright.course.MapPoint;
import org.cupwright.course.WalkOff;
import org.cupwright.turf.state.GreenState;
import org.cupwright.turf.state.HolesOnGreen;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/**
 * How worn the places of a green are, against each other. Every round lays a bell-shaped load (sd 1.5 m, our choice) about the hole of
 * its day and along the walk-off tracks; a load halves in seven days of full growth (our choice) and not at all where nothing grows. The
 * sizes mean nothing by themselves, so only ranks are given.
 */
public final class WearIndex {
    private static final double SPREAD_METRES = 1.5;
    private static final double HALVING_GROWTH_DAYS = 7;

    /** Rounds of a day nobody counted, where no day was counted at all (our choice: only ratios matter). */
    private static final double ROUNDS_UNKNOWN = 100;

    private final List<Source> sources = new ArrayList<>();

    /** A place, or a line, and the load that is left on it today. */
    private record Source(Geometry place, double load) {}

    /**
     * @param tracks the green's walk-off tracks; empty when none are drawn
     */
    public WearIndex(TurfDay turf, String hole, List<WalkOff> tracks) {
        GreenState green = turf.state().green(hole);
        GeometryFactory geometry = new GeometryFactory();
        double[] ofAllDays = {0};
        green.holes().old().forEach(old -> {
            double load = load(turf, old.cutOn(), old.leftOn());
            ofAllDays[0] += load;
            sources.add(new Source(geometry.createPoint(old.at().toCoordinate()), load));
        });
        green.cup().ifPresent(cup -> {
            double load = load(turf, cup.cutOn(), turf.day());
            ofAllDays[0] += load;
            sources.add(new Source(geometry.createPoint(cup.at().toCoordinate()), load));
        });
        for (WalkOff track : tracks) {
            Coordinate[] line =
                    track.points().stream().map(MapPoint::toCoordinate).toArray(Coordinate[]::new);
            sources.add(new Source(geometry.createLineString(line), ofAllDays[0] / tracks.size()));
        }
    }

    /** Load left today of the rounds from one day (included) to another (not included). */
    private static double load(TurfDay turf, LocalDate from, LocalDate before) {
        Map<LocalDate, Integer> rounds = turf.state().course().rounds();
        double usual =
                rounds.values().stream().mapToInt(Integer::intValue).average().orElse(ROUNDS_UNKNOWN);
        LocalDate earliest = turf.day().minusDays(HolesOnGreen.KEPT_DAYS);
        double load = 0;
        for (LocalDate day = from.isBefore(earliest) ? earliest : from; day.isBefore(before); day = day.plusDays(1)) {
            Integer counted = rounds.get(day);
            double grown = turf.growth().sum(day, turf.day());
            load += (counted == null ? usual : counted) * StrictMath.pow(0.5, grown / HALVING_GROWTH_DAYS);
        }
        return load;
    }

    /**
     * Ranks of places, 1 for the least worn; places worn alike share a rank.
     *
     * @param places in the course's frame
     * @return as many ranks, in the order of the places
     */
    public int[] ranks(List<MapPoint> places) {
        double[] worn = places.stream().mapToDouble(this::at).toArray();
        double[] sorted = Arrays.stream(worn).sorted().toArray();
        int[] ranks = new int[worn.length];
        for (int i = 0; i < worn.length; i++) {
            double own = worn[i];
            ranks[i] = 1
                    + (int) Arrays.stream(sorted)
                            .takeWhile(other -> other < own)
                            .count();
        }
        return ranks;
    }

    private double at(MapPoint place) {
        Point point = new GeometryFactory().createPoint(place.toCoordinate());
        double sum = 0;
        for (Source source : sources) {
            double spreads = source.place().distance(point) / SPREAD_METRES;
            sum += source.load() * StrictMath.exp(-spreads * spreads / 2);
        }
        return sum;
    }
}
