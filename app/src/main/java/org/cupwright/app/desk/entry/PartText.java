package org.cupwright.app.desk.entry;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.storage.Photo;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.table.CsvText;
import org.cupwright.formats.table.WrittenDay;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A part's value as a person types it, turned into the JSON that facts are made of. */
public final class PartText {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> YES = List.of("yes", "y", "true", "1");
    private static final List<String> NO = List.of("no", "n", "false", "0");

    /** Turns {@code E,N} or {@code 12,L5} into a point. */
    private final Function<String, MapPoint> points;

    private final MomentText moments;

    public PartText(Function<String, MapPoint> points, MomentText moments) {
        this.points = points;
        this.moments = moments;
    }

    /** What a person types for a part; a photo is handed in as a file instead. */
    JsonNode typed(Part part, String text) {
        if (part.name().equals(Photo.PART)) {
            throw LogProblems.value(part.name(), text, Message.of("try.log.photo"));
        }
        return read(part, text);
    }

    public JsonNode read(Part part, String text) {
        Class<?> type = part.type();
        if (type == boolean.class) {
            return yesOrNo(part, text);
        }
        if (type == int.class || type == double.class) {
            return number(part, text);
        }
        if (type == LocalDate.class) {
            return day(part, text);
        }
        if (type == Instant.class) {
            return NODES.stringNode(moments.read(text).toString());
        }
        if (type == MapPoint.class) {
            return point(points.apply(text));
        }
        if (part.isPlace()) {
            return corners(text);
        }
        if (type == List.class) {
            return list(text);
        }
        return type.isEnum() ? choice(part, text) : NODES.stringNode(text);
    }

    private static JsonNode yesOrNo(Part part, String text) {
        String plain = text.toLowerCase(Locale.ROOT);
        if (YES.contains(plain) || NO.contains(plain)) {
            return NODES.booleanNode(YES.contains(plain));
        }
        throw LogProblems.value(part.name(), text, Message.of("try.log.yesOrNo"));
    }

    private static JsonNode number(Part part, String text) {
        boolean whole = part.type() == int.class;
        String plain = text.indexOf('.') < 0 ? text.replace(',', '.') : text;
        if (!plain.matches(whole ? "[0-9]{1,9}" : "[+-]?[0-9]{1,9}([.][0-9]{1,330})?")) {
            throw LogProblems.value(part.name(), text, Message.of(whole ? "try.log.wholeNumber" : "try.log.number"));
        }
        return whole ? NODES.numberNode(Integer.parseInt(plain)) : NODES.numberNode(Double.parseDouble(plain));
    }

    private static JsonNode day(Part part, String text) {
        try {
            return NODES.stringNode(WrittenDay.of(text).toString());
        } catch (DateTimeException notOne) {
            throw LogProblems.day(part.name(), text);
        }
    }

    private static JsonNode choice(Part part, String text) {
        List<String> choices = Arrays.stream(part.type().getEnumConstants())
                .map(choice -> EnumNames.lowerCamel((Enum<?>) choice))
                .toList();
        List<String> found = EntryForm.fitting(text, choices);
        if (found.size() != 1) {
            String all = String.join(
                    ", ",
                    (found.isEmpty() ? choices : found)
                            .stream().map(EntryForm::typed).toList());
            throw LogProblems.value(part.name(), text, Message.of("try.log.choice", new Name(all)));
        }
        return NODES.stringNode(found.get(0));
    }

    private JsonNode corners(String text) {
        ArrayNode corners = NODES.arrayNode();
        for (String corner : text.strip().split("[ ;]+")) {
            corners.add(point(points.apply(corner)));
        }
        ObjectNode area = NODES.objectNode();
        area.set("corners", corners);
        return area;
    }

    /** Items with commas between; an item that holds one stands in quotation marks. */
    private static JsonNode list(String text) {
        ArrayNode items = NODES.arrayNode();
        CsvText.items(text).forEach(items::add);
        return items;
    }

    static ObjectNode point(MapPoint point) {
        ObjectNode node = NODES.objectNode();
        node.put("east", point.east());
        node.put("north", point.north());
        return node;
    }
}
