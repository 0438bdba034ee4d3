package org.cupwright.app.desk.entry.table;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.entry.Draft;
import org.cupwright.app.desk.entry.EntryForm;
import org.cupwright.app.desk.entry.EntryPlace;
import org.cupwright.app.desk.entry.Part;
import org.cupwright.app.desk.entry.PartText;
import org.cupwright.app.desk.entry.notebook.HistoryLine;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.formats.Separator;
import org.cupwright.formats.table.NotRead;
import tools.jackson.databind.JsonNode;

/** Where a line of a table says something was: in the columns of a part, or under on and side, or east and north. */
final class TablePlace {
    private final EntryForm form;
    private final TableColumns columns;
    private final List<String> fields;
    private final PartText texts;

    TablePlace(EntryForm form, TableColumns columns, List<String> fields, PartText texts) {
        this.form = form;
        this.columns = columns;
        this.fields = fields;
        this.texts = texts;
    }

    /** Puts the place into a draft, where the line gives one by itself. */
    void into(Draft draft, EntryPlace places) throws NotRead {
        Optional<Spot> where = where();
        Optional<Part> part = form.place();
        if (part.isPresent() && where.isPresent()) {
            if (draft.says(part.get().name())) {
                throw TableEntry.not("twoPlaces", part.get().name());
            }
            OptionalDouble radius = number("radius");
            if (part.get().type() == Area.class && radius.isEmpty()) {
                throw TableEntry.not("radius", part.get().name());
            }
            places.into(draft, where.get(), radius);
        } else if (part.isPresent() && draft.says(List.of(part.get().name(), "east"))) {
            EntryPlace.foundByMap(draft);
        }
    }

    private Optional<Spot> where() throws NotRead {
        OptionalDouble east = number("east");
        OptionalDouble north = number("north");
        Optional<String> on = columns.find(fields, "on").map(String::strip);
        Optional<String> side = columns.find(fields, "side").map(String::strip);
        if (on.isPresent() != side.isPresent()) {
            throw TableEntry.not("half", on.isPresent() ? "side" : "on");
        }
        if (east.isPresent() != north.isPresent()) {
            throw TableEntry.not("half", east.isPresent() ? "north" : "east");
        }
        if (on.isPresent() && east.isPresent()) {
            throw TableEntry.not("twoPlaces", "on, east");
        }
        if (on.isPresent()) {
            return Optional.of(HistoryLine.place(on.get(), side.get(), Separator.SEMICOLON));
        }
        return east.isPresent()
                ? Optional.of(new Spot.At(new MapPoint(east.getAsDouble(), north.getAsDouble())))
                : Optional.empty();
    }

    private OptionalDouble number(String column) {
        return columns
                .find(fields, column)
                .map(text -> texts.read(new Part(column, double.class, true), text.strip()))
                .stream()
                .mapToDouble(JsonNode::asDouble)
                .findFirst();
    }

    /** Refuses places of which a piece is missing. */
    void check(Draft draft) throws NotRead {
        for (Part part : form.parts()) {
            if (part.type() == MapPoint.class) {
                together(draft, List.of(part.name(), "east"), List.of(part.name(), "north"));
            } else if (part.type() == Area.class) {
                List<String> radius = List.of(part.name(), "radiusMetres");
                together(draft, List.of(part.name(), "centre", "east"), List.of(part.name(), "centre", "north"));
                together(draft, List.of(part.name(), "centre", "east"), radius);
                if (draft.says(radius) && draft.says(List.of(part.name(), "corners"))) {
                    throw TableEntry.not("twoPlaces", part.name());
                }
            }
        }
    }

    private static void together(Draft draft, List<String> one, List<String> other) throws NotRead {
        if (draft.says(one) != draft.says(other)) {
            throw TableEntry.not("half", String.join(" ", draft.says(one) ? other : one));
        }
    }
}
