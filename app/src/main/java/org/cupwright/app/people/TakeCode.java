package org.cupwright.app.people;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.cupwright.app.people.Account.Roles;
import org.cupwright.app.session.PersonName;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.AuditLine.About;
import org.cupwright.app.storage.AuditLine.Who;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.KeptCode;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.PeopleStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Name;

/**
 * Takes a one-time code: whoever has it gets an account, or another password where there is one of that name.
 *
 * @param folder what is kept
 * @param clock whether the code still counts
 * @param ids makes the ids of accounts
 * @param passwords what is kept of the password
 */
public record TakeCode(DataFolder folder, Clock clock, Supplier<UUID> ids, Passwords passwords) {
    /**
     * For whom a code is.
     *
     * @param name empty: to be chosen
     */
    public record For(Optional<String> name, Role role) {}

    /** For whom a code is that still counts. */
    public Optional<For> whose(String code) {
        return folder.read(stores -> open(stores.people(), code))
                .map(open -> new For(open.name(), Roles.of(open.role())));
    }

    /**
     * The account, with which the person is signed in.
     *
     * @throws org.cupwright.message.Problem if the code does not count or is another person's, or the name or the
     *     password cannot be taken; the code then counts as before
     */
    public Account take(String code, String name, String password) {
        KeptCode seen = folder.read(stores -> counting(stores.people(), code));
        String said = PersonName.of(
                seen.name().filter(invited -> isSame(invited, name)).orElse(name));
        PasswordRule.check(password, said);
        String hash = passwords.hash(password); // takes its time: before the writing, which others wait for
        return folder.write(stores -> taken(stores, code, said, hash));
    }

    private Account taken(Stores stores, String code, String name, String hash) {
        PeopleStore people = stores.people();
        KeptCode counting = counting(people, code);
        if (counting.name().filter(invited -> !isSame(invited, name)).isPresent()) {
            throw PeopleProblems.of("codeOfAnother", "name");
        }
        Optional<KeptPerson> known = people.named(name);
        if (known.isPresent() && counting.name().isEmpty()) {
            throw PeopleProblems.of("nameTaken", "name", name, new Name(name));
        }
        Instant now = clock.instant();
        people.replace(counting.used(now));
        KeptPerson person = known.map(kept -> again(kept, counting, hash, now))
                .orElseGet(() -> new KeptPerson(ids.get(), name, counting.role(), true, hash, now, now));
        if (known.isPresent()) {
            people.replace(person);
        } else {
            people.add(person);
        }
        AuditKind what =
                known.filter(KeptPerson::active).isPresent() ? AuditKind.PASSWORD_CHANGED : AuditKind.PERSON_JOINED;
        About about = new About("", new Name(person.name()), Optional.of(person.id()));
        Optional<Argument> role =
                what == AuditKind.PERSON_JOINED ? Optional.of(RoleWord.of(Roles.of(person.role()))) : Optional.empty();
        stores.audit()
                .add(new AuditLine(
                        now, new Who(Optional.of(person.id()), person.name()), what, about, Optional.empty(), role));
        return Account.of(person);
    }

    /** Whoever may sign in stays what that person is now; whoever left comes back as what the code says. */
    private static KeptPerson again(KeptPerson kept, KeptCode code, String hash, Instant now) {
        return (kept.active() ? kept : kept.as(code.role(), now)).by(hash, now);
    }

    private KeptCode counting(PeopleStore people, String code) {
        return open(people, code).orElseThrow(() -> PeopleProblems.of("code", "code"));
    }

    private Optional<KeptCode> open(PeopleStore people, String code) {
        return people.code(OneTimeCode.hash(code)).filter(kept -> kept.isOpen(clock.instant()));
    }

    private static boolean isSame(String invited, String name) {
        return NameKey.of(invited).equals(NameKey.of(name));
    }
}
