package org.cupwright.app.wiring.server;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.cupwright.app.visit.SignedIn;
import org.cupwright.app.visit.SignedIn.By;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Who has asked for nothing for too long, signed in too long ago, or whose account was changed or taken away, is out
 * with the next request, and signs in anew; on a phone on which somebody stays signed in that happens by itself.
 */
final class StillIn extends OncePerRequestFilter {
    /** A working day with what goes before and after it. Our choice. */
    static final Duration WITHOUT_A_CLICK = Duration.ofHours(12);

    /** Whoever looks in every day signs in once a week. Our choice. */
    static final Duration ALTOGETHER = Duration.ofDays(7);

    /** What a page that stands open asks for, without anybody's click. */
    private static final String BY_ITSELF = "/now";

    private static final String LAST = "lastAsked";

    private final KnownPhones phones;
    private final Accounts accounts;
    private final Clock clock;

    StillIn(KnownPhones phones) {
        this.phones = phones;
        this.accounts = phones.accounts();
        this.clock = accounts.house().clock();
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Authentication known = SecurityContextHolder.getContext().getAuthentication();
        HttpSession session = request.getSession(false);
        if (session != null && known != null && known.getPrincipal() instanceof SignedIn person) {
            if (isOver(person, session) || !accounts.isStill(person) || !phones.isStill(person)) {
                SecurityContextHolder.clearContext();
                session.invalidate();
                if (!phones.comeBack(request, response)) {
                    ComeIn.leadOut(request, response);
                    return;
                }
            } else if (!request.getServletPath().equals(BY_ITSELF)) {
                session.setAttribute(LAST, clock.instant());
            }
        } else if (Addresses.find(request).filter(route -> !route.open()).isPresent()) {
            phones.comeBack(request, response);
        }
        chain.doFilter(request, response);
    }

    private boolean isOver(SignedIn person, HttpSession session) {
        Instant now = clock.instant();
        Instant last = session.getAttribute(LAST) instanceof Instant asked && asked.isAfter(person.since())
                ? asked
                : person.since();
        return now.isAfter(last.plus(WITHOUT_A_CLICK))
                || now.isAfter(person.since().plus(person.by() == By.PASSWORD ? ALTOGETHER : WITHOUT_A_CLICK));
    }
}
