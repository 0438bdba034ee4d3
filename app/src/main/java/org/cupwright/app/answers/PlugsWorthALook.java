package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.Side;
import org.cupwright.turf.today.RecheckItem;

/** Plugs that should have knit: the oldest two of each green, as more are not looked at in a round. */
final class PlugsWorthALook {
    /** Places named of a green (our choice). */
    private static final int OF_A_GREEN = 2;

    private static final int COLUMNS = 3;
    private static final int COLUMN_WIDTH = 32;
    private static final int HOLE_WIDTH = 3;

    private final Texts texts;
    private final GreenPlaces places;
    private final PositionText positions;

    PlugsWorthALook(Texts texts, TurfReport report) {
        this.texts = texts;
        this.places = new GreenPlaces(report.day().course(), report.day().policy());
        this.positions = new PositionText(texts, report.day().policy().get(PlacePolicy.PACE_METRES));
    }

    /** In so many rows at most; how many greens are not named is said. */
    void rows(List<RecheckItem> items, int atMost, Lines lines) {
        if (items.isEmpty()) {
            return;
        }
        String says = texts.say("turf.worthALook", items.size());
        lines.line(atMost == 0 ? says : says + " " + texts.say("turf.oldestTwo"));
        List<String> greens = new ArrayList<>();
        Lines.alike(items, RecheckItem::hole).forEach(on -> greens.add(green(on)));
        List<String> named = greens.subList(0, Math.min(atMost * COLUMNS, greens.size()));
        for (int i = 0; i < named.size(); i += COLUMNS) {
            row(named.subList(i, Math.min(i + COLUMNS, named.size())), lines);
        }
        if (atMost > 0 && named.size() < greens.size()) {
            lines.say("turf.moreGreens", greens.size() - named.size());
        }
    }

    private static void row(List<String> greens, Lines lines) {
        List<Line.Cell> cells = greens.subList(0, greens.size() - 1).stream()
                .map(green -> Line.left(green, COLUMN_WIDTH))
                .toList();
        lines.row(cells, greens.get(greens.size() - 1));
    }

    /** On a green without a line of play, where no words lead to a place, how many there are. */
    private String green(List<RecheckItem> on) {
        String hole = on.get(0).hole();
        List<PlaceOnGreen> oldest = on.stream()
                .sorted(Comparator.comparing(item -> item.plug().setOn()))
                .flatMap(item -> places.find(hole, item.plug().at()).stream())
                .limit(OF_A_GREEN)
                .toList();
        String where = oldest.isEmpty()
                ? texts.say("turf.place.plugs", on.size())
                : oldest.stream().map(this::place).collect(Collectors.joining(", "));
        return hole + " ".repeat(Math.max(1, HOLE_WIDTH - hole.length())) + where;
    }

    private String place(PlaceOnGreen place) {
        String key = place.side() == Side.LEFT ? "turf.place.left" : "turf.place.right";
        return texts.say(key, positions.halves(place.onMetres()), positions.halves(place.sideMetres()));
    }
}
