package org.cupwright.app.people;

import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.PeopleStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Name;

/** What all changes of people have in common. */
record PeopleDesk(Session session) {
    /** Decides for those who may, as long as their own account still says so. */
    <T> T decide(Function<Stores, T> work) {
        return session.decide(Right.PEOPLE, stores -> {
            session.person().id().ifPresent(id -> checkStill(stores.people(), id));
            return work.apply(stores);
        });
    }

    /** A right that was taken away since the request came in counts no more. */
    private void checkStill(PeopleStore people, UUID id) {
        boolean may = people.find(id)
                .filter(KeptPerson::active)
                .map(person -> Account.of(person).role().may(Right.PEOPLE))
                .orElse(false);
        if (!may) {
            throw PeopleProblems.of("notAnyMore", "person");
        }
    }

    /** Whoever has a name. */
    static KeptPerson named(Stores stores, String name) {
        return stores.people()
                .named(name)
                .orElseThrow(() -> PeopleProblems.of("unknown", "name", name, new Name(name)));
    }

    void writeDown(
            Stores stores, AuditKind what, KeptPerson about, Optional<Argument> before, Optional<Argument> after) {
        About whom = new About("", new Name(about.name()), Optional.of(about.id()));
        stores.audit().add(session.did(what, whom, before, after));
    }
}
