package org.cupwright.app.desk.log;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;

/**
 * A moment as a person types it: {@code 05:40} on the day that is spoken of, {@code 2026-06-20T05:40} by the course's clock, or a
 * moment in UTC that ends in Z.
 *
 * @param day the day that is spoken of
 * @param zone the course's zone
 */
record MomentText(LocalDate day, ZoneId zone) {
    Instant read(String text) {
        try {
            if (text.endsWith("Z")) {
                return Instant.parse(text);
            }
            return local(text).atZone(zone).toInstant();
        } catch (DateTimeException notOne) {
            throw LogProblems.moment(text);
        }
    }

    private LocalDateTime local(String text) {
        boolean timeAlone = text.indexOf('T') < 0 && text.indexOf(' ') < 0;
        if (timeAlone) {
            String padded = text.matches("[0-9]:[0-9]{2}") ? "0" + text : text;
            return day.atTime(LocalTime.parse(padded));
        }
        return LocalDateTime.parse(text.replace(' ', 'T'));
    }
}
