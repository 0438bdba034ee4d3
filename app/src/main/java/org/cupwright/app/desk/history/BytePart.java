package org.cupwright.app.desk.history;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How values of one type are written as bytes, and read back in the same order. */
record BytePart<T>(Writing<T> writing, Reading<T> reading) {
    /** Writes one value. */
    @FunctionalInterface
    interface Writing<T> {
        void write(DataOutputStream out, T value) throws IOException;
    }

    /** Reads one value. */
    @FunctionalInterface
    interface Reading<T> {
        T read(DataInputStream in) throws IOException;
    }

    @SuppressWarnings("unchecked") // each part is asked for the values of the type that it was made for
    void write(DataOutputStream out, Object value) throws IOException {
        writing.write(out, (T) value);
    }

    T read(DataInputStream in) throws IOException {
        return reading.read(in);
    }

    BytePart<Optional<T>> optional() {
        return new BytePart<>(
                (out, value) -> {
                    out.writeBoolean(value.isPresent());
                    if (value.isPresent()) {
                        write(out, value.get());
                    }
                },
                in -> in.readBoolean() ? Optional.of(read(in)) : Optional.empty());
    }

    BytePart<List<T>> list() {
        return new BytePart<>(
                (out, values) -> {
                    out.writeInt(values.size());
                    for (T value : values) {
                        write(out, value);
                    }
                },
                in -> {
                    List<T> values = new ArrayList<>();
                    for (int left = size(in); left > 0; left--) {
                        values.add(read(in));
                    }
                    return values;
                });
    }

    static <K, V> BytePart<Map<K, V>> map(BytePart<K> key, BytePart<V> value) {
        return new BytePart<>(
                (out, values) -> {
                    out.writeInt(values.size());
                    for (Map.Entry<K, V> entry : values.entrySet()) {
                        key.write(out, entry.getKey());
                        value.write(out, entry.getValue());
                    }
                },
                in -> {
                    Map<K, V> values = new HashMap<>();
                    for (int left = size(in); left > 0; left--) {
                        values.put(key.read(in), value.read(in));
                    }
                    return values;
                });
    }

    static BytePart<Object> choice(Class<?> choices) {
        Object[] all = choices.getEnumConstants();
        return new BytePart<>((out, value) -> out.writeByte(((Enum<?>) value).ordinal()), in -> {
            int ordinal = in.readUnsignedByte();
            if (ordinal >= all.length) {
                throw new IOException("no choice " + ordinal + " of " + choices);
            }
            return all[ordinal];
        });
    }

    static <R extends Record> BytePart<R> record(Class<R> type) {
        RecordComponent[] components = type.getRecordComponents();
        List<? extends BytePart<?>> parts = Arrays.stream(components)
                .map(component -> RecordBytes.of(component.getGenericType()))
                .toList();
        List<Method> accessors =
                Arrays.stream(components).map(RecordComponent::getAccessor).toList();
        Constructor<R> maker = maker(type, components);
        return new BytePart<>(
                (out, value) -> {
                    for (int i = 0; i < components.length; i++) {
                        parts.get(i).write(out, called(accessors.get(i), value));
                    }
                },
                in -> {
                    Object[] values = new Object[components.length];
                    for (int i = 0; i < components.length; i++) {
                        values[i] = parts.get(i).read(in);
                    }
                    return made(maker, values);
                });
    }

    /** No more values than there are bytes. */
    static int size(DataInputStream in) throws IOException {
        int size = in.readInt();
        if (size < 0 || size > in.available()) {
            throw new EOFException("a size of " + size + " where " + in.available() + " bytes are left");
        }
        return size;
    }

    private static <R> Constructor<R> maker(Class<R> type, RecordComponent[] components) {
        try {
            return type.getConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class[]::new));
        } catch (NoSuchMethodException notPublic) {
            throw new IllegalArgumentException(type + " is not public", notPublic);
        }
    }

    private static Object called(Method accessor, Object value) {
        try {
            return accessor.invoke(value);
        } catch (ReflectiveOperationException refused) {
            throw new IllegalStateException("a record keeps " + accessor + " to itself", refused);
        }
    }

    /** A record that refuses such values: the bytes are damaged. */
    private static <R> R made(Constructor<R> maker, Object... values) throws IOException {
        try {
            return maker.newInstance(values);
        } catch (InvocationTargetException damaged) {
            throw new IOException("no such " + maker.getDeclaringClass().getSimpleName(), damaged);
        } catch (ReflectiveOperationException refused) {
            throw new IllegalStateException("a record keeps " + maker + " to itself", refused);
        }
    }
}
