package org.cupwright.app.people;

import java.security.SecureRandom;
import java.util.Optional;
import org.cupwright.app.people.Account.Roles;
import org.cupwright.app.session.PersonName;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.message.Message.Name;

/**
 * Lets somebody in: makes a one-time code for a name. Who has an account already gets another password by it, and
 * whoever left comes back.
 *
 * @param session who lets in
 * @param random makes the code
 */
public record Invite(Session session, SecureRandom random) {
    /** @throws org.cupwright.message.Problem if the name is none, or somebody of that name is something else */
    public NewCode person(String name, Role role) {
        String said = PersonName.of(name);
        return new PeopleDesk(session).decide(stores -> {
            Optional<KeptPerson> known = stores.people().named(said);
            known.filter(person -> person.active() && Roles.of(person.role()) != role)
                    .ifPresent(other -> {
                        throw PeopleProblems.of(
                                "otherRole", "role", "", new Name(other.name()), RoleWord.of(Roles.of(other.role())));
                    });
            NewCode made = NewCode.keep(
                    stores.people(),
                    random,
                    Optional.of(known.map(KeptPerson::name).orElse(said)),
                    role,
                    session.now());
            About whom = new About("", new Name(made.name().orElseThrow()), known.map(KeptPerson::id));
            stores.audit()
                    .add(session.did(AuditKind.PERSON_INVITED, whom, Optional.empty(), Optional.of(RoleWord.of(role))));
            return made;
        });
    }
}
