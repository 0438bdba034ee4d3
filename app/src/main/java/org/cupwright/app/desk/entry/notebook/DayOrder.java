package org.cupwright.app.desk.entry.notebook;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.Line;
import org.cupwright.formats.table.Table;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** In which order day and month stand where a table of days parts them by strokes, as in 10/6/2026. */
public enum DayOrder {
    DAY_FIRST,
    MONTH_FIRST;

    /** Two figures of a year are those of this century. */
    private static final Pattern STROKES =
            Pattern.compile("([0-9]{1,2})/([0-9]{1,2})/((?:[0-9]{2})?[0-9]{2})([ T].*)?");

    private static final int MONTHS = 12;
    private static final int CENTURY = 2000;

    /** A day as a line of the table writes it, perhaps with a time. */
    public record Written(long line, String text) {
        private Optional<int[]> figures() {
            Matcher matcher = STROKES.matcher(text);
            return matcher.matches()
                    ? Optional.of(new int[] {
                        Integer.parseInt(matcher.group(1)),
                        Integer.parseInt(matcher.group(2)),
                        Integer.parseInt(matcher.group(3)),
                    })
                    : Optional.empty();
        }

        private boolean provesDayFirst() {
            return figures().filter(of -> of[0] > MONTHS && of[1] <= MONTHS).isPresent();
        }

        private boolean provesMonthFirst() {
            return figures().filter(of -> of[1] > MONTHS && of[0] <= MONTHS).isPresent();
        }

        /** Whether the two orders make two days of it. */
        private boolean unclear() {
            return figures()
                    .filter(of -> of[0] != of[1] && isMonth(of[0]) && isMonth(of[1]))
                    .isPresent();
        }

        private static boolean isMonth(int figure) {
            return figure >= 1 && figure <= MONTHS;
        }
    }

    /** Days as they stand in some columns of a table. */
    public static List<Written> written(Table table, Layout layout, List<? extends Column<?>> columns) {
        return table.lines().stream()
                .flatMap(line -> columns.stream()
                        .map(column ->
                                new Written(line.number(), layout.row(line).text(column))))
                .toList();
    }

    /**
     * The order that a table's days are written in; empty where it does not matter.
     *
     * @param said what somebody says it is
     * @throws Problem where the lines contradict each other or what was said, or where nobody can tell
     */
    public static Optional<DayOrder> of(List<Written> days, Optional<DayOrder> said) {
        Optional<Written> dayFirst =
                days.stream().filter(Written::provesDayFirst).findFirst();
        Optional<Written> monthFirst =
                days.stream().filter(Written::provesMonthFirst).findFirst();
        if (dayFirst.isPresent() && monthFirst.isPresent()) {
            throw Problem.of(
                    Message.of("history.orders", where(dayFirst.get()), where(monthFirst.get())),
                    Message.of("history.try.orders"));
        }
        Optional<DayOrder> proved = dayFirst.map(line -> DAY_FIRST).or(() -> monthFirst.map(line -> MONTH_FIRST));
        if (said.isPresent() && proved.isPresent() && said.get() != proved.get()) {
            Written line = dayFirst.or(() -> monthFirst).orElseThrow();
            throw Problem.of(Message.of("history.orderSaid", where(line)), Message.of("history.try.orderSaid"));
        }
        if (said.isEmpty() && proved.isEmpty()) {
            days.stream().filter(Written::unclear).findFirst().ifPresent(line -> {
                throw Problem.of(Message.of("history.order", where(line)), Message.of("history.try.order"));
            });
        }
        return said.or(() -> proved);
    }

    /** A question about the first day that can be read two ways, for whom it can be put to; yes is the day first. */
    public static Optional<Message> question(List<Written> days) {
        boolean proved = days.stream().anyMatch(day -> day.provesDayFirst() || day.provesMonthFirst());
        return days.stream()
                .filter(day -> !proved && day.unclear())
                .findFirst()
                .map(day -> Message.of(
                        "history.asks.order",
                        new Name(day.text()),
                        new Day(DAY_FIRST.day(day.text())),
                        new Day(MONTH_FIRST.day(day.text()))));
    }

    private static Message.Argument where(Written day) {
        return new Message.Said(
                List.of(Message.of("history.orderLine", new Count((int) day.line()), new Name(day.text()))));
    }

    /** A line with its days written as 2026-06-10, where the order makes days of them. */
    public static Line plain(Line line, Layout layout, List<? extends Column<?>> columns, Optional<DayOrder> order) {
        return layout.with(line, columns, order.orElse(DAY_FIRST)::plain);
    }

    private String plain(String text) {
        Matcher strokes = STROKES.matcher(text);
        try {
            return strokes.matches()
                    ? day(text) + Optional.ofNullable(strokes.group(4)).orElse("")
                    : text;
        } catch (DateTimeException noSuchDay) { // told by whoever reads the cell
            return text;
        }
    }

    private LocalDate day(String text) {
        int[] figures = new Written(0, text).figures().orElseThrow();
        int year = figures[2] < 100 ? CENTURY + figures[2] : figures[2];
        return this == DAY_FIRST
                ? LocalDate.of(year, figures[1], figures[0])
                : LocalDate.of(year, figures[0], figures[1]);
    }
}
