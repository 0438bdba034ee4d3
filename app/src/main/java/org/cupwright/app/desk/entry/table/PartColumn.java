package org.cupwright.app.desk.entry.table;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.desk.entry.EntryForm;
import org.cupwright.app.desk.entry.Part;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.formats.table.CellText;
import org.cupwright.formats.table.CsvText;
import tools.jackson.databind.JsonNode;

/**
 * A column of a table of entries: a part of what they say, or a piece of one. A place has two columns, a piece of
 * ground has four, every other part one.
 *
 * @param cell what the column is called and takes
 * @param path where its value lies in what an entry says
 */
record PartColumn(Part cell, List<String> path) {
    static List<PartColumn> of(EntryForm form) {
        return form.parts().stream().flatMap(PartColumn::of).toList();
    }

    private static Stream<PartColumn> of(Part part) {
        String name = part.name();
        if (part.type() == MapPoint.class) {
            return Stream.of(
                    metres(name + "East", List.of(name, "east")), metres(name + "North", List.of(name, "north")));
        }
        if (part.type() == Area.class) {
            return Stream.of(
                    metres(name + "East", List.of(name, "centre", "east")),
                    metres(name + "North", List.of(name, "centre", "north")),
                    metres(name + "Radius", List.of(name, "radiusMetres")),
                    new PartColumn(new Part(name + "Corners", Area.class, true), List.of(name)));
        }
        return Stream.of(new PartColumn(part, List.of(name)));
    }

    private static PartColumn metres(String name, List<String> path) {
        return new PartColumn(new Part(name + "Metres", double.class, true), path);
    }

    String name() {
        return cell.name();
    }

    /** The cell of what an entry says. */
    String write(JsonNode payload, ZoneId zone) {
        JsonNode value = payload;
        for (String step : path) {
            value = value.path(step);
        }
        if (cell.type() == Area.class) {
            return corners(value.path("corners"));
        }
        if (value.isMissingNode()) {
            return "";
        }
        if (value.isArray()) {
            List<String> items = new ArrayList<>();
            value.forEach(item -> items.add(item.asString()));
            return items.isEmpty() ? "" : CsvText.joined(items);
        }
        return single(value, zone);
    }

    private String single(JsonNode value, ZoneId zone) {
        if (value.isBoolean()) {
            return value.asBoolean() ? "yes" : "no";
        }
        if (value.isNumber()) {
            return plain(value);
        }
        if (cell.type() == Instant.class) {
            return moment(Instant.parse(value.asString()), zone);
        }
        return cell.type().isEnum() ? EntryForm.typed(value.asString()) : CellText.guarded(value.asString());
    }

    /** A moment by the course's clock with its offset, so that it stays one where clocks are put back. */
    static String moment(Instant moment, ZoneId zone) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(moment.atZone(zone));
    }

    private static String corners(JsonNode corners) {
        List<String> written = new ArrayList<>();
        corners.forEach(corner -> written.add(plain(corner.get("east")) + "," + plain(corner.get("north"))));
        return String.join(" ", written);
    }

    /** A number without exponent, of as many digits as give it back. */
    private static String plain(JsonNode number) {
        BigDecimal exact = new BigDecimal(number.asString()).stripTrailingZeros();
        return exact.toPlainString();
    }
}
