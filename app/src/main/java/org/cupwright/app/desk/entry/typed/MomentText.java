package org.cupwright.app.desk.entry.typed;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.storage.DayRange;
import org.cupwright.app.storage.FactStore;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * A moment as a person types it: {@code 05:40} on the day that is spoken of, {@code 2026-06-20T05:40} by the course's
 * clock, or a moment that ends in Z or in its offset from UTC, as tables have it. In the night in which clocks are put
 * forward an hour is missing, and its times are refused; in the night in which they are put back one comes twice, the
 * first is taken, and that is said.
 */
public final class MomentText {
    private static final Pattern WITH_OFFSET = Pattern.compile(".{10}[T ].*[+-][0-9:]{2,8}");

    private final LocalDate day;
    private final ZoneId zone;
    private final List<Message> remarks = new ArrayList<>();

    /**
     * @param day the day that is spoken of
     * @param zone the course's zone
     */
    public MomentText(LocalDate day, ZoneId zone) {
        this.day = day;
        this.zone = zone;
    }

    public Instant read(String text) {
        Instant moment = readAny(text);
        if (moment.isBefore(DayRange.EARLIEST.atStartOfDay(zone).toInstant()) || moment.isAfter(FactStore.LONG_HENCE)) {
            throw Problem.of("log.moment", "when", text, new Name(text));
        }
        return moment;
    }

    /**
     * A day that an entry of the day that is spoken of may name.
     *
     * @throws Problem when it lies beyond what anybody plans, or before any record
     */
    public LocalDate within(LocalDate named, String part) {
        return DayRange.upTo(day).within(named, part);
    }

    private Instant readAny(String text) {
        try {
            if (text.endsWith("Z")) {
                return Instant.parse(text);
            }
            if (WITH_OFFSET.matcher(text).matches()) {
                return OffsetDateTime.parse(text.replace(' ', 'T')).toInstant();
            }
            return moment(local(text), text);
        } catch (DateTimeException notOne) {
            throw Problem.of("log.moment", "when", text, new Name(text));
        }
    }

    /** What is to be said of the moments that were read. */
    public List<Message> remarks() {
        return List.copyOf(remarks);
    }

    private Instant moment(LocalDateTime local, String text) {
        ZoneOffsetTransition change = zone.getRules().getTransition(local);
        if (change != null && change.isGap()) {
            String forward = local.plus(change.getDuration()).toString();
            throw LogProblems.leftOut(text, clocks("problem.log.leftOut", local, change), forward);
        }
        Instant first = local.atZone(zone).toInstant();
        if (change != null) {
            Message twice = clocks(
                    "log.twice",
                    local,
                    change,
                    new Name(local.toInstant(change.getOffsetAfter()).toString()));
            if (!remarks.contains(twice)) {
                remarks.add(twice);
            }
        }
        return first;
    }

    private static Message clocks(String key, LocalDateTime local, ZoneOffsetTransition change, Name... more) {
        List<Message.Argument> said = new ArrayList<>(List.of(
                new Name(local.toLocalTime().toString()),
                new Day(local.toLocalDate()),
                new Name(change.getDateTimeBefore().toLocalTime().toString()),
                new Name(change.getDateTimeAfter().toLocalTime().toString())));
        said.addAll(List.of(more));
        return new Message(key, said);
    }

    private LocalDateTime local(String text) {
        boolean timeAlone = text.indexOf('T') < 0 && text.indexOf(' ') < 0;
        if (timeAlone) {
            String padded = text.matches("[0-9]:[0-9]{2}") ? "0" + text : text;
            return day.atTime(LocalTime.parse(padded));
        }
        return LocalDateTime.parse(text.replace(' ', 'T').replaceFirst("T([0-9]:)", "T0$1"));
    }
}
