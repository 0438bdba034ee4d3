package org.cupwright.app.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine.Who;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.KeptPhone;
import org.cupwright.app.storage.Stores;

/**
 * Phones that the office knows again: those on which somebody stays signed in, and those that several share. What a
 * phone shows is another secret after each time it is asked for, and what was shown before is not taken any more:
 * whoever copied it is found out as soon as one of the two comes back.
 *
 * @param folder what is kept
 * @param clock until when a phone counts
 * @param random makes the secrets
 */
public record Phones(DataFolder folder, Clock clock, SecureRandom random) {
    /** So long a phone counts, however often it is used: a playing season. Our choice. */
    static final Duration SEASON = Duration.ofDays(240);

    /** What a page asks for at one time it asks with one secret, all at once. Our choice. */
    static final Duration AT_ONE_TIME = Duration.ofMinutes(1);

    /**
     * A phone that is known.
     *
     * @param id which one
     * @param account who is signed in on it; empty where several share it
     * @param shows what it is to show from now on; empty: as before
     */
    public record Known(UUID id, Optional<Account> account, Optional<String> shows) {}

    /**
     * Keeps somebody signed in on a phone.
     *
     * @param instead the phone as it was known until now; it counts no more
     */
    public Known keep(Account account, Optional<UUID> instead) {
        return folder.write(stores -> {
            instead.ifPresent(stores.phones()::end);
            Known known = add(stores, Optional.of(account));
            KeptPerson person = stores.people().find(account.id()).orElseThrow();
            stores.audit().add(PhoneLines.of(clock, person, AuditKind.PHONE_KEPT));
            return known;
        });
    }

    /**
     * Makes a phone one that several share.
     *
     * @param session who says so
     * @param instead the phone as it was known until now; it counts no more
     * @throws org.cupwright.message.Problem if that person may not
     */
    public Known share(Session session, Optional<UUID> instead) {
        if (session.person().id().isEmpty()) {
            throw PeopleProblems.of("noAccount", "person"); // whoever sits there is known by nothing else
        }
        return new PeopleDesk(session).decide(stores -> {
            instead.ifPresent(stores.phones()::end);
            Known known = add(stores, Optional.empty());
            stores.audit().add(PhoneLines.ofShared(clock, who(session), AuditKind.PHONE_SHARED));
            return known;
        });
    }

    private static Who who(Session session) {
        return new Who(session.person().id(), session.person().name());
    }

    private Known add(Stores stores, Optional<Account> account) {
        Instant now = clock.instant();
        PhoneToken token = PhoneToken.make(UUID.randomUUID(), random);
        stores.phones()
                .add(new KeptPhone(
                        token.phone(), account.map(Account::id), token.hash(), "", now, now, now.plus(SEASON)));
        return new Known(token.phone(), account, Optional.of(token.shown()));
    }

    /** A phone that comes back, with what it shows; empty where it counts no more. */
    public Optional<Known> back(String shown) {
        return PhoneToken.read(shown)
                .filter(token -> folder.<Boolean>read(
                        stores -> stores.phones().find(token.phone()).isPresent()))
                .flatMap(token -> folder.write(stores -> back(stores, token)));
    }

    private Optional<Known> back(Stores stores, PhoneToken token) {
        Optional<KeptPhone> found = stores.phones().find(token.phone());
        if (found.isEmpty()) {
            return Optional.empty();
        }
        KeptPhone phone = found.get();
        if (!phone.counts(clock.instant())) {
            stores.phones().end(phone.id());
            return Optional.empty();
        }
        boolean last = same(phone.before(), token);
        if (!last && !same(phone.hash(), token)) {
            copied(stores, phone);
            return Optional.empty();
        }
        boolean atOneTime = last && clock.instant().isBefore(phone.seenAt().plus(AT_ONE_TIME));
        return Optional.of(new Known(
                phone.id(),
                phone.account().flatMap(stores.people()::find).map(Account::of),
                atOneTime ? Optional.empty() : Optional.of(next(stores, phone, token))));
    }

    /** What was shown now is the last that may be shown again: an answer is lost where there is no signal. */
    private String next(Stores stores, KeptPhone phone, PhoneToken token) {
        PhoneToken next = PhoneToken.make(phone.id(), random);
        stores.phones().replace(phone.showing(next.hash(), token.hash(), clock.instant()));
        return next.shown();
    }

    private void copied(Stores stores, KeptPhone phone) {
        stores.phones().end(phone.id());
        Optional<KeptPerson> whose = phone.account().flatMap(stores.people()::find);
        stores.audit()
                .add(whose.map(person -> PhoneLines.of(clock, person, AuditKind.PHONE_COPIED))
                        .orElseGet(() -> PhoneLines.ofShared(clock, PhoneLines.NOBODY, AuditKind.PHONE_COPIED)));
    }

    /** The phone that shows something, as it is: what it shows stays the same. */
    public Optional<KeptPhone> known(String shown) {
        return PhoneToken.read(shown)
                .flatMap(token -> folder.read(stores -> stores.phones().find(token.phone()))
                        .filter(phone -> same(phone.hash(), token) || same(phone.before(), token)))
                .filter(phone -> phone.counts(clock.instant()));
    }

    /** Whether a phone counts still. To be asked with every request of somebody who is signed in on it. */
    public boolean counts(UUID id) {
        return folder.read(stores -> stores.phones().find(id))
                .filter(phone -> phone.counts(clock.instant()))
                .isPresent();
    }

    /** Somebody signs out on a phone of the own. */
    public void left(UUID id) {
        folder.write(stores -> {
            Optional<KeptPerson> whose =
                    stores.phones().find(id).flatMap(KeptPhone::account).flatMap(stores.people()::find);
            whose.ifPresent(person -> {
                stores.phones().end(id);
                stores.audit().add(PhoneLines.of(clock, person, AuditKind.PHONE_ENDED));
            });
            return whose;
        });
    }

    private static boolean same(String hash, PhoneToken token) {
        return MessageDigest.isEqual(
                hash.getBytes(StandardCharsets.US_ASCII), token.hash().getBytes(StandardCharsets.US_ASCII));
    }
}
