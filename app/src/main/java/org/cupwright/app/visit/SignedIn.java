package org.cupwright.app.visit;

import jakarta.servlet.http.HttpServletRequest;
import java.io.Serializable;
import java.security.Principal;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.springframework.security.core.Authentication;

/**
 * Somebody who is signed in.
 *
 * @param id the account; none where the invented course is open to whoever sits there
 * @param name as it stands beside what that person says
 * @param role what the person may do
 * @param changedAt how the account stood when the person signed in
 * @param since when that was
 * @param by how
 * @param phone on which phone that the office knows again; null: on none
 */
public record SignedIn(UUID id, String name, Role role, Instant changedAt, Instant since, By by, UUID phone)
        implements Serializable {
    /** How somebody came in. */
    public enum By {
        PASSWORD,
        /** By a phone on which the person stays signed in. */
        PHONE,
        /** By a PIN on a shared phone: to the round, and nowhere else. */
        PIN
    }

    /** Whoever sits at the machine. */
    public static SignedIn whoever(String name) {
        return new SignedIn(null, name, Role.SUPERINTENDENT, Instant.EPOCH, Instant.EPOCH, By.PASSWORD, null);
    }

    /** Who asks; empty where nobody is signed in. */
    public static Optional<SignedIn> of(HttpServletRequest request) {
        Principal principal = request.getUserPrincipal();
        return principal instanceof Authentication known && known.getPrincipal() instanceof SignedIn person
                ? Optional.of(person)
                : Optional.empty();
    }

    public Optional<UUID> account() {
        return Optional.ofNullable(id);
    }

    /** The phone that the office knows again. */
    public Optional<UUID> knownPhone() {
        return Optional.ofNullable(phone);
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
