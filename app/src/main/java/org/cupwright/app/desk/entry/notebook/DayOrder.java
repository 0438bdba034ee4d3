package org.cupwright.app.desk.entry.notebook;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.formats.table.WrittenDay;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** In which order day and month stand where a notebook parts them by strokes, as in 10/6/2026. */
public enum DayOrder {
    DAY_FIRST,
    MONTH_FIRST;

    /** Two figures of a year are those of this century. */
    private static final Pattern STROKES = Pattern.compile("([0-9]{1,2})/([0-9]{1,2})/((?:[0-9]{2})?[0-9]{2})");

    private static final int MONTHS = 12;
    private static final int CENTURY = 2000;

    /** A day as a line of the notebook writes it. */
    record Written(long line, String text) {
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
                    .filter(of -> of[0] != of[1] && of[0] <= MONTHS && of[1] <= MONTHS)
                    .isPresent();
        }
    }

    /**
     * The order that a notebook's days are written in; empty where it does not matter.
     *
     * @param said what somebody says it is
     * @throws Problem where the lines contradict each other or what was said, or where nobody can tell
     */
    static Optional<DayOrder> of(List<Written> days, Optional<DayOrder> said) {
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
    static Optional<Message> question(List<Written> days) {
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

    /** A day of the notebook, also as {@link WrittenDay} reads it. */
    static LocalDate day(String text, Optional<DayOrder> order) {
        if (!STROKES.matcher(text).matches()) {
            return WrittenDay.inTable(text);
        }
        try {
            return order.orElse(DAY_FIRST).day(text);
        } catch (DateTimeException noSuchDay) {
            throw Problem.of(Message.of("day.none", new Name(text)), Message.of("day.try"));
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
