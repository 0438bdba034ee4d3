package org.cupwright.app.wiring.server;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.people.Account;
import org.cupwright.app.people.Passwords;
import org.cupwright.app.people.SignIn;
import org.cupwright.app.people.SignIn.Refused;
import org.cupwright.app.people.SignIn.Wait;
import org.cupwright.app.people.SignIn.Welcome;
import org.cupwright.app.people.SlowDown;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.SignedIn;
import org.cupwright.app.visit.SignedIn.By;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.web.authentication.WebAuthenticationDetails;

/** Lets people in by the accounts there are, and knows whether somebody may still be in. */
record Accounts(OfficeHouse house, Passwords passwords, SlowDown slowDown) implements AuthenticationProvider {
    static final String ROLE = "ROLE_";
    static final String BY_PIN = "PIN_";

    /** Nothing was tried: whoever asks has to wait first. */
    static final class HasToWait extends BadCredentialsException {
        private static final long serialVersionUID = 1;

        private final Duration left;

        HasToWait(Duration left) {
            super("has to wait");
            this.left = left;
        }

        Duration left() {
            return left;
        }
    }

    @Override
    public Authentication authenticate(Authentication tried) {
        String address =
                tried.getDetails() instanceof WebAuthenticationDetails details ? details.getRemoteAddress() : "";
        try (DataFolder folder = house.folders().get()) {
            SignIn.Outcome outcome =
                    signIn(folder).as(tried.getName(), String.valueOf(tried.getCredentials()), address);
            if (outcome instanceof Wait wait) {
                throw new HasToWait(wait.left());
            }
            if (outcome instanceof Refused) {
                throw new BadCredentialsException("refused");
            }
            return signedIn(of(((Welcome) outcome).account(), house.clock().instant()));
        }
    }

    @Override
    public boolean supports(Class<?> kind) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(kind);
    }

    /** Whether somebody who signed in is still who and what that was. */
    boolean isStill(SignedIn person) {
        return account(person).isPresent();
    }

    /** The account of somebody who is still who and what that was. */
    Optional<Account> account(SignedIn person) {
        try (DataFolder folder = house.folders().get()) {
            return person.account().flatMap(id -> signIn(folder).still(id, person.changedAt()));
        }
    }

    private SignIn signIn(DataFolder folder) {
        return new SignIn(folder, house.clock(), passwords, slowDown);
    }

    private static SignedIn of(Account account, Instant now) {
        return new SignedIn(account.id(), account.name(), account.role(), account.changedAt(), now, By.PASSWORD, null);
    }

    /** Whoever came in by a PIN has no role: the doors of the round know the person, and no others do. */
    static Authentication signedIn(SignedIn person) {
        String kind = person.by() == By.PIN ? BY_PIN : ROLE;
        return UsernamePasswordAuthenticationToken.authenticated(
                person,
                null,
                List.of(new SimpleGrantedAuthority(kind + person.role().name())));
    }
}
