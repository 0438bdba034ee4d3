package org.cupwright.app.desk.entry.typed;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Message;
import org.cupwright.policy.EnumNames;

/**
 * One part of what a kind of entry says.
 *
 * @param name its name, as in {@code holeDepthMillimetres}
 * @param type what it takes: a record's component without the Optional about it
 * @param optional whether it may be left out
 * @param component the record's component
 */
public record Part(String name, Class<?> type, boolean optional, RecordComponent component) {
    static Part of(RecordComponent component) {
        Class<?> raw = component.getType();
        String name = component.getName();
        if (raw == OptionalDouble.class) {
            return new Part(name, double.class, true, component);
        }
        if (raw == OptionalInt.class) {
            return new Part(name, int.class, true, component);
        }
        if (raw == Optional.class) {
            return new Part(name, inside(component.getGenericType()), true, component);
        }
        return new Part(name, raw, raw == List.class, component);
    }

    /** What an entry says of it; empty where it leaves it out. */
    public Optional<Object> of(Payload payload) {
        try {
            Object value = component.getAccessor().invoke(payload);
            if (value instanceof OptionalDouble number) {
                return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
            }
            if (value instanceof OptionalInt number) {
                return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
            }
            return value instanceof Optional<?> known ? known.map(Object.class::cast) : Optional.of(value);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("a record's component can be read", impossible);
        }
    }

    /** A value, or none, as the record takes it. */
    Object taken(Object value) {
        Class<?> raw = component.getType();
        if (raw == OptionalDouble.class) {
            return value == null ? OptionalDouble.empty() : OptionalDouble.of((double) value);
        }
        if (raw == OptionalInt.class) {
            return value == null ? OptionalInt.empty() : OptionalInt.of((int) value);
        }
        return raw == Optional.class ? Optional.ofNullable(value) : value;
    }

    /** What it can be, where that is a choice, as it is easiest to type. */
    public List<String> choices() {
        if (type == boolean.class) {
            return List.of("yes", "no");
        }
        return type.isEnum()
                ? Arrays.stream(type.getEnumConstants())
                        .map(choice -> LogProblems.typed(EnumNames.lowerCamel((Enum<?>) choice)))
                        .toList()
                : List.of();
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
