package org.cupwright.app.storage;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A phone that the office knows again.
 *
 * @param id stays whatever else changes
 * @param account of whoever is signed in on it; empty where several share it
 * @param hash of what it shows the next time; what it shows is not kept
 * @param before of what it showed before that; empty where that was nothing
 * @param madeAt when it was made known
 * @param seenAt when it last showed what it has
 * @param until from when on it counts no more
 */
public record KeptPhone(
        UUID id, Optional<UUID> account, String hash, String before, Instant madeAt, Instant seenAt, Instant until) {
    public boolean isShared() {
        return account.isEmpty();
    }

    public boolean counts(Instant now) {
        return now.isBefore(until);
    }

    /** The same, which shows something else from now on. */
    public KeptPhone showing(String nextHash, String lastHash, Instant now) {
        return new KeptPhone(id, account, nextHash, lastHash, madeAt, now, until);
    }

    /** Without the hashes. */
    @Override
    public String toString() {
        return "KeptPhone[" + id + ", " + account + ", until " + until + "]";
    }
}
