package org.cupwright.democourse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.SeasonGoodGround.Spot;
import org.cupwright.green.Third;

/**
 * Where an invented crew would put the holes of one green, day after day: spread over its good ground, off what still
 * rests.
 */
final class SeasonSpots {
    /**
     * A little more than the three paces about an old hole that rest: R&A, Guidance on Running a Competition, ch. 4
     * (superseded).
     */
    private static final double REST_METRES = 2.8;

    /** Lemons, USGA Green Section Record, 2008: no fewer than 14 days. */
    private static final int REST_DAYS = 14;

    /** Nobody puts the hole nearer than this to the day before's, m, if there is other ground (our choice). */
    private static final double YESTERDAY_METRES = 5;

    /** A hole of the season, and the day it was cut. */
    private record Used(MapPoint at, LocalDate cutOn) {}

    private final List<Spot> good;

    /** Of each spot, the numbers of those that a hole there would put to rest with it. */
    private final List<int[]> about;

    private final List<Used> used = new ArrayList<>();
    private final List<MapPoint> kept;

    /** @param kept middles of ground kept for an event */
    SeasonSpots(SeasonGoodGround ground, List<MapPoint> kept) {
        this.good = ground.spots();
        this.kept = kept;
        this.about = good.stream().map(spot -> within(spot.at())).toList();
    }

    private int[] within(MapPoint at) {
        return IntStream.range(0, good.size())
                .filter(i -> isWithin(good.get(i).at(), at, REST_METRES))
                .toArray();
    }

    /**
     * The spot for a day, in the wanted third if there is ground left in it; where all rests, the one farthest from
     * what rests.
     */
    MapPoint choose(LocalDate day, Third wanted, Random random) {
        List<MapPoint> resting = resting(day);
        boolean[] free = new boolean[good.size()];
        for (int i = 0; i < free.length; i++) {
            free[i] = isFree(good.get(i).at(), resting, day);
        }
        List<Integer> all =
                IntStream.range(0, free.length).filter(i -> free[i]).boxed().toList();
        List<Integer> far = all.stream().filter(this::isFarFromYesterday).toList();
        List<Integer> best =
                far.stream().filter(i -> good.get(i).third() == wanted).toList();
        List<Integer> from = !best.isEmpty() ? best : !far.isEmpty() ? far : all;
        return from.isEmpty() ? farthest(resting) : thrifty(from, free, random);
    }

    /**
     * One of those that leave the most ground for the days after: whoever does otherwise runs out of it on a small
     * green.
     */
    private MapPoint thrifty(List<Integer> from, boolean[] free, Random random) {
        long[] taken = new long[free.length];
        from.forEach(
                i -> taken[i] = Arrays.stream(about.get(i)).filter(j -> free[j]).count());
        List<Integer> sorted =
                from.stream().sorted(Comparator.comparingLong(i -> taken[i])).toList();
        return good.get(sorted.get(random.nextInt(1 + sorted.size() / 4))).at();
    }

    private MapPoint farthest(List<MapPoint> resting) {
        return good.stream()
                .map(Spot::at)
                .max(Comparator.comparingDouble(at ->
                        resting.stream().mapToDouble(at::distanceMetres).min().orElse(0)))
                .orElseThrow();
    }

    private boolean isFarFromYesterday(int spot) {
        return used.isEmpty()
                || used.get(used.size() - 1).at().distanceMetres(good.get(spot).at()) >= YESTERDAY_METRES;
    }

    /** Good ground near a spot to which the changer may have moved the hole; the spot itself where there is none. */
    MapPoint movedFrom(MapPoint planned, LocalDate day, Random random) {
        List<MapPoint> resting = resting(day);
        List<MapPoint> near = good.stream()
                .map(Spot::at)
                .filter(at -> at.distanceMetres(planned) > 0.7 && at.distanceMetres(planned) < 2.5)
                .filter(at -> isFree(at, resting, day))
                .toList();
        return near.isEmpty() ? planned : near.get(random.nextInt(near.size()));
    }

    void cut(MapPoint at, LocalDate day) {
        used.add(new Used(at, day));
    }

    private List<MapPoint> resting(LocalDate day) {
        List<MapPoint> resting = new ArrayList<>();
        LocalDate leftOn = day;
        for (int i = used.size() - 1; i >= 0 && leftOn.isAfter(day.minusDays(REST_DAYS)); i--) {
            resting.add(used.get(i).at());
            leftOn = used.get(i).cutOn();
        }
        return resting;
    }

    private boolean isFree(MapPoint at, List<MapPoint> resting, LocalDate day) {
        return resting.stream().noneMatch(other -> isWithin(other, at, REST_METRES))
                && (day.isBefore(SeasonSaved.SPARED_FROM)
                        || kept.stream().noneMatch(middle -> isWithin(middle, at, SeasonSaved.RADIUS_METRES)));
    }

    /** Asked millions of times, so without a root. */
    private static boolean isWithin(MapPoint one, MapPoint other, double metres) {
        double east = one.east() - other.east();
        double north = one.north() - other.north();
        return east * east + north * north < metres * metres;
    }
}
