package org.cupwright.app.wiring.server;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.cupwright.app.office.access.Route;
import org.cupwright.app.office.access.Routes;
import org.springframework.http.HttpMethod;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/** The table of addresses, as a request is held against it. */
final class Addresses {
    private static final List<RequestMatcher> ALL =
            Routes.ALL.stream().map(Addresses::of).toList();

    private Addresses() {}

    static RequestMatcher of(Route route) {
        return PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.valueOf(route.method()), route.pattern());
    }

    /** Whether it is in the table, whoever may ask for it. */
    static boolean has(HttpServletRequest request) {
        return ALL.stream().anyMatch(address -> address.matches(request));
    }
}
