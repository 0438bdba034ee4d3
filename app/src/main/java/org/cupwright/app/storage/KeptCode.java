package org.cupwright.app.storage;

import java.time.Instant;
import java.util.Optional;

/**
 * A one-time code by which somebody gets an account or another password.
 *
 * @param hash of the code, which itself is not kept
 * @param name for whom it is; empty: whoever has it chooses a name
 * @param role what that person becomes, in lower camel case
 * @param madeAt when it was made
 * @param until from when on it counts no more
 * @param usedAt when it was used; empty until then
 */
public record KeptCode(
        String hash, Optional<String> name, String role, Instant madeAt, Instant until, Optional<Instant> usedAt) {
    public boolean isOpen(Instant now) {
        return usedAt.isEmpty() && now.isBefore(until);
    }

    public KeptCode used(Instant now) {
        return new KeptCode(hash, name, role, madeAt, until, Optional.of(now));
    }

    /** Without the hash. */
    @Override
    public String toString() {
        return "KeptCode[" + name.orElse("") + ", " + role + ", until " + until + ", used " + usedAt + "]";
    }
}
