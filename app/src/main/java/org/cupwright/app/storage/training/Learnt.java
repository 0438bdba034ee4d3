package org.cupwright.app.storage.training;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/** What a record of training says. */
public sealed interface Learnt {
    /**
     * Somebody did a step of the work, with whoever says so beside.
     *
     * @param day of the round
     * @param hole where
     */
    record Done(Skill skill, HowWell how, LocalDate day, Optional<String> hole) implements Learnt {}

    /**
     * Somebody practised.
     *
     * @param best the longest row of it
     * @param last the row at which it was left
     */
    record Practised(Exercise exercise, LocalDate day, int best, int last) implements Learnt {}

    /** Somebody can do it alone, from a day on. */
    record SignedOff(Skill skill, LocalDate day) implements Learnt {}

    /** What was signed off counts no more, from a day on. */
    record Withdrawn(Skill skill, LocalDate day, String reason) implements Learnt {}

    /** Somebody may sign others off, or may no more. */
    record Trainer(boolean may) implements Learnt {}

    /**
     * An earlier record was wrong.
     *
     * @param of the earlier one
     * @param day the day that was meant; empty: it should not have been written
     */
    record Corrected(UUID of, Optional<LocalDate> day, String reason) implements Learnt {}

    /** Whether it decides what somebody counts as, and is not practice alone. */
    default boolean decides() {
        return !(this instanceof Done || this instanceof Practised);
    }
}
