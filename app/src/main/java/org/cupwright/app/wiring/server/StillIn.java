package org.cupwright.app.wiring.server;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.util.Optional;
import org.cupwright.app.office.visit.SignedIn;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Whose account was changed or taken away is out with the next request, and signs in anew. */
final class StillIn extends OncePerRequestFilter {
    private final Accounts accounts;

    StillIn(Accounts accounts) {
        this.accounts = accounts;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Authentication known = SecurityContextHolder.getContext().getAuthentication();
        if (known != null && known.getPrincipal() instanceof SignedIn person && !accounts.isStill(person)) {
            SecurityContextHolder.clearContext();
            Optional.ofNullable(request.getSession(false)).ifPresent(HttpSession::invalidate);
            response.sendRedirect(request.getContextPath() + "/sign-in?ended");
            return;
        }
        chain.doFilter(request, response);
    }
}
