package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.cupwright.formats.calendar.CalendarText;
import org.cupwright.formats.calendar.DayEvent;
import org.cupwright.formats.calendar.DayEvent.Status;
import org.junit.jupiter.api.Test;

/**
 * Examples of B. Desruisseaux (ed.), "Internet Calendaring and Scheduling Core Object Specification (iCalendar)", RFC
 * 5545, September 2009 (read in a copy).
 */
class CalendarPublishedTest {
    /** Section 3.6.1, the anniversary, as far as a day's event has the same properties. */
    @Test
    void anAllDayEventIsWrittenAsInTheStandard() {
        String text = text("Our Blissful Anniversary", "");
        assertThat(text.split("\r\n", -1))
                .containsSubsequence(
                        "BEGIN:VEVENT",
                        "UID:19970901T130000Z-123403@example.com",
                        "DTSTAMP:19970901T130000Z",
                        "DTSTART;VALUE=DATE:19971102",
                        "SUMMARY:Our Blissful Anniversary",
                        "TRANSP:TRANSPARENT",
                        "END:VEVENT");
    }

    /** Section 3.3.11: a text of three lines. */
    @Test
    void aTextOfSeveralLinesIsWrittenAsInTheStandard() {
        String text = text("", "Project XYZ Final Review\nConference Room - 3B\nCome Prepared.");
        assertThat(text.replace("\r\n ", ""))
                .contains("DESCRIPTION:Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.\r\n");
    }

    private static String text(String summary, String description) {
        DayEvent event = new DayEvent(
                "19970901T130000Z-123403@example.com",
                0,
                Instant.parse("1997-09-01T13:00:00Z"),
                LocalDate.of(1997, 11, 2),
                Status.CONFIRMED,
                summary,
                description);
        return new CalendarText("-//Made//Made//EN", "made", List.of(event)).text();
    }
}
