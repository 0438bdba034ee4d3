package org.cupwright.app.desk.entry.notebook;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.log.WrittenDay;
import org.cupwright.app.desk.table.NotRead;
import org.cupwright.formats.Separator;
import org.cupwright.green.Side;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;

/**
 * A line of an old notebook: on which day which hole was where.
 *
 * @param day the day
 * @param hole the hole
 * @param place where it was
 */
public record HistoryLine(LocalDate day, String hole, NotebookPlace place) {
    private static final Pattern SIDE_FIRST = Pattern.compile("([LlRr]) ?([0-9.,½]{1,8})");
    private static final Pattern SIDE_LAST = Pattern.compile("([0-9.,½]{1,8}) ?([LlRr])");
    private static final double MOST_PACES = 200;

    static HistoryLine of(String date, String hole, String on, String side, Separator separator) throws NotRead {
        Spot.Paced place = place(on, side, separator);
        return new HistoryLine(WrittenDay.inTable(date), hole, new NotebookPlace.Paced(place));
    }

    /** With the place as the crew has put it. */
    static HistoryLine inWords(String date, String hole, String words) throws NotRead {
        return new HistoryLine(WrittenDay.inTable(date), hole, NotebookWords.of(words));
    }

    public static Spot.Paced place(String on, String side, Separator separator) throws NotRead {
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
        double value = half && whole.isEmpty() ? 0 : separator.number(whole);
        double paces = half ? value + 0.5 : value;
        return paces >= 0 && paces <= MOST_PACES ? Optional.of(paces) : Optional.empty();
    }

    static NotRead not(String what, String value) {
        return new NotRead(Message.of("history." + what, new Name(value)), Message.of("history.try." + what));
    }
}
