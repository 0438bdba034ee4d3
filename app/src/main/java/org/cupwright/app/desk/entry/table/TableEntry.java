package org.cupwright.app.desk.entry.table;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.entry.notebook.HistoryLine;
import org.cupwright.app.desk.entry.typed.Draft;
import org.cupwright.app.desk.entry.typed.EntryPlace;
import org.cupwright.app.desk.entry.typed.MomentText;
import org.cupwright.app.desk.entry.typed.Part;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.formats.Separator;
import org.cupwright.formats.table.Layout;
import org.cupwright.formats.table.WrittenDay;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/**
 * Makes an entry of a line of a table, by the parts that are typed one by one elsewhere. A line without an id gets one
 * that follows from what it says, whoever says so, so that a table read twice adds nothing.
 *
 * @param person who says what names nobody
 * @param now when what does not say was written down
 */
record TableEntry(EntryColumns columns, Course course, Policy policy, String person, Instant now) {
    /**
     * An entry.
     *
     * @param named whether the line gives its id
     * @param remarks how it was understood, where it could be understood otherwise
     */
    record Made(Fact fact, boolean named, List<Message> remarks) {}

    Made of(Layout.Row row) {
        LocalDate day = day(row);
        MomentText moments = new MomentText(day, zone());
        Instant happened = row.find(EntryColumns.TIME).map(moments::read).orElseGet(() -> DayLog.morning(day, zone()));
        if (!LocalDate.ofInstant(happened, zone()).equals(day)) {
            throw not("days", day.toString());
        }
        Optional<Hole> hole = row.find(EntryColumns.HOLE).map(id -> HoleChoice.hole(course, id));
        Payload payload = payload(row, hole, moments, day);
        if (payload.needsHole() && hole.isEmpty()) {
            throw not("needsHole", LogProblems.typed(payload.kind()));
        }
        Optional<UUID> id = row.find(EntryColumns.ID);
        Fact fact = new Fact(
                id.orElseGet(() -> id(happened, hole, payload)),
                Fact.CURRENT_VERSION,
                happened,
                row.find(EntryColumns.RECORDED).map(moments::read).orElse(now),
                Optional.empty(),
                row.find(EntryColumns.PERSON).orElse(person),
                course.id(),
                hole.map(Hole::id),
                payload);
        return new Made(fact, id.isPresent(), moments.remarks());
    }

    private ZoneId zone() {
        return course.frame().zone();
    }

    /** The day a line is about: its date, that of its time, or the day it speaks of. */
    private LocalDate day(Layout.Row row) {
        Optional<LocalDate> date = row.find(EntryColumns.DATE);
        if (date.isPresent()) {
            return date.get();
        }
        String time = row.text(EntryColumns.TIME);
        if (time.length() > "05:40:00.000".length()) {
            return LocalDate.ofInstant(new MomentText(LocalDate.EPOCH, zone()).read(time), zone());
        }
        if (WrittenDay.find(time).isPresent()) {
            throw not("dayForTime", time);
        }
        String spokenOf = columns.day().map(day -> row.text(day.whole())).orElse("");
        if (!spokenOf.isEmpty()) {
            return WrittenDay.inTable(spokenOf);
        }
        throw not(time.isEmpty() ? "noTime" : "timeAlone", time);
    }

    private UUID id(Instant happened, Optional<Hole> hole, Payload payload) {
        String said = String.join(
                " ",
                "table",
                course.id(),
                happened.toString(),
                hole.map(Hole::id).orElse(""),
                FactJson.writePayload(payload));
        return UUID.nameUUIDFromBytes(said.getBytes(StandardCharsets.UTF_8));
    }

    private Payload payload(Layout.Row row, Optional<Hole> hole, MomentText moments, LocalDate day) {
        Draft draft = new Draft(columns.form());
        EntryPlace places = new EntryPlace(hole, policy);
        for (PartColumns part : columns.parts()) {
            part.read(row, draft, places, moments);
        }
        Optional<Part> place = columns.form().place();
        if (place.isPresent()) {
            place(row, draft, places, place.get());
        }
        List<Part> missing = draft.missing().stream()
                .filter(part -> !Draft.goesWithoutSaying(part))
                .toList();
        if (!missing.isEmpty()) {
            throw not(
                    "missing",
                    String.join(", ", missing.stream().map(Part::name).toList()));
        }
        draft.fillIn(day);
        return draft.finished();
    }

    /** Puts the place into a draft, where the line gives one under on and side, or east and north. */
    private static void place(Layout.Row row, Draft draft, EntryPlace places, Part part) {
        Optional<Spot> where = where(row);
        if (where.isPresent()) {
            OptionalDouble radius = row.number(EntryColumns.RADIUS);
            if (draft.says(part.name())) {
                throw not("twoPlaces", part.name());
            }
            if (part.type() == Area.class && radius.isEmpty()) {
                throw not("radius", part.name());
            }
            places.into(draft, where.get(), radius);
        } else if (part.type() == MapPoint.class && draft.says(part.name())) {
            EntryPlace.foundByMap(draft);
        }
    }

    private static Optional<Spot> where(Layout.Row row) {
        Optional<Double> east = row.find(EntryColumns.EAST);
        Optional<Double> north = row.find(EntryColumns.NORTH);
        String on = row.text(EntryColumns.ON);
        String side = row.text(EntryColumns.SIDE);
        if (on.isEmpty() != side.isEmpty()) {
            throw not("half", on.isEmpty() ? "on" : "side");
        }
        if (east.isPresent() != north.isPresent()) {
            throw not("half", east.isPresent() ? "north" : "east");
        }
        if (!on.isEmpty() && east.isPresent()) {
            throw not("twoPlaces", "on, east");
        }
        return on.isEmpty()
                ? east.map(metres -> new Spot.At(new MapPoint(metres, north.orElseThrow())))
                : Optional.of(HistoryLine.place(on, side, Separator.SEMICOLON));
    }

    static Problem not(String what, String value) {
        return Problem.of(Message.of("table.not." + what, new Name(value)), Message.of("table.try." + what));
    }
}
