package org.cupwright.formats;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeparatorTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,2,3 | COMMA",
                "1, 2, 3 | COMMA",
                "x,y,z | COMMA",
                "1,5;2,5;3,5 | SEMICOLON",
                "1 2 3 | BLANKS",
                "1,5 2,5 3,5 | BLANKS",
                "1,2,3,edge of green | COMMA"
            })
    void findsWhatSeparates(String line, Separator separator) {
        assertThat(Separator.of(line)).isEqualTo(separator);
    }

    @Test
    void findsTabs() {
        assertThat(Separator.of("1,5\t2,5\t3,5")).isEqualTo(Separator.TAB);
        assertThat(Separator.TAB.split("a\t\tb")).containsExactly("a", "", "b");
    }

    @Test
    void keepsSeparatorsInsideQuotationMarks() {
        assertThat(Separator.COMMA.split("7,\"edge, left\",2")).containsExactly("7", "edge, left", "2");
        assertThat(Separator.BLANKS.split("  1   2\t3 ")).containsExactly("1", "2", "3");
    }

    @Test
    void readsDecimalCommasWhereTheCommaDoesNotSeparate() {
        assertThat(Separator.SEMICOLON.number("12,5")).isEqualTo(12.5);
        assertThat(Separator.COMMA.number("12,5")).isNaN();
        assertThat(Separator.COMMA.number("-1.5e3")).isEqualTo(-1500);
        assertThat(Separator.SEMICOLON.plainNumber("12,5")).isEqualTo(12.5);
        assertThat(Separator.COMMA.plainNumber("-1.5e3")).isNaN();
        assertThat(Separator.COMMA.plainNumber("1E1")).isNaN();
    }

    @ParameterizedTest
    @CsvSource({"NaN", "Infinity", "''", "7d", "0x10", "1e999", "--1", "."})
    void takesNothingElseForANumber(String field) {
        assertThat(Separator.COMMA.number(field)).isNaN();
    }
}
