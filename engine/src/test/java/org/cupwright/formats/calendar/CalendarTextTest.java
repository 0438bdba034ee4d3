package org.cupwright.formats.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.cupwright.formats.calendar.DayEvent.Status;
import org.junit.jupiter.api.Test;

/** What every program reads in a calendar; the rules are those of RFC 5545. */
class CalendarTextTest {
    private static final long SEED = 27;

    private static final Instant REVISED = Instant.parse("2026-06-20T04:59:59.987Z");

    private static DayEvent event(String summary, String description) {
        return new DayEvent("one-2", 3, REVISED, LocalDate.of(2026, 6, 20), Status.CONFIRMED, summary, description);
    }

    private static String text(String summary, String description) {
        return new CalendarText("-//Made//Made//EN", "made", List.of(event(summary, description))).text();
    }

    /** Section 3.1: a line that goes on begins with one blank, which does not belong to it. */
    private static String unfolded(String text) {
        return text.replace("\r\n ", "");
    }

    @Test
    void anEventHasWhatItMustHaveAndInWholeSeconds() {
        assertThat(text("Holes", "1: back").split("\r\n", -1))
                .containsExactly(
                        "BEGIN:VCALENDAR",
                        "VERSION:2.0",
                        "PRODID:-//Made//Made//EN",
                        "CALSCALE:GREGORIAN",
                        "NAME:made",
                        "BEGIN:VEVENT",
                        "UID:one-2",
                        "DTSTAMP:20260620T045959Z",
                        "SEQUENCE:3",
                        "DTSTART;VALUE=DATE:20260620",
                        "SUMMARY:Holes",
                        "DESCRIPTION:1: back",
                        "STATUS:CONFIRMED",
                        "TRANSP:TRANSPARENT",
                        "END:VEVENT",
                        "END:VCALENDAR",
                        "");
    }

    @Test
    void whatPartsValuesIsEscapedAndControlCharactersDoNotStand() {
        assertThat(unfolded(text("a,b;c\\d", "one\ntwo\r\nthree\u0007\u001b[2J")))
                .contains("\r\nSUMMARY:a\\,b\\;c\\\\d\r\n", "\r\nDESCRIPTION:one\\ntwo\\nthree  [2J\r\n");
    }

    /** Nothing that people write makes a line of its own, or adds a property. */
    @Test
    void nobodyWritesPropertiesByWritingText() {
        String text = text("x\r\nATTACH:http://made.example/", "y\rURL:z\u2028END:VCALENDAR");
        assertThat(unfolded(text).split("\r\n", -1))
                .hasSize(17)
                .noneMatch(line -> line.startsWith("ATTACH") || line.startsWith("URL"));
        assertThat(text.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
    }

    /** Texts of signs of one to four octets, some with half pairs. */
    @Test
    void noLineIsTooLongAndNoSignTornApart() {
        Random random = new Random(SEED);
        System.out.println("calendar lines: seed " + SEED + ", 2000 texts");
        List<String> signs = List.of("a", "½", "–", "\u4e2d", "\ud83d\udea9", ",", "\\", "\n", "\ud83d", " ");
        for (int count = 0; count < 2000; count++) {
            StringBuilder made = new StringBuilder();
            int length = random.nextInt(200);
            for (int i = 0; i < length; i++) {
                made.append(signs.get(random.nextInt(signs.size())));
            }
            String text = text(made.toString(), "");
            for (String line : text.split("\r\n", -1)) {
                byte[] octets = line.getBytes(StandardCharsets.UTF_8);
                assertThat(octets.length).as(line).isLessThanOrEqualTo(75);
                assertThat(new String(octets, StandardCharsets.UTF_8)).isEqualTo(line);
            }
            assertThat(read(unfolded(text))).isEqualTo(halvesAsBlanks(made.toString()));
        }
    }

    /** {@code SUMMARY:} has eight octets: with 67 more the line is as long as it may be. */
    @Test
    void aLineGoesOnInAnotherWhenItIsLongerThan75Octets() {
        assertThat(text("a".repeat(67), "")).contains("\r\nSUMMARY:" + "a".repeat(67) + "\r\n");
        assertThat(text("a".repeat(68), "")).contains("\r\nSUMMARY:" + "a".repeat(67) + "\r\n a\r\n");
    }

    /** The summary, its escapes taken off again. */
    private static String read(String unfolded) {
        String value = unfolded.replaceAll("(?s).*\r\nSUMMARY:(.*)\r\nDESCRIPTION.*", "$1");
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < value.length(); i++) {
            char sign = value.charAt(i);
            if (sign == '\\') {
                i++;
                plain.append(value.charAt(i) == 'n' ? '\n' : value.charAt(i));
            } else {
                plain.append(sign);
            }
        }
        return plain.toString();
    }

    private static String halvesAsBlanks(String text) {
        return text.replaceAll("\ud83d(?!\udea9)", " ");
    }

    @Test
    void anEventThatWasNeverChangedHasTheSequenceNumberNought() {
        assertThat(new DayEvent("a", 0, REVISED, LocalDate.of(2026, 6, 20), Status.TENTATIVE, "", "").sequence())
                .isZero();
    }

    @Test
    void anEventWithoutAProperNameIsNone() {
        for (String uid : List.of("", "two words", "a\r\nb", "a:b")) {
            assertThatThrownBy(() -> new DayEvent(uid, 0, REVISED, LocalDate.of(2026, 6, 20), Status.TENTATIVE, "", ""))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> new DayEvent("a", -1, REVISED, LocalDate.of(2026, 6, 20), Status.TENTATIVE, "", ""))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
