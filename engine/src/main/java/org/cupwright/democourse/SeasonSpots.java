package org.cupwright.democourse;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Third;

/** Where an invented crew would put the holes of one green, day after day: spread over its good ground, off what still rests. */
final class SeasonSpots {
    /** A little more than the distance at which ground about an old hole is taken to rest, m. */
    private static final double REST_METRES = 2.85;

    private static final int REST_DAYS = 14;

    /** Nobody puts the hole nearer than this to the day before's, m, if there is other ground. */
    private static final double YESTERDAY_METRES = 5;

    /** A hole of the season, and the day it was cut. */
    private record Used(MapPoint at, LocalDate cutOn) {}

    private final List<SeasonGoodGround.Spot> good;
    private final List<Used> used = new ArrayList<>();
    private final List<MapPoint> kept;

    /** @param kept middles of ground kept for an event */
    SeasonSpots(Hole hole, MadeSurface surface, List<MapPoint> kept) {
        this.good = SeasonGoodGround.of(hole, surface).spots();
        this.kept = kept;
    }

    /** The spot for a day, in the wanted third if there is ground left in it. */
    MapPoint choose(LocalDate day, Third wanted, Random random) {
        List<MapPoint> resting = resting(day);
        List<SeasonGoodGround.Spot> free =
                good.stream().filter(spot -> isFree(spot.at(), resting)).toList();
        List<SeasonGoodGround.Spot> far = free.stream()
                .filter(spot -> used.isEmpty() || away(spot, used.get(used.size() - 1)) >= YESTERDAY_METRES)
                .toList();
        List<SeasonGoodGround.Spot> best =
                far.stream().filter(spot -> spot.third() == wanted).toList();
        List<SeasonGoodGround.Spot> from = !best.isEmpty() ? best : !far.isEmpty() ? far : free;
        if (from.isEmpty()) {
            throw new IllegalStateException("no ground is left on the invented green about "
                    + good.get(0).at() + " on " + day);
        }
        return from.get(random.nextInt(from.size())).at();
    }

    /** Good ground near a spot to which the changer may have moved the hole; the spot itself where there is none. */
    MapPoint movedFrom(MapPoint planned, LocalDate day, Random random) {
        List<MapPoint> resting = resting(day);
        List<MapPoint> near = good.stream()
                .map(SeasonGoodGround.Spot::at)
                .filter(at -> at.distanceMetres(planned) > 0.7 && at.distanceMetres(planned) < 2.5)
                .filter(at -> isFree(at, resting))
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

    private boolean isFree(MapPoint at, List<MapPoint> resting) {
        return resting.stream().allMatch(other -> other.distanceMetres(at) >= REST_METRES)
                && kept.stream().allMatch(middle -> middle.distanceMetres(at) > SeasonSaved.RADIUS_METRES);
    }

    private static double away(SeasonGoodGround.Spot spot, Used other) {
        return spot.at().distanceMetres(other.at());
    }
}
