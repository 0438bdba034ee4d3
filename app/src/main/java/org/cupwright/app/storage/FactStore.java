package org.cupwright.app.storage;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.cupwright.cupchange.Fact;

/**
 * Everything that was ever recorded. Nothing is changed or taken away: what was wrong is corrected by a further fact.
 */
public interface FactStore {
    /** Before anything that a logbook can hold. */
    Instant LONG_AGO = Instant.parse("0001-01-01T00:00:00Z");

    /** After anything that a logbook can hold. */
    Instant LONG_HENCE = Instant.parse("9999-12-31T00:00:00Z");

    /** What became of a fact that was handed in. */
    enum Kept {
        /** It is new and now kept. */
        NEW,
        /** It had arrived before; nothing was added. */
        KNOWN,
        /** Its id had arrived before with other contents, which stay; this one was not kept. */
        DIFFERENT
    }

    /**
     * How far the logbook had come at some time: the fact that was received last.
     *
     * @param number its place in the order of arrival
     * @param id its id
     */
    record Arrival(long number, UUID id) {}

    Kept add(Fact fact);

    /** Rows that were to be read and are damaged: lists of facts go on without them. */
    Set<DamagedRow> leftOut();

    Optional<Fact> find(UUID id);

    /** Ids of a course's facts, corrections not among them, that begin in a way; in their order. */
    List<UUID> ids(String courseId, String start);

    /** All facts of a course as they were recorded, corrections among them, in the order in which they happened. */
    List<Fact> all(String courseId);

    /**
     * Those that happened from one moment on and before another, and every correction of one of them, whenever that was
     * said; as they were recorded.
     */
    List<Fact> between(String courseId, Instant from, Instant before);

    /**
     * Those of some kinds that happened from one moment on and before another, those of other kinds that were ever
     * corrected into one of them, and all corrections of any of these: enough to know which facts of these kinds count.
     */
    List<Fact> ofKinds(String courseId, Set<String> kinds, Instant from, Instant before);

    /** When the earliest fact of a course happened. */
    Optional<Instant> first(String courseId);

    /** Those of a course that were received after the one with that number in the order of arrival, in that order. */
    List<Fact> receivedAfter(String courseId, long number);

    /** How far the logbook of all courses has come; empty while it is empty. */
    Optional<Arrival> lastArrival();

    /**
     * Whether what happened before a moment counts as it did when the logbook had come so far: it had come so far, and
     * since then nothing has arrived that happened before the moment, or corrects such a fact.
     */
    boolean isUnchangedBefore(String courseId, Instant moment, Arrival since);
}
