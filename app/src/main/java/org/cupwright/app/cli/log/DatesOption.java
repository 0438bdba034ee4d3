package org.cupwright.app.cli.log;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.notebook.DayOrder;
import org.cupwright.message.Message;
import picocli.CommandLine.Option;

/** How days with strokes are read. */
final class DatesOption {
    @Option(
            names = "--dates",
            paramLabel = "ORDER",
            description =
                    "day-first or month-first: how 10/6/2026 is read. Default: as the file shows, else it is asked.")
    private DateOrder order;

    /** As it is typed. */
    enum DateOrder {
        DAY_FIRST,
        MONTH_FIRST;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        DayOrder means() {
            return DayOrder.valueOf(name());
        }
    }

    boolean isGiven() {
        return order != null;
    }

    /** What was said, or what whoever sits there answers; empty to go by the file. */
    Optional<DayOrder> order(Task task, Supplier<Optional<Message>> question) {
        if (isGiven() || task.options().json()) {
            return Optional.ofNullable(order).map(DateOrder::means);
        }
        return question.get()
                .flatMap(asks -> task.ask(task.texts().say(asks)))
                .map(yes -> yes ? DayOrder.DAY_FIRST : DayOrder.MONTH_FIRST);
    }
}
