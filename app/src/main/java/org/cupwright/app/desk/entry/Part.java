package org.cupwright.app.desk.entry;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.message.Message;
import org.cupwright.policy.EnumNames;

/**
 * One part of what a kind of entry says.
 *
 * @param name its name, as in {@code holeDepthMillimetres}
 * @param type what it takes: a record's component without the Optional about it
 * @param optional whether it may be left out
 */
public record Part(String name, Class<?> type, boolean optional) {
    static Part of(RecordComponent component) {
        Class<?> raw = component.getType();
        if (raw == OptionalDouble.class) {
            return new Part(component.getName(), double.class, true);
        }
        if (raw == OptionalInt.class) {
            return new Part(component.getName(), int.class, true);
        }
        if (raw == Optional.class) {
            return new Part(component.getName(), inside(component.getGenericType()), true);
        }
        return new Part(component.getName(), raw, raw == List.class);
    }

    private static Class<?> inside(Type optional) {
        return (Class<?>) ((ParameterizedType) optional).getActualTypeArguments()[0];
    }

    /** Whether it is where on the ground the entry speaks of. */
    public boolean isPlace() {
        return type == MapPoint.class || type == Area.class;
    }

    /** How it is given, as an example. */
    Message example() {
        if (isPlace()) {
            return Message.of(name.equals("cutAt") ? "log.example.cutAt" : "log.example.place");
        }
        String value = "…";
        if (type.isEnum()) {
            value = EnumNames.lowerCamel((Enum<?>) type.getEnumConstants()[0]);
        } else if (type == LocalDate.class) {
            value = "2026-05-31";
        } else if (type == Instant.class) {
            value = "2026-05-31T14:00";
        } else if (type == int.class || type == double.class) {
            value = "NUMBER";
        } else if (type == boolean.class) {
            value = "yes";
        }
        return Message.of("log.example.part", new Message.Name(name), new Message.Name(value));
    }
}
