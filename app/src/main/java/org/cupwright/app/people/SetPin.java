package org.cupwright.app.people;

import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.KeptPin;
import org.cupwright.message.Message.Count;

/**
 * Somebody's own PIN, for phones that several share.
 *
 * @param session of whoever is signed in
 * @param passwords checks the password, and keeps the PIN as it keeps passwords
 * @param slowDown the one of the sign-in: wrong tries count there
 */
public record SetPin(Session session, Passwords passwords, SlowDown slowDown) {
    /** Whether the person has one. */
    public boolean isSet() {
        return session.person()
                .id()
                .filter(id ->
                        session.<Boolean>read(stores -> stores.phones().pin(id).isPresent()))
                .isPresent();
    }

    /**
     * Sets it, in place of the one before.
     *
     * @param password of the account
     * @param address from where
     * @throws org.cupwright.message.Problem if the password is wrong or was tried too often, or the PIN cannot be taken
     */
    public void set(String password, String pin, String address) {
        UUID id = session.person().id().orElseThrow(() -> PeopleProblems.of("noAccount", "person"));
        PinRule.check(pin);
        KeptPerson person = session.read(stores -> stores.people().find(id))
                .filter(KeptPerson::active)
                .orElseThrow(() -> PeopleProblems.of("notAnyMore", "person"));
        slowDown.begin(person.name(), address).ifPresent(left -> {
            throw PeopleProblems.of("wait", "password", new Count(seconds(left)));
        });
        if (!passwords.matches(password, person.passwordHash())) {
            throw PeopleProblems.of("pinPassword", "password");
        }
        slowDown.succeeded(person.name(), address);
        keep(person, passwords.hash(pin));
    }

    private void keep(KeptPerson seen, String hash) {
        session.folder().write(stores -> {
            KeptPerson person = stores.people()
                    .find(seen.id())
                    .filter(seen::equals)
                    .orElseThrow(() -> PeopleProblems.of("notAnyMore", "person"));
            stores.phones().set(new KeptPin(person.id(), hash, session.now()));
            new PeopleDesk(session).writeDown(stores, AuditKind.PIN_SET, person, Optional.empty(), Optional.empty());
            return person;
        });
    }

    /** Full ones, no fewer than are left. */
    private static long seconds(Duration left) {
        return left.plusNanos(999_999_999).toSeconds();
    }
}
