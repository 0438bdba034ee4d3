package org.cupwright.app.desk.history;

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
        return StateOut.bytes(this, (out, kept) -> {
            out.text(kept.what());
            out.big(kept.arrival().number());
            out.text(kept.arrival().id().toString());
            kind.write(out, kept.state());
        });
    }

    /** Empty when the bytes are damaged: the state is then made anew. */
    static <S> Optional<Checkpoint<S>> read(FoldedFacts<S> kind, byte[] bytes) {
        return StateIn.state(bytes, in -> {
            String what = in.text();
            Arrival arrival = new Arrival(in.big(), UUID.fromString(in.text()));
            return new Checkpoint<>(what, arrival, kind.read(in));
        });
    }
}
