package org.cupwright.app.people;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.KeptPhone;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message.Name;

/** The phones that the office knows again, and their end. */
public record PhonesOfAll(Session session) {
    /**
     * A phone that counts.
     *
     * @param name who is signed in on it; empty where several share it
     */
    public record One(UUID id, Optional<String> name, Instant madeAt, Instant seenAt, Instant until) {}

    /** In the order in which they came. */
    public List<One> list() {
        return session.look(
                Right.PEOPLE,
                stores -> stores.phones().all().stream()
                        .filter(phone -> phone.counts(session.now()))
                        .map(phone -> one(stores, phone))
                        .toList());
    }

    private static One one(Stores stores, KeptPhone phone) {
        Optional<String> name = whose(stores, phone).map(KeptPerson::name);
        return new One(phone.id(), name, phone.madeAt(), phone.seenAt(), phone.until());
    }

    private static Optional<KeptPerson> whose(Stores stores, KeptPhone phone) {
        return phone.account().flatMap(stores.people()::find);
    }

    /** Ends one; nothing happens where it has ended already. */
    public void end(UUID id) {
        new PeopleDesk(session).decide(stores -> {
            Optional<KeptPhone> phone = stores.phones().find(id);
            phone.ifPresent(found -> end(stores, found));
            return phone;
        });
    }

    /** Ends all of them. */
    public void endAll() {
        new PeopleDesk(session).decide(stores -> {
            List<KeptPhone> all = stores.phones().all();
            all.forEach(phone -> end(stores, phone));
            return all;
        });
    }

    private void end(Stores stores, KeptPhone phone) {
        stores.phones().end(phone.id());
        About about = whose(stores, phone).map(PhoneLines::about).orElseGet(() -> new About("", new Name("")));
        AuditKind what = phone.isShared() ? AuditKind.SHARED_PHONE_ENDED : AuditKind.PHONE_ENDED;
        stores.audit().add(session.did(what, about, Optional.empty(), Optional.empty()));
    }
}
