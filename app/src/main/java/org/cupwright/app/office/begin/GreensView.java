package org.cupwright.app.office.begin;

import java.util.Comparator;
import java.util.List;
import org.cupwright.app.desk.TypedHeading;
import org.cupwright.app.maps.CourseMap;
import org.cupwright.app.maps.CourseMap.OnMap;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Way;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.LineOfPlay;
import org.cupwright.formats.outlines.RoundOrder;
import org.cupwright.policy.EnumNames;

/** The greens that are there so far, in the words and the order of their pages. */
record GreensView(Texts texts) {
    private static final int SMALL_WIDTH = 330;
    private static final int SMALL_HEIGHT = 300;

    /**
     * A green.
     *
     * @param number by which it is known here
     * @param hole its hole; empty as long as it has none
     * @param says from what it came, how large it is, and whether anybody knows where it lies
     * @param play the direction of play, degrees; empty as long as nobody said
     * @param leftOut whether it is no hole's
     * @param paced whether it can be measured anew
     * @param drawn whether it was drawn on the grid, and can be there anew
     */
    record Row(int number, String hole, String says, String play, boolean leftOut, boolean paced, boolean drawn) {}

    List<Row> rows(SettingUp stands) {
        return stands.greens().stream().map(this::row).toList();
    }

    private Row row(BegunGreen green) {
        String way = texts.say("begin.way." + EnumNames.lowerCamel(green.way()));
        String size = texts.area(green.hole().green().areaSquareMetres());
        int hazards = green.hole().hazards().size();
        String beside = hazards == 0 ? "" : ", " + texts.say("begin.hazards", hazards);
        String says = way + ", " + size + beside + (green.placed() ? "" : ", " + texts.say("begin.unplaced"));
        return new Row(
                green.number(),
                green.named() ? green.hole().id() : "",
                says,
                play(green),
                green.leftOut(),
                green.way() == Way.PACED,
                green.way() == Way.DRAWN);
    }

    static String play(BegunGreen green) {
        return green.hole()
                .lineOfPlay()
                .map(LineOfPlay::atGreen)
                .map(heading -> Long.toString(TypedHeading.degrees(heading)))
                .orElse("");
    }

    /** All of them on one map; nothing where there are none. */
    String map(SettingUp stands) {
        if (stands.greens().isEmpty()) {
            return "";
        }
        List<OnMap> all = stands.greens().stream()
                .map(green -> new OnMap(green.number(), label(green), green.hole(), green.leftOut()))
                .toList();
        return new CourseMap(texts.say("begin.map")).of(all);
    }

    /** The hole's name; as long as it has none, what the green goes by on the page beside the map. */
    private static String label(BegunGreen green) {
        return green.named() && !green.leftOut() ? green.hole().id() : "#" + green.number();
    }

    /** A green drawn by itself, with what stands under it. */
    record Small(String hole, String says, String svg) {}

    List<Small> small(SettingUp stands) {
        return stands.ofHoles().stream()
                .sorted(Comparator.comparing(green -> green.hole().id(), RoundOrder.byName()))
                .map(green ->
                        new Small(label(green), texts.area(green.hole().green().areaSquareMetres()), drawn(green)))
                .toList();
    }

    /** A green drawn by itself, play running up. */
    String drawn(BegunGreen green) {
        return new CourseMap(texts.say("map.title", green.hole().id()))
                .green(green.hole(), SMALL_WIDTH, SMALL_HEIGHT, texts.roundLength());
    }
}
