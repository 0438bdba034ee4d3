package org.cupwright.formats.calendar;

import java.time.Instant;
import java.time.LocalDate;

/**
 * Something that is all day long on one calendar day.
 *
 * @param uid its name, the same whenever it is written, and no other event's (RFC 5545, 3.8.4.7)
 * @param sequence how often it was changed before (3.8.7.4); never falls
 * @param revised when it was changed last (3.8.7.2); written in whole seconds
 * @param day a day without a zone (3.3.4): the same day wherever it is read
 * @param status whether it stands
 * @param summary in a few words
 * @param description in full; lines are parted by line feeds
 */
public record DayEvent(
        String uid, int sequence, Instant revised, LocalDate day, Status status, String summary, String description) {
    /** Whether it stands (3.8.1.11). */
    public enum Status {
        TENTATIVE,
        CONFIRMED
    }

    public DayEvent {
        if (!uid.matches("[A-Za-z0-9@.-]{1,255}")) {
            throw new IllegalArgumentException("no name of an event: " + uid);
        }
        if (sequence < 0) {
            throw new IllegalArgumentException("a sequence number below 0: " + sequence);
        }
    }
}
