package org.cupwright.app.office.green;

import java.util.Locale;
import java.util.Optional;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.entry.typed.EntryPlace;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * What is asked about a green, as it stands in the address; whatever is left out is null.
 *
 * @param x a place of the green's picture, drawing units to the right
 * @param y and down
 * @param at the same place by its coordinates, {@code E,N} in the course's frame
 * @param on the same place by paces on
 * @param side the edge the next is counted from, {@code L} or {@code R}
 * @param from paces from that edge
 * @param hold the spot that the asked one is held against, {@code E,N}
 * @param roll which way a ball is rolled from the asked spot: {@code hole}, or a way as seen from the fairway
 * @param far how hard: how far it would roll on level ground, in the units of the course
 * @param level whether places to lay the level are wanted
 */
record AskedOfGreen(
        String x,
        String y,
        String at,
        String on,
        String side,
        String from,
        String hold,
        String roll,
        String far,
        Boolean level) {
    /** Nothing but the green itself. */
    static final AskedOfGreen NOTHING = new AskedOfGreen(null, null, null, null, null, null, null, null, null, null);

    /** The spot that is asked about; empty where none is. */
    Optional<Spot> spot(Hole hole) {
        if (given(x) && given(y)) {
            return Optional.of(new Spot.At(GreenMap.groundFrame(hole).ground(number("x", x), number("y", y))));
        }
        if (given(at)) {
            return Optional.of(EntryPlace.spot(at.strip()));
        }
        return given(on) && given(from)
                ? Optional.of(EntryPlace.spot(plain(on) + "," + ("R".equals(side) ? "R" : "L") + plain(from)))
                : Optional.empty();
    }

    Optional<Spot> held() {
        return given(hold) ? Optional.of(EntryPlace.spot(hold.strip())) : Optional.empty();
    }

    Optional<String> rolled() {
        return given(roll) && given(far) ? Optional.of(roll) : Optional.empty();
    }

    /** How hard, in the units of the course. */
    double farTyped() {
        return number("far", far);
    }

    boolean levelAsked() {
        return Boolean.TRUE.equals(level);
    }

    /** A place as it is given in addresses. */
    static String at(MapPoint point) {
        return String.format(Locale.ROOT, "%.2f,%.2f", point.east(), point.north());
    }

    /** A number as it is typed, with a decimal comma perhaps. */
    static double number(String field, String typed) {
        String plain = typed == null ? "" : plain(typed);
        if (!plain.matches("-?[0-9]{1,9}([.][0-9]{1,20})?")) {
            throw Problem.of("notANumber", field, plain, new Name(plain));
        }
        return Double.parseDouble(plain);
    }

    private static boolean given(String text) {
        return text != null && !text.isBlank();
    }

    private static String plain(String typed) {
        return typed.strip().replace(',', '.');
    }
}
