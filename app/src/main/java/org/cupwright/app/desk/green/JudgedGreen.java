package org.cupwright.app.desk.green;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.SpotWithRoom;
import org.locationtech.jts.geom.Geometry;

/**
 * A green judged for a day, of which one position after another may be asked.
 *
 * @param day the day
 * @param green the verdicts over it and what lies on it
 * @param judging judges a position
 */
public record JudgedGreen(CourseDay day, GreenOnDay green, Judging judging) {
    public Hole hole() {
        return green.hole();
    }

    /**
     * The point a person means.
     *
     * @throws org.cupwright.message.Problem when it is not on the green
     */
    public MapPoint point(Spot spot) {
        return SpotOnGreen.of(hole(), day.policy(), spot);
    }

    /** The position by every rule. */
    public JudgedPosition at(MapPoint point) {
        return judging.at(point);
    }

    /** Up to five positions to begin with. */
    public List<JudgedPosition> best() {
        return judging.best();
    }

    /**
     * The nearest spot that is better: good and with half a pace of room about it, else one to be used with care that
     * has as much, clear of ground that is saved. Empty where there is none, or the position itself is as good.
     */
    public Optional<JudgedPosition> betterNear(JudgedPosition position) {
        Verdict own = position.judgement().verdict();
        double room = day.policy().get(PlacePolicy.PACE_METRES) / 2;
        boolean hasRoom = position.goodWithinMetres().orElse(0) >= room;
        return List.of(Verdict.PASS, Verdict.CAUTION).stream()
                .takeWhile(wanted -> wanted.compareTo(own) < 0 || wanted == own && !hasRoom)
                .flatMap(wanted ->
                        SpotWithRoom.nearest(
                                position.judgement().position(), wanted, green.judgement(), room, notSaved())
                                .stream())
                .findFirst()
                .map(judging::at);
    }

    private Predicate<MapPoint> notSaved() {
        List<Geometry> saved = green.ground().counting(GroundItem.Kind.SAVED).stream()
                .map(GroundItem::place)
                .toList();
        return at -> saved.stream().noneMatch(area -> area.covers(at.toPoint()));
    }
}
