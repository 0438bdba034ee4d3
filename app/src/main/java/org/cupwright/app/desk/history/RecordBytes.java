package org.cupwright.app.desk.history;

import static java.util.Map.entry;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.locationtech.jts.io.WKBWriter;

/**
 * Records as bytes, component after component with all that they are made of, within gzip, whose check sum finds
 * damage. They are read back only by the build that wrote them: no names, no shapes, nothing that would have to be
 * learnt first.
 */
public final class RecordBytes<R extends Record> {
    private static final int BUFFER = 1 << 16;

    private static final Map<Type, BytePart<?>> PLAIN = Map.ofEntries(
            entry(boolean.class, new BytePart<>(DataOutputStream::writeBoolean, DataInputStream::readBoolean)),
            entry(int.class, new BytePart<>(DataOutputStream::writeInt, DataInputStream::readInt)),
            entry(Integer.class, new BytePart<>(DataOutputStream::writeInt, DataInputStream::readInt)),
            entry(long.class, new BytePart<>(DataOutputStream::writeLong, DataInputStream::readLong)),
            entry(double.class, new BytePart<>(DataOutputStream::writeDouble, DataInputStream::readDouble)),
            entry(String.class, new BytePart<String>(DataOutputStream::writeUTF, in -> in.readUTF())),
            entry(
                    ZoneId.class,
                    new BytePart<ZoneId>((out, zone) -> out.writeUTF(zone.getId()), in -> ZoneId.of(in.readUTF()))),
            entry(
                    LocalDate.class,
                    new BytePart<LocalDate>(
                            (out, day) -> out.writeInt((int) day.toEpochDay()),
                            in -> LocalDate.ofEpochDay(in.readInt()))),
            entry(
                    Instant.class,
                    new BytePart<>(RecordBytes::moment, in -> Instant.ofEpochSecond(in.readLong(), in.readInt()))),
            entry(UUID.class, new BytePart<>(RecordBytes::id, in -> new UUID(in.readLong(), in.readLong()))),
            entry(OptionalDouble.class, new BytePart<>(RecordBytes::number, RecordBytes::number)),
            entry(Geometry.class, new BytePart<>(RecordBytes::geometry, RecordBytes::geometry)));

    private final BytePart<R> whole;

    /** @throws IllegalArgumentException when the record is made of something that has no bytes here */
    public RecordBytes(Class<R> type) {
        this.whole = BytePart.record(type);
    }

    public byte[] write(R state) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(bytes, BUFFER))) {
            whole.write(out, state);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return bytes.toByteArray();
    }

    /** Empty when the bytes are damaged: they are read to the end before anything is taken from them. */
    public Optional<R> read(byte[] bytes) {
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes), BUFFER)) {
            byte[] sound = in.readAllBytes();
            return Optional.of(whole.read(new DataInputStream(new ByteArrayInputStream(sound))));
        } catch (IOException | IllegalArgumentException | DateTimeException damaged) {
            return Optional.empty();
        }
    }

    /** How values of a type are written. */
    static BytePart<?> of(Type type) {
        if (type instanceof ParameterizedType made) {
            List<? extends BytePart<?>> of = List.of(made.getActualTypeArguments()).stream()
                    .map(RecordBytes::of)
                    .toList();
            if (made.getRawType() == Optional.class) {
                return of.get(0).optional();
            }
            if (made.getRawType() == List.class) {
                return of.get(0).list();
            }
            if (made.getRawType() == Map.class) {
                return BytePart.map(of.get(0), of.get(1));
            }
        }
        if (type instanceof Class<?> plain && plain.isRecord()) {
            return BytePart.record(plain.asSubclass(Record.class));
        }
        if (type instanceof Class<?> plain && plain.isEnum()) {
            return BytePart.choice(plain);
        }
        return Optional.ofNullable(PLAIN.get(type))
                .orElseThrow(() -> new IllegalArgumentException("nobody said how to write " + type));
    }

    private static void moment(DataOutputStream out, Instant moment) throws IOException {
        out.writeLong(moment.getEpochSecond());
        out.writeInt(moment.getNano());
    }

    private static void id(DataOutputStream out, UUID id) throws IOException {
        out.writeLong(id.getMostSignificantBits());
        out.writeLong(id.getLeastSignificantBits());
    }

    private static void number(DataOutputStream out, OptionalDouble number) throws IOException {
        out.writeBoolean(number.isPresent());
        if (number.isPresent()) {
            out.writeDouble(number.getAsDouble());
        }
    }

    private static OptionalDouble number(DataInputStream in) throws IOException {
        return in.readBoolean() ? OptionalDouble.of(in.readDouble()) : OptionalDouble.empty();
    }

    /** To the bit. */
    private static void geometry(DataOutputStream out, Geometry geometry) throws IOException {
        byte[] bytes = new WKBWriter().write(geometry);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static Geometry geometry(DataInputStream in) throws IOException {
        byte[] bytes = new byte[BytePart.size(in)];
        in.readFully(bytes);
        try {
            return new WKBReader().read(bytes);
        } catch (ParseException damaged) {
            throw new IOException("not a geometry", damaged);
        }
    }
}
