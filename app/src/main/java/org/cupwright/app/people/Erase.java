package org.cupwright.app.people;

import java.util.Optional;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.KeptPerson;
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
            KeptPerson left = Deactivate.left(desk, stores, PeopleDesk.named(stores, name));
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
}
