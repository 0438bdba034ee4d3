package org.cupwright.app.sheets;

import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Side;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Paces;

/** Where a hole is, as it is read on paper: the words, then paces on and from the side. */
final class PlaceWords {
    private final Texts texts;
    private final double paceMetres;

    PlaceWords(Texts texts, double paceMetres) {
        this.texts = texts;
        this.paceMetres = paceMetres;
    }

    /** {@code back left}. */
    String area(PlaceOnGreen place) {
        return texts.say("area." + EnumNames.lowerCamel(place.third()) + "." + EnumNames.lowerCamel(place.lateral()));
    }

    /** {@code 22}: paces on, in halves. */
    String on(PlaceOnGreen place) {
        return halves(place.onMetres());
    }

    /** {@code 5 from left}. */
    String side(PlaceOnGreen place) {
        String key = place.side() == Side.LEFT ? "sheet.fromLeft" : "sheet.fromRight";
        return texts.say(key, halves(place.sideMetres()));
    }

    String whole(PlaceOnGreen place) {
        return area(place) + " · " + texts.say("sheet.on", on(place)) + " · " + side(place);
    }

    /** Half paces, rounded down: how far off is still good. */
    String within(double metres) {
        double halves = Math.floor(2 * metres / paceMetres) / 2;
        return halves < 0.5 ? texts.say("sheet.exactly") : texts.say("sheet.within", texts.halves(halves));
    }

    private String halves(double metres) {
        return texts.halves(Paces.roundedToHalf(metres, paceMetres));
    }
}
