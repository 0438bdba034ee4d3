package org.cupwright.app.desk.training;

import java.util.Optional;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.PersonName;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.storage.training.TrainingRecord.Somebody;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Name;

/** What all that is written about training has in common. */
record TrainingDesk(Session session, Stores stores, TrainingDay day, Competences competences) {
    static TrainingDesk of(Session session, Stores stores) {
        TrainingDay day = TrainingDay.of(session, stores);
        return new TrainingDesk(session, stores, day, day.competences(stores));
    }

    Signers signers() {
        return new Signers(competences);
    }

    /** Whoever is meant: as the account has it, as records have it, or somebody new who has no account yet. */
    Somebody person(String said) {
        String name = PersonName.of(said);
        return stores.people()
                .named(name)
                .map(account -> new Somebody(Optional.of(account.id()), account.name()))
                .orElseGet(() -> new Somebody(Optional.empty(), known(name)));
    }

    private String known(String name) {
        return competences.names().stream()
                .filter(one -> NameKey.of(one).equals(NameKey.of(name)))
                .findFirst()
                .orElse(name);
    }

    TrainingRecord keep(Somebody person, Learnt learnt) {
        Person by = session.person();
        TrainingRecord record = new TrainingRecord(
                session.ids().get(),
                session.now(),
                session.now(),
                person,
                new Somebody(by.id(), by.name()),
                day.course(),
                learnt);
        stores.training().add(record);
        return record;
    }

    void writeDown(AuditKind what, Somebody about, Optional<Argument> before, Optional<Argument> after) {
        stores.audit().add(session.did(what, new About("", new Name(about.name()), about.id()), before, after));
    }

    /** The account of a changer who may sign in. */
    KeptPerson changer(String name) {
        return stores.people()
                .named(name)
                .filter(KeptPerson::active)
                .filter(person -> person.role().equals("changer"))
                .orElseThrow(() -> TrainingProblems.of("noChanger", "name", name, new Name(name)));
    }
}
