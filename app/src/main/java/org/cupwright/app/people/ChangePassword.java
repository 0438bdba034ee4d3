package org.cupwright.app.people;

import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.message.Message.Count;

/**
 * Somebody's own password.
 *
 * @param session of whoever is signed in
 * @param passwords checks and keeps them
 * @param slowDown the one of the sign-in: wrong tries count there
 */
public record ChangePassword(Session session, Passwords passwords, SlowDown slowDown) {
    /**
     * The account afterwards; other sign-ins of it count no more.
     *
     * @param address from where
     * @throws org.cupwright.message.Problem if the old one is wrong, was tried too often, or the new one cannot be
     *     taken
     */
    public Account change(String old, String fresh, String address) {
        UUID id = session.person().id().orElseThrow(() -> PeopleProblems.of("noAccount", "person"));
        KeptPerson person = session.read(stores -> stores.people().find(id))
                .filter(KeptPerson::active)
                .orElseThrow(() -> PeopleProblems.of("notAnyMore", "person"));
        PasswordRule.check(fresh, person.name());
        slowDown.begin(person.name(), address).ifPresent(left -> {
            throw PeopleProblems.of("wait", "password", new Count(seconds(left)));
        });
        if (!passwords.matches(old, person.passwordHash())) {
            throw PeopleProblems.of("oldPassword", "password");
        }
        slowDown.succeeded(person.name(), address);
        return kept(person, passwords.hash(fresh));
    }

    private Account kept(KeptPerson seen, String hash) {
        return session.folder().write(stores -> {
            KeptPerson now = stores.people()
                    .find(seen.id())
                    .filter(seen::equals)
                    .orElseThrow(() -> PeopleProblems.of("notAnyMore", "person"));
            KeptPerson changed = now.by(hash, session.now());
            stores.people().replace(changed);
            new PeopleDesk(session)
                    .writeDown(stores, AuditKind.PASSWORD_CHANGED, changed, Optional.empty(), Optional.empty());
            return Account.of(changed);
        });
    }

    /** Full ones, no fewer than are left. */
    private static long seconds(Duration left) {
        return left.plusNanos(999_999_999).toSeconds();
    }
}
