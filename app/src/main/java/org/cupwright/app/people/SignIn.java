package org.cupwright.app.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.AuditLine.Who;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.message.Message.Name;

/**
 * Lets in whoever knows a name's password.
 *
 * @param folder what is kept
 * @param clock for the audit trail
 * @param passwords checks them
 * @param slowDown remembers wrong tries; one for all sign-ins of a program
 */
public record SignIn(DataFolder folder, Clock clock, Passwords passwords, SlowDown slowDown) {
    /** What came of a try. */
    public sealed interface Outcome {}

    /** Let in. */
    public record Welcome(Account account) implements Outcome {}

    /** Name and password do not go together; which of the two is wrong is not said. */
    public record Refused() implements Outcome {}

    /**
     * Nothing was tried: it has to wait.
     *
     * @param left so long
     */
    public record Wait(Duration left) implements Outcome {}

    /**
     * Tries once.
     *
     * @param address from where: an IP address; an empty one is an address like any other
     */
    public Outcome as(String name, String password, String address) {
        Optional<Duration> wait = slowDown.begin(name, address);
        if (wait.isPresent()) {
            return new Wait(wait.get());
        }
        Optional<KeptPerson> known = folder.read(stores -> stores.people().named(name));
        String kept =
                known.filter(KeptPerson::active).map(KeptPerson::passwordHash).orElse("");
        if (passwords.matches(password, kept)) {
            Optional<Account> account = welcomed(known.orElseThrow());
            if (account.isPresent()) {
                slowDown.succeeded(name, address);
                return new Welcome(account.get());
            }
        }
        if (slowDown.hasJustBegunToWait(name)) {
            folder.write(stores -> {
                stores.audit().add(slowed(known));
                return known;
            });
        }
        return new Refused();
    }

    /** Of a name that nobody has as well, so that it takes as long; but not that name, which may be a password. */
    private AuditLine slowed(Optional<KeptPerson> known) {
        About nobody = new About("", new Name(""));
        return line(known.map(SignIn::about).orElse(nobody), AuditKind.SIGN_IN_SLOWED, new Who(Optional.empty(), ""));
    }

    /** Unless the account has changed while the password was checked. */
    private Optional<Account> welcomed(KeptPerson seen) {
        return folder.write(stores -> {
            Optional<KeptPerson> now = stores.people().find(seen.id()).filter(seen::equals);
            now.ifPresent(person -> stores.audit()
                    .add(line(about(person), AuditKind.SIGNED_IN, new Who(Optional.of(person.id()), person.name()))));
            return now.map(Account::of);
        });
    }

    private static About about(KeptPerson person) {
        return new About("", new Name(person.name()), Optional.of(person.id()));
    }

    private AuditLine line(About about, AuditKind what, Who who) {
        return new AuditLine(clock.instant(), who, what, about, Optional.empty(), Optional.empty());
    }

    /**
     * The account of somebody who signed in before, as it is now; empty where it may sign in no more, or something of
     * it changed since: then the person has to sign in anew. To be asked with every request.
     *
     * @param id of the account
     * @param changedAt as it was when the person signed in
     */
    public Optional<Account> still(UUID id, Instant changedAt) {
        return folder.read(stores -> stores.people().find(id))
                .filter(person -> person.active() && person.changedAt().equals(changedAt))
                .map(Account::of);
    }
}
