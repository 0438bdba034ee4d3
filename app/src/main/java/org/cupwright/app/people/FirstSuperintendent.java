package org.cupwright.app.people;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.PeopleStore;
import org.cupwright.message.Message.Translated;

/**
 * The first one to sign in, as long as nobody else could let anybody in.
 *
 * @param folder what is kept
 * @param clock for how long the code counts
 * @param random makes the code
 */
public record FirstSuperintendent(DataFolder folder, Clock clock, SecureRandom random) {
    /** A code for one, in place of any made before; empty, and nothing written, where there is an active one. */
    public Optional<NewCode> code() {
        if (folder.read(stores -> Superintendents.active(stores.people())) > 0) {
            return Optional.empty();
        }
        return folder.write(stores -> {
            if (Superintendents.active(stores.people()) > 0) {
                return Optional.empty();
            }
            Instant now = clock.instant();
            PeopleStore people = stores.people();
            NewCode made = NewCode.keep(people, random, Optional.empty(), Role.SUPERINTENDENT, now);
            stores.audit()
                    .add(new AuditLine(
                            now,
                            new AuditLine.Who(Optional.empty(), System.getProperty("user.name", "")),
                            AuditKind.FIRST_CODE_MADE,
                            new AuditLine.About("", new Translated(RoleWord.key(made.role()))),
                            Optional.empty(),
                            Optional.empty()));
            return Optional.of(made);
        });
    }
}
