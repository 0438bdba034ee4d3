package org.cupwright.app.desk.entry.table;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.entry.Draft;
import org.cupwright.app.desk.entry.EntryForm;
import org.cupwright.app.desk.entry.EntryPlace;
import org.cupwright.app.desk.entry.MomentText;
import org.cupwright.app.desk.entry.Part;
import org.cupwright.app.desk.entry.PartText;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.formats.table.CellText;
import org.cupwright.formats.table.NotRead;
import org.cupwright.formats.table.WrittenDay;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import tools.jackson.databind.JsonNode;

/**
 * Makes an entry of a line of a table, by the parts that are typed one by one elsewhere. A line without an id gets one
 * that follows from what it says, whoever says so, so that a table read twice adds nothing.
 */
final class TableEntry {
    /** The time of lines that name none (our choice: cups are changed before play; the day is what matters). */
    private static final LocalTime MORNING = LocalTime.of(5, 0);

    private final EntryForm form;
    private final TableColumns columns;
    private final Course course;
    private final Policy policy;
    private final String person;
    private final Instant now;

    TableEntry(EntryForm form, TableColumns columns, Course course, Policy policy, String person, Instant now) {
        this.form = form;
        this.columns = columns;
        this.course = course;
        this.policy = policy;
        this.person = person;
        this.now = now;
    }

    /** Of which kind its entries are. */
    String kind() {
        return form.kind();
    }

    /**
     * An entry.
     *
     * @param named whether the line gives its id
     * @param remarks how it was understood, where it could be understood otherwise
     */
    record Made(Fact fact, boolean named, List<Message> remarks) {}

    Made of(List<String> fields) throws NotRead {
        try {
            return made(fields);
        } catch (Problem problem) {
            throw new NotRead(problem.what(), problem.tryThis());
        }
    }

    private Made made(List<String> fields) throws NotRead {
        LocalDate day = day(fields);
        MomentText moments = new MomentText(day, zone());
        Instant happened = columns.find(fields, TableColumns.TIME)
                .map(text -> moments.read(text.strip()))
                .orElseGet(() -> day.atTime(MORNING).atZone(zone()).toInstant());
        if (!LocalDate.ofInstant(happened, zone()).equals(day)) {
            throw not("days", day.toString());
        }
        Optional<Hole> hole =
                columns.find(fields, TableColumns.HOLE).map(id -> HoleChoice.hole(course, CellText.plain(id)));
        Payload payload = payload(fields, hole, moments, day);
        if (payload.needsHole() && hole.isEmpty()) {
            throw not("needsHole", EntryForm.typed(form.kind()));
        }
        Optional<UUID> id = id(fields);
        Fact fact = new Fact(
                id.orElseGet(() -> id(happened, hole, payload)),
                Fact.CURRENT_VERSION,
                happened,
                columns.find(fields, TableColumns.RECORDED)
                        .map(text -> moments.read(text.strip()))
                        .orElse(now),
                Optional.empty(),
                columns.find(fields, TableColumns.PERSON).map(CellText::plain).orElse(person),
                course.id(),
                hole.map(Hole::id),
                payload);
        return new Made(fact, id.isPresent(), moments.remarks());
    }

    private ZoneId zone() {
        return course.frame().zone();
    }

    /** The day a line is about: its date, that of its time, or the day it speaks of. */
    private LocalDate day(List<String> fields) throws NotRead {
        Optional<String> date = columns.find(fields, TableColumns.DATE);
        if (date.isPresent()) {
            return WrittenDay.inTable(date.get().strip());
        }
        Optional<String> time = columns.find(fields, TableColumns.TIME).map(String::strip);
        if (time.isPresent() && time.get().length() > "05:40:00.000".length()) {
            return LocalDate.ofInstant(new MomentText(LocalDate.EPOCH, zone()).read(time.get()), zone());
        }
        if (time.isPresent() && isDay(time.get())) {
            throw not("dayForTime", time.get());
        }
        Optional<String> spokenOf = form.find("day").flatMap(part -> columns.find(fields, part.name()));
        if (spokenOf.isPresent()) {
            return WrittenDay.inTable(spokenOf.get().strip());
        }
        throw time.isPresent() ? not("timeAlone", time.get()) : not("noTime", "");
    }

    private static boolean isDay(String text) {
        try {
            WrittenDay.of(text);
            return true;
        } catch (DateTimeException other) {
            return false;
        }
    }

    private Optional<UUID> id(List<String> fields) throws NotRead {
        Optional<String> given = columns.find(fields, TableColumns.ID).map(String::strip);
        if (given.isPresent() && !given.get().matches("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}")) {
            throw not("id", given.get());
        }
        return given.map(UUID::fromString);
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

    private Payload payload(List<String> fields, Optional<Hole> hole, MomentText moments, LocalDate day)
            throws NotRead {
        Draft draft = Draft.empty(form);
        EntryPlace places = new EntryPlace(hole, policy);
        PartText texts = new PartText(places::typed, moments);
        for (PartColumn column : columns.parts()) {
            columns.find(fields, column.name()).ifPresent(text -> draft.set(column.path(), read(texts, column, text)));
        }
        for (Part part : form.parts()) {
            Optional<String> typed = part.isPlace() ? columns.find(fields, part.name()) : Optional.empty();
            typed.ifPresent(text -> draft.set(part.name(), texts.read(part, text.strip())));
        }
        TablePlace place = new TablePlace(form, columns, fields, texts);
        place.into(draft, places);
        place.check(draft);
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

    private static JsonNode read(PartText texts, PartColumn column, String text) {
        Class<?> type = column.cell().type();
        String plain = type == String.class ? CellText.plain(text) : type == List.class ? text : text.strip();
        return texts.read(column.cell(), plain);
    }

    static NotRead not(String what, String value) {
        return new NotRead(Message.of("table.not." + what, new Name(value)), Message.of("table.try." + what));
    }
}
