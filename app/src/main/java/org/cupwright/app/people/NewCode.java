package org.cupwright.app.people;

import java.security.SecureRandom;
import java.time.Instant;
import java.util.Optional;
import org.cupwright.app.people.Account.Roles;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.KeptCode;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.PeopleStore;

/**
 * A code that was just made: the only time that it is known here.
 *
 * @param code to be handed on
 * @param name for whom it is; empty: whoever has it chooses a name
 * @param role what that person becomes
 * @param until from when on it counts no more
 */
public record NewCode(String code, Optional<String> name, Role role, Instant until) {
    /** Makes one, keeps its hash, and ends those that were open for the same person. */
    static NewCode keep(PeopleStore people, SecureRandom random, Optional<String> name, Role role, Instant now) {
        people.openCodes(now).stream()
                .filter(open -> sameName(open, name))
                .forEach(open -> people.replace(ended(open, now)));
        NewCode made = new NewCode(OneTimeCode.make(random), name, role, now.plus(OneTimeCode.VALID));
        people.add(new KeptCode(
                OneTimeCode.hash(made.code()), name, Roles.name(role), now, made.until(), Optional.empty()));
        return made;
    }

    private static boolean sameName(KeptCode open, Optional<String> name) {
        return open.name().map(NameKey::of).equals(name.map(NameKey::of));
    }

    /** One that counts no more. */
    static KeptCode ended(KeptCode open, Instant now) {
        return new KeptCode(open.hash(), open.name(), open.role(), open.madeAt(), now, open.usedAt());
    }

    /** Without the code. */
    @Override
    public String toString() {
        return "NewCode[" + name.orElse("") + ", " + role + ", until " + until + "]";
    }
}
