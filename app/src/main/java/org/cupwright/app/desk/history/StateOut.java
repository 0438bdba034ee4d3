package org.cupwright.app.desk.history;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.GZIPOutputStream;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.WKBWriter;

/**
 * Writes a state's values one after the other, within gzip, whose check sum finds damage. They are read back in the
 * same order by {@link StateIn}, and only by the build that wrote them: no names, no shapes, nothing that would have to
 * be learnt first.
 */
public final class StateOut {
    private static final int BUFFER = 1 << 16;

    private final DataOutputStream out;

    private StateOut(DataOutputStream out) {
        this.out = out;
    }

    /** Writes one value by way of the given output. */
    @FunctionalInterface
    public interface Part<T> {
        void write(StateOut out, T value) throws IOException;
    }

    public static <T> byte[] bytes(T state, Part<T> part) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(bytes, BUFFER))) {
            part.write(new StateOut(out), state);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return bytes.toByteArray();
    }

    public void flag(boolean value) throws IOException {
        out.writeBoolean(value);
    }

    public void whole(int value) throws IOException {
        out.writeInt(value);
    }

    public void big(long value) throws IOException {
        out.writeLong(value);
    }

    public void number(double value) throws IOException {
        out.writeDouble(value);
    }

    public void number(OptionalDouble value) throws IOException {
        flag(value.isPresent());
        if (value.isPresent()) {
            number(value.getAsDouble());
        }
    }

    public void text(String value) throws IOException {
        out.writeUTF(value);
    }

    public void choice(Enum<?> value) throws IOException {
        text(value.name());
    }

    public void day(LocalDate value) throws IOException {
        out.writeInt((int) value.toEpochDay());
    }

    public void moment(Instant value) throws IOException {
        out.writeLong(value.getEpochSecond());
        out.writeInt(value.getNano());
    }

    public void place(MapPoint value) throws IOException {
        number(value.east());
        number(value.north());
    }

    /** To the bit. */
    public void geometry(Geometry value) throws IOException {
        byte[] bytes = new WKBWriter().write(value);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    public <T> void optional(Optional<T> value, Part<T> part) throws IOException {
        flag(value.isPresent());
        if (value.isPresent()) {
            part.write(this, value.get());
        }
    }

    public <T> void each(Collection<T> values, Part<T> part) throws IOException {
        out.writeInt(values.size());
        for (T value : values) {
            part.write(this, value);
        }
    }

    public <K, V> void map(Map<K, V> values, Part<K> key, Part<V> value) throws IOException {
        each(values.entrySet(), (to, entry) -> {
            key.write(to, entry.getKey());
            value.write(to, entry.getValue());
        });
    }
}
