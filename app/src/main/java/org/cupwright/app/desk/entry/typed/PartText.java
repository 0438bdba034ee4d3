package org.cupwright.app.desk.entry.typed;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Supplier;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.storage.Photo;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.formats.table.CsvText;
import org.cupwright.formats.table.WrittenDay;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.policy.EnumNames;

/** A part's value as a person types it. */
public final class PartText {
    private static final List<String> YES = List.of("yes", "y", "true", "1");
    private static final List<String> NO = List.of("no", "n", "false", "0");

    private PartText() {}

    /** A value that may rest on which hole and which day are spoken of. */
    @FunctionalInterface
    public interface Value {
        /** What {@link Draft#set} takes. */
        Object on(EntryPlace places, MomentText moments);
    }

    /** What a person types for a part; a photo is handed in as a file instead. */
    static Value typed(Part part, String text) {
        if (part.name().equals(Photo.PART)) {
            throw LogProblems.value(part.name(), text, Message.of("try.log.photo"));
        }
        return read(part, text);
    }

    public static Value read(Part part, String text) {
        if (part.type() == Instant.class) {
            return (places, moments) -> moments.read(text);
        }
        if (part.type() == MapPoint.class) {
            Spot spot = EntryPlace.spot(text);
            return (places, moments) -> places.of(spot, text);
        }
        if (part.type() == Area.class) {
            List<String> corners = List.of(text.strip().split("[ ;]+"));
            return (places, moments) -> drawn(corners, places);
        }
        if (part.type() == LocalDate.class) {
            LocalDate day = WrittenDay.find(text).orElseThrow(() -> LogProblems.day(part.name(), text));
            return (places, moments) -> moments.within(day, part.name());
        }
        Object value = plain(part, text);
        return (places, moments) -> value;
    }

    private static Object plain(Part part, String text) {
        Class<?> type = part.type();
        if (type == boolean.class) {
            return yesOrNo(part, text);
        }
        if (type == int.class) {
            return (int) number(part.name(), text, true);
        }
        if (type == double.class) {
            return number(part.name(), text, false);
        }
        if (type == List.class) {
            return CsvText.items(text);
        }
        if (type == UUID.class) {
            return UUID.fromString(text);
        }
        return type.isEnum() ? choice(part, text) : text;
    }

    private static boolean yesOrNo(Part part, String text) {
        String plain = text.toLowerCase(Locale.ROOT);
        if (YES.contains(plain) || NO.contains(plain)) {
            return YES.contains(plain);
        }
        throw LogProblems.value(part.name(), text, Message.of("try.log.yesOrNo"));
    }

    /** A number of a part, with its unit perhaps; a decimal comma will do. */
    public static double number(String part, String text, boolean whole) {
        if (!whole) {
            return TypedNumber.read(part, text);
        }
        if (!text.matches("[0-9]{1,9}")) {
            throw LogProblems.value(part, text, Message.of("try.log.wholeNumber"));
        }
        return Double.parseDouble(text);
    }

    private static Enum<?> choice(Part part, String text) {
        List<Enum<?>> choices = Arrays.stream(part.type().getEnumConstants())
                .<Enum<?>>map(choice -> (Enum<?>) choice)
                .toList();
        List<String> names = choices.stream().map(EnumNames::lowerCamel).toList();
        List<String> found = EntryForm.fitting(text, names);
        if (found.size() != 1) {
            List<String> named = found.isEmpty() ? names : found;
            String all =
                    String.join(", ", named.stream().map(LogProblems::typed).toList());
            throw LogProblems.value(part.name(), text, Message.of("try.log.choice", new Name(all)));
        }
        return choices.get(names.indexOf(found.get(0)));
    }

    private static Supplier<Area> drawn(List<String> texts, EntryPlace places) {
        List<MapPoint> corners = texts.stream()
                .map(corner -> places.of(EntryPlace.spot(corner), corner))
                .toList();
        return () -> new Area.Drawn(corners);
    }
}
