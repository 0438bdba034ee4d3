package org.cupwright.app.desk.history;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.GZIPInputStream;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;

/** Reads the values of a state in the order in which {@link StateOut} wrote them. */
public final class StateIn {
    private static final int BUFFER = 1 << 16;

    private final DataInputStream in;

    private StateIn(DataInputStream in) {
        this.in = in;
    }

    /** Reads one value by way of the given input. */
    @FunctionalInterface
    public interface Part<T> {
        T read(StateIn in) throws IOException;
    }

    /** The state; empty when the bytes are damaged, and the state is then made anew. */
    public static <T> Optional<T> state(byte[] bytes, Part<T> part) {
        try {
            return Optional.of(part.read(new StateIn(new DataInputStream(new ByteArrayInputStream(whole(bytes))))));
        } catch (IOException | IllegalArgumentException | DateTimeException damaged) {
            return Optional.empty();
        }
    }

    /** To the end, so that the check sum is looked at before anything is taken from them. */
    private static byte[] whole(byte[] bytes) throws IOException {
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes), BUFFER)) {
            return in.readAllBytes();
        }
    }

    public boolean flag() throws IOException {
        return in.readBoolean();
    }

    public int whole() throws IOException {
        return in.readInt();
    }

    public long big() throws IOException {
        return in.readLong();
    }

    public double number() throws IOException {
        return in.readDouble();
    }

    public OptionalDouble optionalNumber() throws IOException {
        return flag() ? OptionalDouble.of(number()) : OptionalDouble.empty();
    }

    public String text() throws IOException {
        return in.readUTF();
    }

    public <E extends Enum<E>> E choice(Class<E> choices) throws IOException {
        return Enum.valueOf(choices, text());
    }

    public LocalDate day() throws IOException {
        return LocalDate.ofEpochDay(in.readInt());
    }

    public Instant moment() throws IOException {
        return Instant.ofEpochSecond(in.readLong(), in.readInt());
    }

    public MapPoint place() throws IOException {
        return new MapPoint(number(), number());
    }

    public Geometry geometry() throws IOException {
        byte[] bytes = new byte[size()];
        in.readFully(bytes);
        try {
            return new WKBReader().read(bytes);
        } catch (ParseException damaged) {
            throw new IOException("not a geometry", damaged);
        }
    }

    public <T> Optional<T> optional(Part<T> part) throws IOException {
        return flag() ? Optional.of(part.read(this)) : Optional.empty();
    }

    public <T> List<T> each(Part<T> part) throws IOException {
        int size = size();
        List<T> values = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            values.add(part.read(this));
        }
        return values;
    }

    public <K, V> Map<K, V> map(Part<K> key, Part<V> value) throws IOException {
        Map<K, V> values = new HashMap<>();
        for (int left = size(); left > 0; left--) {
            values.put(key.read(this), value.read(this));
        }
        return values;
    }

    /** No more values than there are bytes. */
    private int size() throws IOException {
        int size = in.readInt();
        if (size < 0 || size > in.available()) {
            throw new EOFException("a size of " + size + " where " + in.available() + " bytes are left");
        }
        return size;
    }
}
