package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.rotation.shortage.GroundNeed;
import org.cupwright.rotation.shortage.GroundNeed.Stage;

/** What the holes of a green ask of its ground over the days of a plan, as {@link GroundNeed} counts it. */
final class Needs {
    private final WeeksModel model;

    /** The greens whose holes are played to one green, by number. */
    private final List<Integer> greens;

    /** By green, the number of its first spot among those of all. */
    private final int[] firstSpot;

    private final List<MapPoint> spots = new ArrayList<>();

    Needs(WeeksModel model, List<Integer> greens) {
        this.model = model;
        this.greens = greens;
        this.firstSpot = new int[greens.size()];
        for (int i = 0; i < firstSpot.length; i++) {
            firstSpot[i] = spots.size();
            GreenTable table = model.table(greens.get(i));
            IntStream.range(0, table.size()).mapToObj(table::at).forEach(spots::add);
        }
    }

    /** The spots of all its holes; a spot that two holes may have stands here twice. */
    List<MapPoint> spots() {
        return List.copyOf(spots);
    }

    GroundNeed need() {
        int days = model.dayCount();
        List<Stage> stages = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            for (int i = 0; i < greens.size(); i++) {
                if (model.table(greens.get(i)).cut(day)) {
                    stages.add(stage(i, day));
                }
            }
        }
        return new GroundNeed(stages, restsUntil(days));
    }

    /** By day, how long the ground of its holes and of all later ones rests at least. */
    private int[] restsUntil(int days) {
        int[] until = new int[days];
        int least = days - 1;
        for (int day = days - 1; day >= 0; day--) {
            for (int green : greens) {
                if (model.table(green).cut(day)) {
                    least = Math.min(least, model.green(green).restsUntil(day));
                }
            }
            until[day] = least;
        }
        return until;
    }

    private Stage stage(int i, int day) {
        int green = greens.get(i);
        GreenTable table = model.table(green);
        BitSet offered = new BitSet();
        for (int spot : table.offered(day)) {
            if (!table.eased(spot)
                    && !model.green(green).onRestingPast(day, spot)
                    && !besideFixed(table.at(spot), day)) {
                offered.set(firstSpot[i] + spot);
            }
        }
        return new Stage(table.green().hole(), day, offered);
    }

    /** Whether it lies on ground that rests about a hole that is fixed for a day before. */
    private boolean besideFixed(MapPoint at, int day) {
        for (int green : greens) {
            GreenTable table = model.table(green);
            for (int before = 0; before < day; before++) {
                if (table.fixed(before)
                        && model.green(green).restsUntil(before) >= day
                        && at.distanceMetres(table.at(table.offered(before)[0])) < model.restMetres()) {
                    return true;
                }
            }
        }
        return false;
    }
}
