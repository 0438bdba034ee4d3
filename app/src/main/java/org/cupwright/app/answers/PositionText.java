package org.cupwright.app.answers;

import java.util.Optional;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Side;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Paces;

/** Where a position is, in words: {@code back left · 22 on · 5 from left}. */
public record PositionText(Texts texts, double paceMetres) {
    public String of(JudgedPosition position) {
        return of(position.place(), position.judgement().position());
    }

    public String of(Optional<PlaceOnGreen> place, MapPoint point) {
        return place.map(this::of).orElseGet(() -> coordinates(point));
    }

    public String of(PlaceOnGreen place) {
        String key = place.side() == Side.LEFT ? "place.left" : "place.right";
        return texts.say(key, area(place), halves(place.onMetres()), halves(place.sideMetres()));
    }

    /** {@code back left}; on a green without a line of play the coordinates, as they are all there is. */
    public String area(Optional<PlaceOnGreen> place, MapPoint point) {
        return place.map(this::area).orElseGet(() -> coordinates(point));
    }

    public String area(PlaceOnGreen place) {
        return texts.say("area." + EnumNames.lowerCamel(place.third()) + "." + EnumNames.lowerCamel(place.lateral()));
    }

    /** {@code back centre}: a place of which only the part of the green is known. */
    public String part(CutSomewhere part) {
        String depth = EnumNames.lowerCamel(part.depth());
        return part.across()
                .map(across -> texts.say("area." + depth + "." + EnumNames.lowerCamel(across)))
                .orElseGet(() -> texts.say("third." + depth));
    }

    /** Coordinates in the course's frame, for greens without a line of play. */
    public String coordinates(MapPoint point) {
        return texts.say("place.coordinates", texts.coordinate(point.east()), texts.coordinate(point.north()));
    }

    /** A length in paces with their word, to half a pace. */
    public String paces(double metres) {
        return texts.paces(Paces.roundedToHalf(metres, paceMetres));
    }

    /** A length in paces, to half a pace. */
    public String halves(double metres) {
        return texts.halves(Paces.roundedToHalf(metres, paceMetres));
    }
}
