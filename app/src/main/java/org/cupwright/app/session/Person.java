package org.cupwright.app.session;

import java.util.Optional;
import java.util.UUID;

/**
 * Somebody who asks or says something.
 *
 * @param id of the account by which the person signed in; empty where there is none, as at the command line
 * @param name as it stands beside what that person says; empty where nobody knows
 * @param role what the person may do
 */
public record Person(Optional<UUID> id, String name, Role role) {
    /** Somebody without an account. */
    public Person(String name, Role role) {
        this(Optional.empty(), name, role);
    }
}
