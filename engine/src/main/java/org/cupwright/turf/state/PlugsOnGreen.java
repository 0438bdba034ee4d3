package org.cupwright.turf.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.PlugWork;
import org.cupwright.cupchange.PlugWork.PlugCare;
import org.cupwright.cupchange.PlugWork.PlugLook;
import org.cupwright.cupchange.PlugWork.PlugSeen;
import org.cupwright.cupchange.PlugWork.PlugSet;
import org.cupwright.cupchange.PlugWork.PlugTended;

/**
 * The plugs of a green that nobody has seen knit, in the order in which they came.
 *
 * @param plugs those untouched for more than {@link #KEPT_DAYS} are gone
 */
public record PlugsOnGreen(List<Plug> plugs) {
    /** By then a plug has knit or is bare ground that is marked as such (our choice). */
    public static final int KEPT_DAYS = 120;

    /** A plug spoken of is the nearest one within this, m: people point, they do not measure (our choice). */
    static final double SAME_PLUG_METRES = 0.5;

    /** Two plugs set on one day are one within this, m: a hole's own width and a little (our choice). */
    private static final double ONE_PLUG_METRES = 0.15;

    static final PlugsOnGreen NONE = new PlugsOnGreen(List.of());

    public PlugsOnGreen {
        plugs = List.copyOf(plugs);
    }

    PlugsOnGreen set(MapPoint at, LocalDate day) {
        int known = nearest(at, ONE_PLUG_METRES);
        if (known >= 0 && plugs.get(known).setOn().equals(day)) {
            return this;
        }
        List<Plug> more = new ArrayList<>(plugs.size() + 1);
        LocalDate oldest = day.minusDays(KEPT_DAYS);
        for (int i = 0; i < plugs.size(); i++) {
            if (i != known && !plugs.get(i).knitsSince().isBefore(oldest)) {
                more.add(plugs.get(i));
            }
        }
        more.add(Plug.set(at, day));
        return new PlugsOnGreen(more);
    }

    PlugsOnGreen worked(PlugWork work, LocalDate day) {
        if (work instanceof PlugSet set) {
            PlugsOnGreen with = set(set.at(), day);
            return set.watered() ? with.change(set.at(), day, plug -> plug.watered(day)) : with;
        } else if (work instanceof PlugSeen seen) {
            return seen.look() == PlugLook.KNIT
                    ? without(seen.at())
                    : change(seen.at(), day, plug -> plug.seen(seen.look(), day));
        } else if (work instanceof PlugTended tended) {
            PlugsOnGreen changed = change(
                    tended.at(),
                    day,
                    plug -> tended.care() == PlugCare.WATERED ? plug.watered(day) : plug.setAgain(day));
            return tended.edgePlace().map(edge -> changed.set(edge, day)).orElse(changed);
        }
        return this;
    }

    PlugsOnGreen disturbed(LocalDate day) {
        return new PlugsOnGreen(plugs.stream().map(plug -> plug.disturbed(day)).toList());
    }

    /** A plug that somebody speaks of and nobody set is known from that day on. */
    private PlugsOnGreen change(MapPoint at, LocalDate day, UnaryOperator<Plug> change) {
        int index = nearest(at, SAME_PLUG_METRES);
        List<Plug> changed = new ArrayList<>(plugs);
        if (index < 0) {
            changed.add(change.apply(Plug.set(at, day)));
        } else {
            changed.set(index, change.apply(plugs.get(index)));
        }
        return new PlugsOnGreen(changed);
    }

    private PlugsOnGreen without(MapPoint at) {
        int index = nearest(at, SAME_PLUG_METRES);
        if (index < 0) {
            return this;
        }
        List<Plug> fewer = new ArrayList<>(plugs);
        fewer.remove(index);
        return new PlugsOnGreen(fewer);
    }

    private int nearest(MapPoint at, double withinMetres) {
        int nearest = -1;
        double least = withinMetres;
        for (int i = 0; i < plugs.size(); i++) {
            double distance = plugs.get(i).at().distanceMetres(at);
            if (distance <= least) {
                least = distance;
                nearest = i;
            }
        }
        return nearest;
    }
}
