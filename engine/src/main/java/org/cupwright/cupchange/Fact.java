package org.cupwright.cupchange;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.message.Message.Name;

/**
 * One entry of the logbook: something that was done or seen. A fact never changes; a later {@link Correction} says what
 * it should have been.
 *
 * @param id made where the fact was recorded; the same id twice is the same fact
 * @param version version of the payload's shape, 1 or more
 * @param happenedAt when it was done or seen, as the person says
 * @param recordedAtDevice when it was written down, by the device's clock
 * @param recordedAtServer when it was received, by the server's clock; empty until then
 * @param person who recorded it
 * @param course the course's id
 * @param hole the hole whose green it is about; empty for the whole course
 * @param payload what it says
 */
public record Fact(
        UUID id,
        int version,
        Instant happenedAt,
        Instant recordedAtDevice,
        Optional<Instant> recordedAtServer,
        String person,
        String course,
        Optional<String> hole,
        Payload payload) {
    /** The version in which new facts are written. */
    public static final int CURRENT_VERSION = 1;

    /**
     * The order in which facts count: when they happened, then by id, so that it never depends on when they arrived.
     */
    public static final Comparator<Fact> ORDER = Fact::order;

    public Fact {
        if (version < 1) {
            throw new ImpossibleFact("version", Checks.number(version));
        }
        Checks.word("person", person);
        Checks.word("course", course);
        if (hole.isEmpty() && payload.needsHole()) {
            throw new ImpossibleFact("noHole", new Name(payload.kind()));
        }
    }

    /** In one method, not put together of comparators: a long logbook is sorted by the million. */
    private static int order(Fact one, Fact other) {
        int byTime = one.happenedAt.compareTo(other.happenedAt);
        return byTime == 0 ? one.id.compareTo(other.id) : byTime;
    }

    /** This fact as it stands after the server has received it. */
    public Fact receivedAt(Instant serverTime) {
        return new Fact(
                id, version, happenedAt, recordedAtDevice, Optional.of(serverTime), person, course, hole, payload);
    }

    /** What this fact says once a correction is taken in: the hole and payload change, who and when stay. */
    Fact corrected(Optional<String> otherHole, int otherVersion, Payload replacement) {
        return new Fact(
                id,
                otherVersion,
                happenedAt,
                recordedAtDevice,
                recordedAtServer,
                person,
                course,
                otherHole.isPresent() ? otherHole : hole,
                replacement);
    }
}
