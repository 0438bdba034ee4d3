package org.cupwright.app.people;

import java.util.Optional;
import org.cupwright.app.people.Account.Roles;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.KeptPerson;

/** Makes somebody something else; whoever is signed in has to sign in anew. */
public record ChangeRole(Session session) {
    /**
     * The account afterwards.
     *
     * @throws org.cupwright.message.Problem if nobody has the name, or no superintendent would be left
     */
    public Account of(String name, Role role) {
        PeopleDesk desk = new PeopleDesk(session);
        return desk.decide(stores -> {
            KeptPerson person = PeopleDesk.named(stores, name);
            Role before = Roles.of(person.role());
            if (before == role) {
                return Account.of(person);
            }
            Superintendents.keepOne(stores.people(), person);
            KeptPerson changed = person.as(Roles.name(role), session.now());
            stores.people().replace(changed);
            desk.writeDown(
                    stores,
                    AuditKind.ROLE_CHANGED,
                    changed,
                    Optional.of(RoleWord.of(before)),
                    Optional.of(RoleWord.of(role)));
            return Account.of(changed);
        });
    }
}
