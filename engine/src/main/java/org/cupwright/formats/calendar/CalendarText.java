package org.cupwright.formats.calendar;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * A calendar of all-day events as text (RFC 5545): lines end in CRLF, none is longer than 75 octets in UTF-8, and what
 * people wrote is escaped. The same events give the same text.
 *
 * @param product who made it (3.7.3), {@code -//Owner//Program 1.0//EN}
 * @param name what the calendar is called (RFC 7986, 5.1)
 * @param events in the order in which they are written
 */
public record CalendarText(String product, String name, List<DayEvent> events) {
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);

    public CalendarText {
        events = List.copyOf(events);
    }

    public String text() {
        ContentLines lines = new ContentLines();
        lines.add("BEGIN", "VCALENDAR");
        lines.add("VERSION", "2.0");
        lines.addText("PRODID", product);
        lines.add("CALSCALE", "GREGORIAN");
        lines.addText("NAME", name);
        events.forEach(event -> write(event, lines));
        lines.add("END", "VCALENDAR");
        return lines.text();
    }

    /** It ends with its day, so no end is written (3.6.1); it makes nobody busy (3.8.2.7). */
    private static void write(DayEvent event, ContentLines lines) {
        lines.add("BEGIN", "VEVENT");
        lines.add("UID", event.uid());
        lines.add("DTSTAMP", MOMENT.format(event.revised()));
        lines.add("SEQUENCE", Integer.toString(event.sequence()));
        lines.add("DTSTART;VALUE=DATE", DAY.format(event.day()));
        lines.addText("SUMMARY", event.summary());
        lines.addText("DESCRIPTION", event.description());
        lines.add("STATUS", event.status().name());
        lines.add("TRANSP", "TRANSPARENT");
        lines.add("END", "VEVENT");
    }
}
