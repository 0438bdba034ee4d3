package org.cupwright.app.storage;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.message.Message.Argument;

/**
 * A line of the audit trail.
 *
 * @param at when
 * @param by who did it
 * @param what what was done
 * @param about to what; none of what it says is a sentence
 * @param before what it was before; empty where it was nothing
 * @param after what it became; empty where it is nothing any more
 */
public record AuditLine(
        Instant at, Who by, AuditKind what, About about, Optional<Argument> before, Optional<Argument> after) {
    /**
     * Somebody, as known at the time.
     *
     * @param id of the account; empty where there was none, as at the command line
     * @param name as it was then
     */
    public record Who(Optional<UUID> id, String name) {}

    /**
     * What was changed.
     *
     * @param course its course; empty where it is of none
     * @param thing the setting's key, the plan's day, the person's name
     * @param person the person's account, where it is about somebody who has one
     */
    public record About(String course, Argument thing, Optional<UUID> person) {
        public About(String course, Argument thing) {
            this(course, thing, Optional.empty());
        }
    }
}
