package org.cupwright.app.storage.training;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * Something that was learnt, practised or decided about somebody's training.
 *
 * @param id its own, made where it was written down
 * @param at when it was said, by the clock of where it was
 * @param recordedAt when it came into the data folder
 * @param person whom it is about
 * @param by who says so
 * @param course where; empty where no course was meant
 */
public record TrainingRecord(
        UUID id, Instant at, Instant recordedAt, Somebody person, Somebody by, String course, Learnt learnt) {
    /**
     * Somebody, as known at the time.
     *
     * @param id of the account; empty where there is none
     * @param name as it stands beside what that person does
     */
    public record Somebody(Optional<UUID> id, String name) {}

    public TrainingRecord receivedAt(Instant when) {
        return new TrainingRecord(id, at, when, person, by, course, learnt);
    }
}
