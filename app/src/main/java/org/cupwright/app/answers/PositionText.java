package org.cupwright.app.answers;

import java.util.Optional;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Side;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Paces;

/** Where a position is, in words: {@code back left · 22 on · 5 from left}. */
public final class PositionText {
    private final Texts texts;
    private final double paceMetres;

    public PositionText(Texts texts, double paceMetres) {
        this.texts = texts;
        this.paceMetres = paceMetres;
    }

    public String of(JudgedPosition position) {
        return of(position.place(), position.judgement().position());
    }

    public String of(Optional<PlaceOnGreen> place, MapPoint point) {
        return place.map(this::of).orElseGet(() -> coordinates(point));
    }

    public String of(PlaceOnGreen place) {
        String area =
                texts.say("area." + EnumNames.lowerCamel(place.third()) + "." + EnumNames.lowerCamel(place.lateral()));
        String on = halves(place.onMetres());
        String side = halves(place.sideMetres());
        return texts.say(place.side() == Side.LEFT ? "place.left" : "place.right", area, on, side);
    }

    /** Coordinates in the course's frame, for greens without a line of play. */
    String coordinates(MapPoint point) {
        return texts.say("place.coordinates", texts.coordinate(point.east()), texts.coordinate(point.north()));
    }

    private String halves(double metres) {
        return texts.halves(Paces.roundedToHalf(metres, paceMetres));
    }
}
