package org.cupwright.app.storage;

import java.time.Instant;
import java.util.UUID;

/**
 * Somebody who may sign in.
 *
 * @param id stays whatever else changes
 * @param name as it stands beside entries; nobody else has it, with whatever capitals
 * @param role what the person is on the course, in lower camel case
 * @param active whether the person may sign in
 * @param passwordHash what the password is checked against; never shown
 * @param madeAt when the account was made
 * @param changedAt when name, role, password or whether the person may sign in last became another
 */
public record KeptPerson(
        UUID id, String name, String role, boolean active, String passwordHash, Instant madeAt, Instant changedAt) {
    public KeptPerson as(String otherRole, Instant now) {
        return new KeptPerson(id, name, otherRole, active, passwordHash, madeAt, now);
    }

    public KeptPerson called(String otherName) {
        return new KeptPerson(id, otherName, role, active, passwordHash, madeAt, changedAt);
    }

    /** May not sign in any more; the password is forgotten. */
    public KeptPerson left(Instant now) {
        return new KeptPerson(id, name, role, false, "", madeAt, now);
    }

    /** May sign in, by another password. */
    public KeptPerson by(String otherHash, Instant now) {
        return new KeptPerson(id, name, role, true, otherHash, madeAt, now);
    }

    /** Without the hash. */
    @Override
    public String toString() {
        return "KeptPerson[" + id + ", " + name + ", " + role + ", active=" + active + "]";
    }
}
