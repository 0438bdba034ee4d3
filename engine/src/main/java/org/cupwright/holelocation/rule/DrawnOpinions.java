package org.cupwright.holelocation.rule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.holelocation.DrawnPolicy;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.policy.Policy;

/** Which of the ground that people drew on a green a position belongs to. */
final class DrawnOpinions {
    private final List<DrawnItem> drawn;
    private final double badMetres;
    private final double usualMetres;

    DrawnOpinions(List<DrawnItem> drawn, Policy policy) {
        this.drawn = drawn;
        this.badMetres = policy.get(SlopePolicy.ABOUT_METRES);
        this.usualMetres = policy.get(DrawnPolicy.USUAL_SPOT_METRES);
    }

    boolean isEmpty() {
        return drawn.isEmpty();
    }

    boolean anyGoodGround() {
        return drawn.stream().anyMatch(item -> item.word().kind() == Kind.GOOD);
    }

    /** How near to bad ground counts as on it, m: the ground about a hole. */
    double badMetres() {
        return badMetres;
    }

    /** What is said of a position: bad before good, a spot before the ground about it, the nearest of several. */
    Optional<DrawnItem> at(MapPoint position) {
        if (drawn.isEmpty()) {
            return Optional.empty();
        }
        return nearest(Kind.BAD, position)
                .filter(bad -> bad.distanceMetres(position) < badMetres)
                .or(() -> nearest(Kind.USUAL, position).filter(spot -> spot.distanceMetres(position) <= usualMetres))
                .or(() -> nearest(Kind.GOOD, position).filter(good -> good.distanceMetres(position) == 0));
    }

    private Optional<DrawnItem> nearest(Kind kind, MapPoint position) {
        return drawn.stream()
                .filter(item -> item.word().kind() == kind)
                .min(Comparator.comparingDouble(item -> item.distanceMetres(position)));
    }
}
