package org.cupwright.settingout;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.End;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.Side;
import org.cupwright.policy.Policy;
import org.cupwright.units.Heading;
import org.cupwright.units.Paces;

/**
 * Turns positions on one green into directions for the changer, by the course's convention and pace.
 */
public final class SettingOut {
    private final Hole hole;
    private final Optional<GreenFrame> frame;
    private final double paceMetres;

    private SettingOut(Hole hole, Policy policy) {
        this.hole = hole;
        this.frame = GreenFrame.of(hole, policy.get(PlacePolicy.ON_CONVENTION));
        this.paceMetres = policy.get(PlacePolicy.PACE_METRES);
    }

    public static SettingOut of(Hole hole, Policy policy) {
        return new SettingOut(hole, policy);
    }

    /**
     * Directions to a position of the green whose surroundings were not judged.
     *
     * @throws IllegalArgumentException if the position is not on the green
     */
    public Directions directions(MapPoint position) {
        return directions(position, Optional.empty());
    }

    /**
     * Directions to a position of the green.
     *
     * @param goodWithinMetres how far off, every way, a hole is still good
     * @param moreRoom the direction on the map in which there is more room, where one stands out
     * @throws IllegalArgumentException if the position is not on the green
     */
    public Directions directions(MapPoint position, double goodWithinMetres, Optional<Heading> moreRoom) {
        Optional<Way> way = frame.flatMap(known -> moreRoom.map(heading -> Way.of(heading, known.play())));
        return directions(position, Optional.of(Leeway.of(goodWithinMetres, paceMetres, way)));
    }

    private Directions directions(MapPoint position, Optional<Leeway> leeway) {
        if (!hole.green().contains(position)) {
            throw new IllegalArgumentException("there is no way to " + position.east() + ", " + position.north()
                    + ": it is not on the green of hole " + hole.id() + ". Choose a position inside its outline.");
        }
        return new Directions(
                position,
                frame.map(known -> PacedPlace.of(known.place(position), paceMetres)),
                FromMark.nearest(position, hole.marks(), paceMetres),
                leeway);
    }

    private List<MapPoint> findAll(End end, double endPaces, Side side, double sidePaces) {
        GreenFrame known = frame.orElseThrow(); // paces are said where there is a frame alone
        return known.findAll(end, Paces.toMetres(endPaces, paceMetres), side, Paces.toMetres(sidePaces, paceMetres));
    }

    /**
     * Whether words and paces lead to one place alone. On a green with arms, or with a bunker inside, the same paces
     * can fit another place that is said in the same words: then the directions from a mark, or a drawing, must be
     * given too. Also false where rounding alone leads more than a pace away (in line with the edge of a bunker inside
     * the green, where the line that "on" is measured on changes at once), and where there is no line of play.
     */
    public boolean leadToOnePlace(Directions directions) {
        if (directions.place().isEmpty()) {
            return false;
        }
        PacedPlace meant = directions.place().get();
        List<MapPoint> nearestFirst = pacedTo(directions).stream()
                .sorted(Comparator.comparingDouble(led -> led.distanceMetres(directions.at())))
                .toList();
        return !nearestFirst.isEmpty()
                && nearestFirst.get(0).distanceMetres(directions.at()) <= paceMetres
                && nearestFirst.stream()
                        .skip(1)
                        .map(other -> PacedPlace.of(frame.orElseThrow().place(other), paceMetres))
                        .noneMatch(meant::isSaidLike);
    }

    private List<MapPoint> pacedTo(Directions directions) {
        return directions
                .place()
                .map(place -> findAll(place.nearerEnd(), place.nearerEndPaces(), place.side(), place.sidePaces()))
                .orElse(List.of());
    }
}
