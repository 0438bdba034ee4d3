package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
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

    /** Lines of a screen, and how many of them follow this list. */
    private static final int SCREEN = 24;

    private static final int AFTER = 4;

    /** Characters of a terminal's line, less what words at its end leave free. */
    private static final int SCREEN_WIDTH = 92;

    /** The list is never shorter, however much stands before it: what is too much then scrolls. */
    private static final int LEAST = 2;

    private final Texts texts;
    private final GreenPlaces places;
    private final PositionText positions;

    PlugsWorthALook(Texts texts, TurfReport report) {
        this.texts = texts;
        this.places = new GreenPlaces(report.day().course(), report.day().policy());
        this.positions = new PositionText(texts, report.day().policy().get(PlacePolicy.PACE_METRES));
    }

    /** In as many lines as the screen has left; how many greens are not named is said. */
    void rows(List<RecheckItem> items, Lines lines) {
        if (items.isEmpty()) {
            return;
        }
        List<String> greens = new ArrayList<>();
        Lines.alike(items, RecheckItem::hole).forEach(on -> greens.add(green(on)));
        int room = Math.max(LEAST, SCREEN - AFTER - taken(lines)) * COLUMNS;
        List<String> named = greens.subList(0, Math.min(room, greens.size()));
        lines.say("turf.worthALook", items.size());
        for (int i = 0; i < named.size(); i += COLUMNS) {
            row(named.subList(i, Math.min(i + COLUMNS, named.size())), lines);
        }
        if (named.size() < greens.size()) {
            lines.say("turf.moreGreens", greens.size() - named.size());
        }
    }

    /** About so many lines of a screen: a longer one goes on below. */
    private static int taken(Lines lines) {
        return lines.all().stream()
                .mapToInt(line -> {
                    int cells = line.cells().stream()
                            .mapToInt(cell -> Math.max(cell.width(), cell.text().length()))
                            .sum();
                    int said = line.said().get(0).length();
                    return 1 + Math.max(0, said - 1) / Math.max(1, SCREEN_WIDTH - cells);
                })
                .sum();
    }

    private static void row(List<String> greens, Lines lines) {
        List<Line.Cell> cells = greens.subList(0, greens.size() - 1).stream()
                .map(green -> Line.left(green, COLUMN_WIDTH))
                .toList();
        lines.row(cells, greens.get(greens.size() - 1));
    }

    private String green(List<RecheckItem> on) {
        String hole = on.get(0).hole();
        String oldest = on.stream()
                .sorted(Comparator.comparing(item -> item.plug().setOn()))
                .limit(OF_A_GREEN)
                .map(item -> place(hole, item.plug().at()))
                .collect(Collectors.joining(", "));
        return hole + " ".repeat(Math.max(1, HOLE_WIDTH - hole.length())) + oldest;
    }

    private String place(String hole, MapPoint at) {
        return places.find(hole, at).map(this::place).orElseGet(() -> positions.coordinates(at));
    }

    private String place(PlaceOnGreen place) {
        String key = place.side() == Side.LEFT ? "turf.place.left" : "turf.place.right";
        return texts.say(key, positions.halves(place.onMetres()), positions.halves(place.sideMetres()));
    }
}
