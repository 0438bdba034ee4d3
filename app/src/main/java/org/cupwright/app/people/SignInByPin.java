package org.cupwright.app.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.KeptPhone;
import org.cupwright.app.storage.KeptPin;
import org.cupwright.app.storage.Stores;

/**
 * Tells on a shared phone who is who: a name that is chosen from a list, and its PIN. Nowhere else does a PIN let
 * anybody in.
 *
 * @param folder what is kept
 * @param clock for the audit trail
 * @param passwords checks PINs as it checks passwords
 * @param slowDown the one of the sign-in; tries of PINs stand there under names of their own
 */
public record SignInByPin(DataFolder folder, Clock clock, Passwords passwords, SlowDown slowDown) {
    /** So many wrong PINs of all names, and the phone is shared no more: our choice. */
    static final int MOST_WRONG = 10;

    /** Wrong ones of names that nobody has. */
    private static final UUID NOBODY = new UUID(0, 0);

    /** What came of a try. */
    public sealed interface Outcome {}

    /** Let in. */
    public record Welcome(Account account) implements Outcome {}

    /** Name and PIN do not go together. */
    public record Refused() implements Outcome {}

    /**
     * Nothing was tried: it has to wait.
     *
     * @param left so long
     */
    public record Wait(Duration left) implements Outcome {}

    /** The phone is not shared, or no more: it has to be made so anew. */
    public record Closed() implements Outcome {}

    /** Who may be chosen: whoever may sign in and has a PIN, in the order of the alphabet. */
    public List<String> names() {
        return folder.read(stores -> stores.phones().pins().stream()
                .flatMap(pin -> stores.people().find(pin.account()).stream())
                .filter(KeptPerson::active)
                .map(KeptPerson::name)
                .sorted(String.CASE_INSENSITIVE_ORDER)
                .toList());
    }

    /**
     * Tries once.
     *
     * @param phone on which phone
     */
    public Outcome as(UUID phone, String name, String pin) {
        Optional<Duration> wait = slowDown.begin(nameKey(name), phoneKey(phone));
        if (wait.isPresent()) {
            return new Wait(wait.get());
        }
        Optional<KeptPerson> known =
                folder.read(stores -> stores.people().named(name)).filter(KeptPerson::active);
        Optional<KeptPin> kept =
                known.flatMap(person -> folder.read(stores -> stores.phones().pin(person.id())));
        boolean right = passwords.matches(pin, kept.map(KeptPin::hash).orElse(""));
        Outcome outcome = folder.write(stores -> decided(stores, phone, known, right ? kept : Optional.empty()));
        if (outcome instanceof Welcome) {
            slowDown.succeeded(nameKey(name), phoneKey(phone));
        }
        return outcome;
    }

    private Outcome decided(Stores stores, UUID phone, Optional<KeptPerson> known, Optional<KeptPin> right) {
        boolean shared = stores.phones()
                .find(phone)
                .filter(KeptPhone::isShared)
                .filter(found -> found.counts(clock.instant()))
                .isPresent();
        if (!shared) {
            return new Closed();
        }
        Optional<KeptPerson> welcome = known.filter(seen -> right.isPresent()
                && stores.people().find(seen.id()).equals(known)
                && stores.phones().pin(seen.id()).equals(right));
        return welcome.<Outcome>map(person -> welcomed(stores, phone, person))
                .orElseGet(() -> wrong(stores, phone, known.map(KeptPerson::id).orElse(NOBODY)));
    }

    private Welcome welcomed(Stores stores, UUID phone, KeptPerson person) {
        stores.phones().right(phone, person.id());
        stores.audit().add(PhoneLines.of(clock, person, AuditKind.SIGNED_IN_BY_PIN));
        return new Welcome(Account.of(person));
    }

    private Outcome wrong(Stores stores, UUID phone, UUID account) {
        Instant now = clock.instant();
        if (stores.phones().wrong(phone, account, now) < MOST_WRONG) {
            return new Refused();
        }
        stores.phones().end(phone);
        stores.audit().add(PhoneLines.ofShared(clock, PhoneLines.NOBODY, AuditKind.SHARED_PHONE_CLOSED));
        return new Closed();
    }

    /** Whether somebody who came in by a PIN has it still, and no other one since. */
    public boolean still(UUID account, Instant since) {
        return folder.read(stores -> stores.phones().pin(account))
                .filter(pin -> !pin.setAt().isAfter(since))
                .isPresent();
    }

    private static String nameKey(String name) {
        return "pin/" + name;
    }

    private static String phoneKey(UUID phone) {
        return "phone/" + phone;
    }
}
