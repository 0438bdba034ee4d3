package org.cupwright.app.wiring.server;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.cupwright.app.cli.command.Serving;
import org.cupwright.app.cli.command.Serving.Request;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Where the pages are for this machine alone they are asked for by one of its own names: a page from elsewhere that has
 * its name lead here is refused.
 */
final class HostsKnown extends OncePerRequestFilter {
    private final boolean alone;

    HostsKnown(Request request) {
        this.alone = isAlone(request);
    }

    /** Whether the pages are for this machine alone. */
    static boolean isAlone(Request request) {
        return Serving.isLoopback(request.bind()) && !request.behindProxy();
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (alone && !request.getServerName().matches("localhost|127(\\.\\d+){3}|\\[?:{2}1]?|\\[?(0:){7}1]?")) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST); // and not a word more
            return;
        }
        chain.doFilter(request, response);
    }
}
