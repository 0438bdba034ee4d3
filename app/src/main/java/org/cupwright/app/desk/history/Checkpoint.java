package org.cupwright.app.desk.history;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.FactStore.Arrival;
import org.cupwright.app.storage.Sha256;

/**
 * A state that was kept.
 *
 * @param what what it is a state of: its kind, the course, the course's zone, and the moment before which everything is
 *     in it
 * @param arrival how far the logbook had come
 * @param state the state
 */
record Checkpoint<S>(String what, Arrival arrival, S state) {
    /** What a state of a kind is, of a course before a moment. */
    static String what(FoldedFacts<?> kind, String courseId, ZoneId zone, Instant before) {
        return kind.name() + " " + courseId + " " + zone + " " + before;
    }

    /** Under which name it is kept, whatever is in it. */
    static String name(String what) {
        return HexFormat.of().formatHex(Sha256.digest().digest(what.getBytes(StandardCharsets.UTF_8)));
    }

    byte[] write(FoldedFacts<S> kind) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeUTF(what);
            out.writeLong(arrival.number());
            out.writeUTF(arrival.id().toString());
            byte[] body = kind.write(state);
            out.writeInt(body.length);
            out.write(body);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return bytes.toByteArray();
    }

    /** Empty when the bytes are damaged: the state is then made anew. */
    static <S> Optional<Checkpoint<S>> read(FoldedFacts<S> kind, byte[] bytes) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            String what = in.readUTF();
            Arrival arrival = new Arrival(in.readLong(), UUID.fromString(in.readUTF()));
            byte[] body = new byte[Math.min(in.readInt(), bytes.length)];
            in.readFully(body);
            return kind.read(body).map(state -> new Checkpoint<>(what, arrival, state));
        } catch (IOException | IllegalArgumentException | NegativeArraySizeException damaged) {
            return Optional.empty();
        }
    }
}
