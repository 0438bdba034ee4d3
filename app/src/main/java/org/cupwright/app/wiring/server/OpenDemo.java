package org.cupwright.app.wiring.server;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.UUID;
import org.cupwright.app.office.visit.SignedIn;
import org.cupwright.app.session.Role;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** The invented course is open to whoever sits at this machine, who may do everything there. */
final class OpenDemo extends OncePerRequestFilter {
    private static final SignedIn WHOEVER = new SignedIn(new UUID(0, 0), "demo", Role.SUPERINTENDENT);

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                WHOEVER,
                null,
                List.of(new SimpleGrantedAuthority("ROLE_" + WHOEVER.role().name()))));
        SecurityContextHolder.setContext(context);
        chain.doFilter(request, response);
    }
}
