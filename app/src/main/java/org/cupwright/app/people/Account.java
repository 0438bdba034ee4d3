package org.cupwright.app.people;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.policy.EnumNames;

/**
 * Somebody's account, without what the password is checked against.
 *
 * @param active whether the person may sign in
 * @param madeAt when it was made
 * @param changedAt when name, role, password or whether the person may sign in last changed: what was opened by an
 *     earlier sign-in counts no more
 */
public record Account(UUID id, String name, Role role, boolean active, Instant madeAt, Instant changedAt) {
    static Account of(KeptPerson kept) {
        return new Account(
                kept.id(), kept.name(), Roles.of(kept.role()), kept.active(), kept.madeAt(), kept.changedAt());
    }

    /** Who asks, in a session of this account. */
    public Person person() {
        return new Person(Optional.of(id), name, role);
    }

    /** Roles as they are kept. */
    static final class Roles {
        private Roles() {}

        static Role of(String kept) {
            return EnumNames.find(Role.class, kept).orElseThrow();
        }

        static String name(Role role) {
            return EnumNames.lowerCamel(role);
        }
    }
}
