package org.cupwright.app.people;

import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.people.Account.Roles;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message.Name;

/**
 * Replaces somebody's name by a neutral one wherever it stands as a name, and lets the person sign in no more. What was
 * written down stays; what people wrote in words of their own is not looked through.
 */
public record Erase(Session session) {
    /** What the neutral name begins with; the rest tells one erased person from another. */
    private static final String NEUTRAL = "erased-";

    private static final int DIGITS = 8;

    /**
     * What was done.
     *
     * @param account afterwards, by its neutral name
     * @param rows in how many places of what is kept the name was replaced
     */
    public record Erased(Account account, int rows) {}

    /** @throws org.cupwright.message.Problem if nobody has the name, or no superintendent would be left */
    public Erased person(String name) {
        PeopleDesk desk = new PeopleDesk(session);
        Erased erased = desk.decide(stores -> {
            KeptPerson left = Deactivate.left(desk, stores, whoever(stores, name));
            String neutral = NEUTRAL + left.id().toString().substring(0, DIGITS);
            int rows = stores.people().erase(left, neutral);
            KeptPerson after = stores.people().find(left.id()).orElseThrow();
            desk.writeDown(
                    stores, AuditKind.PERSON_ERASED, after, Optional.empty(), Optional.of(new Name(after.name())));
            return new Erased(Account.of(after), rows);
        });
        session.folder().cache().clear(); // what was worked out from entries has their names
        return erased;
    }

    /** Whoever learns may have no account: for the name an account is made by which nobody signs in. */
    private KeptPerson whoever(Stores stores, String name) {
        Optional<KeptPerson> account = stores.people().named(name);
        Optional<String> learner = account.isPresent() ? Optional.empty() : learner(stores, name);
        learner.ifPresent(known -> stores.people()
                .add(new KeptPerson(
                        session.ids().get(), known, Roles.name(Role.READER), false, "", session.now(), session.now())));
        return PeopleDesk.named(stores, name);
    }

    private static Optional<String> learner(Stores stores, String name) {
        return stores.training().all().stream()
                .flatMap(record -> Stream.of(record.person().name(), record.by().name()))
                .filter(one -> NameKey.of(one).equals(NameKey.of(name)))
                .findFirst();
    }
}
