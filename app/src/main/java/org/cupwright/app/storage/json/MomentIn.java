package org.cupwright.app.storage.json;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.ext.javatime.deser.InstantDeserializer;

/**
 * Reads moments. Those in UTC, as nearly all are written, are read by their places in the text: a long logbook has
 * millions, and the general reader takes half of the time that all else together takes.
 */
final class MomentIn extends ValueDeserializer<Instant> {
    private static final String FORM = "0000-00-00T00:00:00";
    private static final int MOST_DECIMALS = 9;
    private static final int SECONDS_A_DAY = 86_400;
    private static final int NONE = -1;

    @Override
    public Instant deserialize(JsonParser parser, DeserializationContext context) {
        if (parser.hasToken(JsonToken.VALUE_STRING)) {
            String text = parser.getString();
            int nanos = hasForm(text) ? nanos(text) : NONE;
            long day = nanos < 0 ? NONE : day(text);
            if (day >= 0 && isOnClock(text)) {
                int second = 3600 * number(text, 11) + 60 * number(text, 14) + number(text, 17);
                return Instant.ofEpochSecond(day * SECONDS_A_DAY + second, nanos);
            }
        }
        return InstantDeserializer.INSTANT.deserialize(parser, context);
    }

    private static boolean hasForm(String text) {
        if (text.length() <= FORM.length()) {
            return false;
        }
        for (int i = 0; i < FORM.length(); i++) {
            if (FORM.charAt(i) == '0' ? !isDigit(text.charAt(i)) : text.charAt(i) != FORM.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    private static boolean isOnClock(String text) {
        return number(text, 11) < 24 && number(text, 14) < 60 && number(text, 17) < 60;
    }

    /** Of the end {@code .123456Z} or {@code Z}; none where it is another. */
    private static int nanos(String text) {
        int last = text.length() - 1;
        int decimals = last - FORM.length() - 1;
        boolean whole = decimals == NONE;
        boolean parted = decimals > 0 && decimals <= MOST_DECIMALS && text.charAt(FORM.length()) == '.';
        if (text.charAt(last) != 'Z' || !whole && !parted) {
            return NONE;
        }
        int nanos = 0;
        for (int i = 0; i < MOST_DECIMALS && !whole; i++) {
            int at = FORM.length() + 1 + i;
            if (at < last && !isDigit(text.charAt(at))) {
                return NONE;
            }
            nanos = 10 * nanos + (at < last ? text.charAt(at) - '0' : 0);
        }
        return nanos;
    }

    /** Days since 1970; none where there is no such day or it is earlier. */
    private static long day(String text) {
        int month = number(text, 5);
        int day = number(text, 8);
        int year = 100 * number(text, 0) + number(text, 2);
        boolean there = year >= 1970
                && month >= 1
                && month <= 12
                && day >= 1
                && day <= YearMonth.of(year, month).lengthOfMonth();
        return there ? LocalDate.of(year, month, day).toEpochDay() : NONE;
    }

    /** Two digits. */
    private static int number(String text, int at) {
        return 10 * (text.charAt(at) - '0') + text.charAt(at + 1) - '0';
    }
}
