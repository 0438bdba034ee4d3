package org.cupwright.app.desk.entry.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.cupwright.app.desk.entry.notebook.DayOrder.Written;
import org.cupwright.message.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DayOrderTest {
    @Test
    void aDayOfTwoReadingsIsAskedAbout() {
        assertThat(DayOrder.question(List.of(new Written(2, "3/6/2026"))))
                .contains(Message.of(
                        "history.asks.order",
                        new Message.Name("3/6/2026"),
                        new Message.Day(LocalDate.of(2026, 6, 3)),
                        new Message.Day(LocalDate.of(2026, 3, 6))));
    }

    /** Whoever reads the cell tells that there is no such day. */
    @ParameterizedTest
    @ValueSource(strings = {"0/6/2026", "6/0/2026", "0/0/26", "45/45/2026", "6/6/2026", "13/6/2026"})
    void aDayOfOneReadingOrNoneIsNot(String text) {
        assertThat(DayOrder.question(List.of(new Written(2, text)))).isEmpty();
    }
}
