package org.cupwright.app.wiring.server;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.cupwright.app.visit.access.Route;
import org.cupwright.app.visit.access.Routes;
import org.springframework.http.HttpMethod;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/** The table of addresses, as a request is held against it. */
final class Addresses {
    private Addresses() {}

    static RequestMatcher of(Route route) {
        return PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.valueOf(route.method()), route.pattern());
    }

    /** What stands in the table of it, whoever may ask for it. */
    static Optional<Route> find(HttpServletRequest request) {
        return Routes.ALL.stream().filter(route -> of(route).matches(request)).findFirst();
    }
}
