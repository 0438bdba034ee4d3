package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.cupwright.testing.Shapes;
import org.cupwright.units.UnitSystem;

/**
 * A square green of ten metres to be drawn, for drawings worked out by hand. With five metres about it the ground is
 * 20 m wide and high: 20 units a metre on a card of 400 by 400, so that a place is drawn at x = 20 (east + 5),
 * y = 20 (15 − north). A card's letters are 21 units high.
 */
final class SmallMap {
    static final Outline OUTLINE = Shapes.rectangle(0, 0, 10, 10);
    static final double EM = 21;

    static final GreenMap MAP =
            new GreenMap(Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 1).orElseThrow());

    private SmallMap() {}

    static Hole hole(List<Hazard> hazards, List<Mark> marks) {
        return new Hole(
                "7",
                OUTLINE,
                Optional.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                hazards,
                List.of(),
                marks,
                List.of());
    }

    static String card(GreenDrawing drawing) {
        return MAP.card(drawing, 400, 400);
    }

    static String card(Hole hole) {
        return card(MadeDrawing.of(hole));
    }

    static GreenDrawing plain() {
        return MadeDrawing.of(hole(List.of(), List.of()));
    }

    /** What stands in the groups of a class, each as it is. */
    static List<String> groups(String svg, String name) {
        List<String> found = new ArrayList<>();
        Matcher groups =
                Pattern.compile("<g class=\"" + name + "\" [^>]*>(.*?)</g>").matcher(svg);
        while (groups.find()) {
            found.add(groups.group(1));
        }
        return found;
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    static String path(String data) {
        return "<path d=\"" + data + "\"/>";
    }

    static String circle(double x, double y, double radius) {
        return "<circle cx=\"" + number(x) + "\" cy=\"" + number(y) + "\" r=\"" + number(radius) + "\"/>";
    }
}
