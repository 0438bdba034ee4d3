package org.cupwright.app.wiring.server;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.cupwright.app.people.Account;
import org.cupwright.app.people.Phones;
import org.cupwright.app.people.Phones.Known;
import org.cupwright.app.people.SignInByPin;
import org.cupwright.app.people.SignInByPin.Refused;
import org.cupwright.app.people.SignInByPin.Wait;
import org.cupwright.app.people.SignInByPin.Welcome;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.storage.KeptPhone;
import org.cupwright.app.visit.PhoneInUse;
import org.cupwright.app.visit.SignedIn;
import org.cupwright.app.visit.SignedIn.By;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.authentication.logout.LogoutHandler;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;

/** Knows phones again, and who is signed in on them. */
record KnownPhones(Accounts accounts, SecureRandom random, PhoneCookie cookie) implements PhoneInUse, LogoutHandler {
    private static final HttpSessionSecurityContextRepository SESSIONS = new HttpSessionSecurityContextRepository();

    /** Signs in whoever stays signed in on the phone that asks; answers whether somebody does. */
    boolean comeBack(HttpServletRequest request, HttpServletResponse response) {
        Optional<String> shown = cookie.shown(request);
        if (shown.flatMap(this::known).filter(KeptPhone::isShared).isPresent()) {
            return false; // it is nobody's
        }
        Optional<Known> back = shown.flatMap(value -> asked(phones -> phones.back(value)));
        back.flatMap(Known::shows).ifPresent(next -> cookie.show(response, next));
        if (back.isEmpty() && shown.isPresent()) {
            cookie.takeAway(response);
        }
        Optional<Known> whose =
                back.filter(phone -> phone.account().filter(Account::active).isPresent());
        whose.ifPresent(phone -> signIn(phone.account().orElseThrow(), By.PHONE, phone.id(), request, response));
        return whose.isPresent();
    }

    /** Keeps somebody signed in who has just typed the password and wishes it. */
    void keep(SignedIn person, HttpServletRequest request, HttpServletResponse response) {
        if (!PhoneInUse.mayBeKept(request) || shared(request).isPresent()) {
            return;
        }
        Optional<UUID> instead = phone(request).map(KeptPhone::id);
        accounts.account(person).ifPresent(account -> {
            Known kept = asked(phones -> phones.keep(account, instead));
            kept.shows().ifPresent(shown -> cookie.show(response, shown));
            put(
                    new SignedIn(
                            person.id(),
                            person.name(),
                            person.role(),
                            person.changedAt(),
                            person.since(),
                            By.PASSWORD,
                            kept.id()),
                    request,
                    response);
        });
    }

    @Override
    public Optional<List<String>> names(HttpServletRequest request) {
        return shared(request).map(phone -> pin(SignInByPin::names));
    }

    @Override
    public Tried signIn(HttpServletRequest request, HttpServletResponse response, String name, String pin) {
        Optional<UUID> phone = shared(request).map(KeptPhone::id);
        if (phone.isEmpty()) {
            return new Tried(Came.NOT_SHARED, 0);
        }
        SignInByPin.Outcome outcome = pin(door -> door.as(phone.get(), name, pin));
        if (outcome instanceof Welcome welcome) {
            cookie.shown(request)
                    .flatMap(shown -> asked(phones -> phones.back(shown)))
                    .flatMap(Known::shows)
                    .ifPresent(next -> cookie.show(response, next));
            signIn(welcome.account(), By.PIN, phone.get(), request, response);
            return new Tried(Came.IN, 0);
        }
        if (outcome instanceof Wait wait) {
            return new Tried(Came.HAS_TO_WAIT, wait.left().toSeconds() + 1);
        }
        return new Tried(outcome instanceof Refused ? Came.REFUSED : Came.NOT_SHARED, 0);
    }

    @Override
    public void share(HttpServletRequest request, HttpServletResponse response, Session session) {
        Optional<UUID> instead = phone(request).map(KeptPhone::id);
        Known shared = new Phones(session.folder(), session.clock(), random).share(session, instead);
        shared.shows().ifPresent(shown -> cookie.show(response, shown));
        out(request);
    }

    /** A phone of somebody's own is forgotten with it; a shared one stays one. */
    @Override
    public void logout(HttpServletRequest request, HttpServletResponse response, Authentication who) {
        phone(request).filter(phone -> !phone.isShared()).ifPresent(phone -> {
            asked(phones -> {
                phones.left(phone.id());
                return phone;
            });
            cookie.takeAway(response);
        });
    }

    /** Whether the phone by which, or on which, somebody signed in still counts. */
    boolean isStill(SignedIn person) {
        if (person.phone() == null) {
            return true;
        }
        return asked(phones -> phones.counts(person.phone()))
                && (person.by() != By.PIN || pin(door -> door.still(person.id(), person.since())));
    }

    private Optional<KeptPhone> shared(HttpServletRequest request) {
        return phone(request).filter(KeptPhone::isShared);
    }

    private Optional<KeptPhone> phone(HttpServletRequest request) {
        return cookie.shown(request).flatMap(this::known);
    }

    private Optional<KeptPhone> known(String shown) {
        return asked(phones -> phones.known(shown));
    }

    private void signIn(Account account, By by, UUID phone, HttpServletRequest request, HttpServletResponse response) {
        out(request);
        SignedIn person = new SignedIn(
                account.id(),
                account.name(),
                account.role().onAPhone(),
                account.changedAt(),
                accounts.house().clock().instant(),
                by,
                phone);
        request.getSession(true);
        put(person, request, response);
    }

    private static void put(SignedIn person, HttpServletRequest request, HttpServletResponse response) {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(Accounts.signedIn(person));
        SecurityContextHolder.setContext(context);
        SESSIONS.saveContext(context, request, response);
    }

    /** Another session at each signing in; the one of before is nobody's. */
    private static void out(HttpServletRequest request) {
        HttpSession before = request.getSession(false);
        if (before != null) {
            before.invalidate();
        }
        SecurityContextHolder.clearContext();
    }

    private <T> T asked(Function<Phones, T> work) {
        try (DataFolder folder = accounts.house().folders().get()) {
            return work.apply(new Phones(folder, accounts.house().clock(), random));
        }
    }

    private <T> T pin(Function<SignInByPin, T> work) {
        try (DataFolder folder = accounts.house().folders().get()) {
            return work.apply(
                    new SignInByPin(folder, accounts.house().clock(), accounts.passwords(), accounts.slowDown()));
        }
    }
}
