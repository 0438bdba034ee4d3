package org.cupwright.app.visit;

import java.io.Serializable;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;

/**
 * Somebody who is signed in.
 *
 * @param id the account; none where the invented course is open to whoever sits there
 * @param name as it stands beside what that person says
 * @param role what the person may do
 * @param changedAt how the account stood when the person signed in
 * @param since when that was
 */
public record SignedIn(UUID id, String name, Role role, Instant changedAt, Instant since) implements Serializable {
    /** Whoever sits at the machine. */
    public static SignedIn whoever(String name) {
        return new SignedIn(null, name, Role.SUPERINTENDENT, Instant.EPOCH, Instant.EPOCH);
    }

    public Optional<UUID> account() {
        return Optional.ofNullable(id);
    }

    Person person() {
        return new Person(account(), name, role);
    }

    /** Logs are without names. */
    @Override
    public String toString() {
        return String.valueOf(id);
    }
}
