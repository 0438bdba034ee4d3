package org.cupwright.app.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;

/**
 * What a person asked for one hole on a day.
 *
 * @param hole the hole
 * @param person who asked
 * @param at the spot it is to have; empty where only ground is ruled out
 * @param notHere ground on which it is not to be
 */
public record Asked(String hole, String person, Optional<MapPoint> at, List<Circle> notHere) {
    public Asked {
        notHere = List.copyOf(notHere);
    }

    /** The ground about a spot. */
    public record Circle(MapPoint at, double radiusMetres) {
        boolean holds(MapPoint point) {
            return point.distanceMetres(at) <= radiusMetres;
        }
    }

    public static Asked nothing(String hole, String person) {
        return new Asked(hole, person, Optional.empty(), List.of());
    }

    public boolean isNothing() {
        return at.isEmpty() && notHere.isEmpty();
    }

    /** Whether a spot lies on ground that is ruled out. */
    public boolean rulesOut(MapPoint spot) {
        return notHere.stream().anyMatch(ground -> ground.holds(spot));
    }

    /** The same hole at a spot, which is then no longer ruled out. */
    public Asked here(MapPoint spot, String by) {
        List<Circle> elsewhere =
                notHere.stream().filter(ground -> !ground.holds(spot)).toList();
        return new Asked(hole, by, Optional.of(spot), elsewhere);
    }

    /** The same hole kept off some ground more; a spot that was asked for there no longer counts. */
    public Asked notHere(Circle ground, String by) {
        List<Circle> more = new ArrayList<>(notHere);
        more.add(ground);
        return new Asked(hole, by, at.filter(spot -> !ground.holds(spot)), more);
    }
}
