package org.cupwright.app.desk.entry.typed;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.CupWork.FoundBy;
import org.cupwright.green.Side;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/** Places as entries name them, on one green or, by coordinates, anywhere on the course. */
public record EntryPlace(Optional<Hole> hole, Policy policy) {
    private static final String NUMBER = "([+-]?[0-9]{1,9}(?:[.][0-9]{1,330})?)";
    private static final Pattern AT = Pattern.compile(NUMBER + "," + NUMBER);
    private static final Pattern PACED = Pattern.compile(NUMBER + ",([LRlr])" + NUMBER);

    private static final Pattern LETTER_LAST = Pattern.compile("^" + NUMBER + "," + NUMBER + "([LRlr])$");

    MapPoint of(Spot spot, String kind) {
        if (spot instanceof Spot.At at) {
            return at.point();
        }
        return SpotOnGreen.anywhere(
                hole.orElseThrow(() -> Problem.of("log.needsHole", "hole", "", new Name(kind))), policy, spot);
    }

    /** {@code E,N}, or {@code 12,L5} for paces on and from the left. */
    public static Spot spot(String text) {
        Matcher at = AT.matcher(text);
        if (at.matches()) {
            return new Spot.At(new MapPoint(Double.parseDouble(at.group(1)), Double.parseDouble(at.group(2))));
        }
        Matcher paced = PACED.matcher(LETTER_LAST.matcher(text).replaceFirst("$1,$3$2"));
        if (paced.matches()) {
            Side side = paced.group(2).equalsIgnoreCase("L") ? Side.LEFT : Side.RIGHT;
            return new Spot.Paced(Double.parseDouble(paced.group(1)), side, Double.parseDouble(paced.group(3)));
        }
        throw LogProblems.value("place", text, Message.of("try.log.place"));
    }

    /** Puts a place into the part of a draft that says where. */
    public void into(Draft draft, Spot where, OptionalDouble radiusMetres) {
        String kind = LogProblems.typed(draft.form().kind());
        Part part = draft.form().place().orElseThrow(() -> Problem.of("log.noPlace", "atOrOn", "", new Name(kind)));
        MapPoint point = of(where, kind);
        draft.set(part.name(), part.type() == Area.class ? around(point, radiusMetres, part) : point);
        if (where instanceof Spot.At) {
            foundByMap(draft);
        }
    }

    /** Nobody paces coordinates: a place that is given by them was found otherwise, unless the entry says how. */
    public static void foundByMap(Draft draft) {
        if (draft.form().find("foundBy").isPresent() && !draft.says("foundBy")) {
            draft.set("foundBy", FoundBy.PHONE);
        }
    }

    private static Supplier<Area> around(MapPoint centre, OptionalDouble radiusMetres, Part part) {
        double radius =
                radiusMetres.orElseThrow(() -> LogProblems.value(part.name(), "", Message.of("try.log.radius")));
        return () -> new Area.Around(centre, radius);
    }
}
