package org.cupwright.app.visit.access;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Role;

/**
 * One address, and who may ask for it.
 *
 * @param method as in {@code GET}
 * @param pattern the address; {@code {name}} stands for one part of it, <code>**</code> for all that follows
 * @param right what whoever asks must be allowed to do; empty: nothing
 * @param open whether one need not be signed in
 */
public record Route(String method, String pattern, Optional<Right> right, boolean open) {
    private static final String SHARE = "/round/share";

    static Route open(String method, String pattern) {
        return new Route(method, pattern, Optional.empty(), true);
    }

    static Route signedIn(String method, String pattern) {
        return new Route(method, pattern, Optional.empty(), false);
    }

    static Route with(Right right, String method, String pattern) {
        return new Route(method, pattern, Optional.of(right), false);
    }

    /** Whether it is of the round: there somebody may go who came in by a PIN on a shared phone, and nowhere else. */
    public boolean byPin() {
        return pattern.startsWith("/round") && !pattern.equals(SHARE) || pattern.equals("/sign-out");
    }

    /** The roles that may ask for it, of those who are signed in. */
    public Set<Role> roles() {
        return EnumSet.allOf(Role.class).stream()
                .filter(role -> right.isEmpty() || role.may(right.get()))
                .collect(Collectors.toUnmodifiableSet());
    }
}
