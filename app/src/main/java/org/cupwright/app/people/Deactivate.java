package org.cupwright.app.people;

import java.util.Optional;
import org.cupwright.app.people.Account.Roles;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.Stores;

/** Lets somebody sign in no more; the name stays beside what the person wrote down. */
public record Deactivate(Session session) {
    /**
     * The account afterwards.
     *
     * @throws org.cupwright.message.Problem if nobody has the name, or no superintendent would be left
     */
    public Account person(String name) {
        PeopleDesk desk = new PeopleDesk(session);
        return desk.decide(stores -> Account.of(left(desk, stores, PeopleDesk.named(stores, name))));
    }

    /** Whoever left before is left as is. */
    static KeptPerson left(PeopleDesk desk, Stores stores, KeptPerson person) {
        stores.people().openCodes(desk.session().now()).stream()
                .filter(code -> code.name().map(NameKey::of).equals(Optional.of(NameKey.of(person.name()))))
                .forEach(code -> stores.people()
                        .replace(NewCode.ended(code, desk.session().now())));
        if (!person.active()) {
            return person;
        }
        Superintendents.keepOne(stores.people(), person);
        KeptPerson left = person.left(desk.session().now());
        stores.people().replace(left);
        desk.writeDown(
                stores,
                AuditKind.PERSON_REMOVED,
                left,
                Optional.of(RoleWord.of(Roles.of(person.role()))),
                Optional.empty());
        return left;
    }
}
