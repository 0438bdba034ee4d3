package org.cupwright.app.desk.entry.notebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.desk.Spot;
import org.cupwright.formats.Separator;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Line;
import org.cupwright.formats.table.Table;
import org.cupwright.green.Side;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * A line of an old notebook: on which day which hole was where, the place under on and side or in words.
 *
 * @param day the day
 * @param hole the hole
 * @param place where it was
 */
public record HistoryLine(LocalDate day, String hole, NotebookPlace place) {
    static final Column<LocalDate> DATE = Column.day("date").needed();
    private static final Column<String> HOLE = Column.text("hole").needed();
    private static final Column<String> ON = Column.text("on");
    private static final Column<String> SIDE = Column.text("side");

    /** The place as the crew has put it. */
    private static final Column<String> WORDS = Column.text("words");

    private static final Pattern SIDE_FIRST = Pattern.compile("([LlRr]) ?([0-9.,½]{1,8})");
    private static final Pattern SIDE_LAST = Pattern.compile("([0-9.,½]{1,8}) ?([LlRr])");
    private static final double MOST_PACES = 200;

    /** Finds the columns; a table without words must have on and side. */
    static Layout layout(Table table) {
        Layout layout = Layout.of(table, List.of(DATE, HOLE, ON, SIDE, WORDS), Map.of());
        return layout.has(WORDS)
                ? layout.complete()
                : Layout.of(table, List.of(DATE, HOLE, ON.needed(), SIDE.needed()), Map.of())
                        .complete();
    }

    static HistoryLine of(Layout layout, Line line, Separator separator) {
        Layout.Row row = layout.row(line);
        String on = row.text(ON);
        String side = row.text(SIDE);
        boolean inWords = !row.text(WORDS).isEmpty() && on.isEmpty() && side.isEmpty();
        failIfEmpty(row, DATE, "date");
        failIfEmpty(row, HOLE, "hole");
        if (inWords) {
            LocalDate day = row.find(DATE).orElseThrow();
            return new HistoryLine(day, row.text(HOLE), NotebookWords.of(row.text(WORDS)));
        }
        failIfEmpty(row, ON, layout.has(WORDS) && side.isEmpty() ? "words" : "on");
        failIfEmpty(row, SIDE, "side");
        NotebookPlace place = new NotebookPlace.Paced(place(on, side, separator));
        return new HistoryLine(row.find(DATE).orElseThrow(), row.text(HOLE), place);
    }

    private static void failIfEmpty(Layout.Row row, Column<?> column, String name) {
        if (row.text(column).isEmpty()) {
            throw Problem.of(Message.of("history.empty", new Name(name)), Message.of("history.try.empty"));
        }
    }

    public static Spot.Paced place(String on, String side, Separator separator) {
        double onPaces = paces(on, separator).orElseThrow(() -> not("on", on));
        Matcher first = SIDE_FIRST.matcher(side);
        Matcher last = SIDE_LAST.matcher(side);
        if (!first.matches() && !last.matches()) {
            throw not("side", side);
        }
        String letter = first.matches() ? first.group(1) : last.group(2);
        String number = first.matches() ? first.group(2) : last.group(1);
        double sidePaces = paces(number, separator).orElseThrow(() -> not("side", side));
        return new Spot.Paced(onPaces, letter.equalsIgnoreCase("L") ? Side.LEFT : Side.RIGHT, sidePaces);
    }

    /** Paces as they are written: 12, 12.5, 12,5 or 12½. */
    private static Optional<Double> paces(String text, Separator separator) {
        boolean half = text.endsWith("½");
        String whole = half ? text.substring(0, text.length() - 1) : text;
        double value = half && whole.isEmpty() ? 0 : separator.plainNumber(whole);
        double paces = half ? value + 0.5 : value;
        return paces >= 0 && paces <= MOST_PACES ? Optional.of(paces) : Optional.empty();
    }

    static Problem not(String what, String value) {
        return Problem.of(Message.of("history." + what, new Name(value)), Message.of("history.try." + what));
    }
}
