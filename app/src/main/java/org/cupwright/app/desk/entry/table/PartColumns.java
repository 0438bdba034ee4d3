package org.cupwright.app.desk.entry.table;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.desk.entry.typed.Draft;
import org.cupwright.app.desk.entry.typed.EntryPlace;
import org.cupwright.app.desk.entry.typed.MomentText;
import org.cupwright.app.desk.entry.typed.Part;
import org.cupwright.app.desk.entry.typed.PartText;
import org.cupwright.app.desk.entry.typed.WrittenPart;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.Payload;
import org.cupwright.formats.table.CellText;
import org.cupwright.formats.table.Column;
import org.cupwright.formats.table.Layout;
import org.cupwright.message.Problem;

/**
 * The columns of a part of what entries say. A place has two, a piece of ground four, and either may be typed in one
 * cell instead; every other part has one.
 *
 * @param whole takes the part in one cell
 * @param pieces take its metres east, north and about
 * @param corners takes the corners of a piece of ground
 */
record PartColumns(
        Part part, Column<PartText.Value> whole, List<Column<Double>> pieces, Column<PartText.Value> corners) {
    /** The pieces of places as a person is told of them. */
    private static final List<String> OF_POINT = List.of("east", "north");

    private static final List<String> OF_AREA = List.of("centre east", "centre north", "radiusMetres");

    static PartColumns of(Part part) {
        Stream<String> pieces = part.isPlace() ? Stream.of("East", "North") : Stream.of();
        if (part.type() == Area.class) {
            pieces = Stream.of("East", "North", "Radius");
        }
        return new PartColumns(
                part,
                value(part.name(), part),
                pieces.map(piece -> number(part.name() + piece + "Metres")).toList(),
                value(part.name() + "Corners", part));
    }

    static Column<Double> number(String name) {
        return Column.of(name, (text, writing) -> PartText.number(name, text, false));
    }

    private static Column<PartText.Value> value(String name, Part part) {
        return Column.of(name, (text, writing) -> {
            if (part.type() == String.class) {
                return PartText.read(part, CellText.plain(writing.field()));
            }
            return PartText.read(part, part.type() == List.class ? writing.field() : text);
        });
    }

    /** Those that a table is written with. */
    List<Column<?>> written() {
        List<Column<?>> columns = new ArrayList<>(pieces);
        if (columns.isEmpty()) {
            columns.add(whole);
        } else if (part.type() == Area.class) {
            columns.add(corners);
        }
        return columns;
    }

    /** All that it may be read from. */
    Stream<Column<?>> all() {
        return Stream.concat(written().stream(), part.isPlace() ? Stream.of(whole) : Stream.of());
    }

    /** Takes what a line says of it into a draft. */
    void read(Layout.Row row, Draft draft, EntryPlace places, MomentText moments) {
        List<OptionalDouble> metres = pieces.stream().map(row::number).toList();
        Optional<PartText.Value> drawn = part.type() == Area.class ? row.find(corners) : Optional.empty();
        Optional<PartText.Value> said = row.find(whole).or(() -> drawn);
        if (said.isPresent()) {
            draft.set(part.name(), said.get().on(places, moments));
        } else if (metres.stream().anyMatch(OptionalDouble::isPresent)) {
            draft.set(part.name(), place(metres));
        }
    }

    /** @throws Problem where a piece is missing */
    private Object place(List<OptionalDouble> metres) {
        for (int piece = 1; piece < metres.size(); piece++) {
            if (metres.get(piece).isPresent() != metres.get(0).isPresent()) {
                int missing = metres.get(0).isPresent() ? piece : 0;
                List<String> names = part.type() == Area.class ? OF_AREA : OF_POINT;
                throw TableEntry.not("half", part.name() + " " + names.get(missing));
            }
        }
        MapPoint point = new MapPoint(metres.get(0).getAsDouble(), metres.get(1).getAsDouble());
        Supplier<Area> around = () -> new Area.Around(point, metres.get(2).getAsDouble());
        return part.type() == Area.class ? around : point;
    }

    /** The cells of what an entry says of it. */
    List<String> cells(Payload payload, ZoneId zone) {
        Optional<Object> said = part.of(payload);
        if (said.isEmpty()) {
            return Collections.nCopies(written().size(), "");
        }
        Object value = said.get();
        if (value instanceof MapPoint point) {
            return List.of(WrittenPart.number(point.east()), WrittenPart.number(point.north()));
        }
        if (value instanceof Area.Around around) {
            MapPoint centre = around.centre();
            return List.of(
                    WrittenPart.number(centre.east()),
                    WrittenPart.number(centre.north()),
                    WrittenPart.number(around.radiusMetres()),
                    "");
        }
        return value instanceof Area.Drawn drawn ? List.of("", "", "", drawn(drawn)) : List.of(single(value, zone));
    }

    private static String single(Object value, ZoneId zone) {
        return value instanceof String text ? CellText.guarded(text) : WrittenPart.of(value, zone);
    }

    private static String drawn(Area.Drawn area) {
        return area.corners().stream()
                .map(corner -> WrittenPart.number(corner.east()) + "," + WrittenPart.number(corner.north()))
                .collect(Collectors.joining(" "));
    }
}
