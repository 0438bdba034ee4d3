package org.cupwright.app.office.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ForDayTest {
    @Test
    void isReadAsItIsWritten() {
        ForDay day = new ForDay(MadeGreen.TODAY.plusDays(1), 57);
        assertThat(day.text()).isEqualTo("2026-06-21:57");
        assertThat(ForDay.of(day.text(), MadeGreen.TODAY)).isEqualTo(day);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", ":", "2026-06-21", "2026-06-31:1", "2026-06-21:", "2026-06-21:-1", "2126-06-21:1", "x:1"})
    void whatIsNoneIsRefusedInWords(String text) {
        assertThatThrownBy(() -> ForDay.of(text, MadeGreen.TODAY)).isInstanceOf(Problem.class);
    }
}
