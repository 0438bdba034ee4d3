package org.cupwright.app.wiring.server;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpFilter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;

/**
 * What the server that stands before this one says of who asks: the last value of each header alone, which that server
 * wrote itself. Whatever stands before it came with the request, and anybody could have written it.
 */
final class LastHop extends HttpFilter {
    static final String FOR = "X-Forwarded-For";
    static final String PROTO = "X-Forwarded-Proto";
    static final String HOST = "X-Forwarded-Host";

    private static final long serialVersionUID = 1;

    @Override
    protected void doFilter(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws IOException, ServletException {
        Optional<String> address = last(request, FOR).flatMap(SaidAddress::of);
        chain.doFilter(new AsThere(request, address.orElse(request.getRemoteAddr()), place(request)), response);
    }

    private static SaidPlace place(HttpServletRequest request) {
        String scheme = last(request, PROTO)
                .filter(said -> List.of("http", "https").contains(said))
                .orElse(request.getScheme());
        SaidPlace here = new SaidPlace(scheme, request.getServerName(), request.getServerPort());
        return last(request, HOST)
                .or(() -> Optional.ofNullable(request.getHeader("Host")))
                .flatMap(said -> SaidPlace.of(scheme, said))
                .orElse(here);
    }

    /** The last of the values of all headers of that name. */
    private static Optional<String> last(HttpServletRequest request, String header) {
        List<String> said = Collections.list(request.getHeaders(header));
        if (said.isEmpty()) {
            return Optional.empty();
        }
        String line = said.get(said.size() - 1);
        return Optional.of(line.substring(line.lastIndexOf(',') + 1).strip());
    }

    /** The request as that server had it. */
    private static final class AsThere extends jakarta.servlet.http.HttpServletRequestWrapper {
        private final String address;
        private final SaidPlace place;

        AsThere(HttpServletRequest request, String address, SaidPlace place) {
            super(request);
            this.address = address;
            this.place = place;
        }

        @Override
        public String getRemoteAddr() {
            return address;
        }

        @Override
        public String getRemoteHost() {
            return address;
        }

        @Override
        public String getScheme() {
            return place.scheme();
        }

        @Override
        public boolean isSecure() {
            return place.scheme().equals("https");
        }

        @Override
        public String getServerName() {
            return place.host();
        }

        @Override
        public int getServerPort() {
            return place.port();
        }

        @Override
        public StringBuffer getRequestURL() {
            return new StringBuffer(place.address()).append(getRequestURI());
        }

        /** Nobody behind here reads them another way. */
        @Override
        public String getHeader(String name) {
            return isOfThese(name) ? null : super.getHeader(name);
        }

        @Override
        public Enumeration<String> getHeaders(String name) {
            return isOfThese(name) ? Collections.emptyEnumeration() : super.getHeaders(name);
        }

        private static boolean isOfThese(String name) {
            return name.regionMatches(true, 0, "X-Forwarded-", 0, "X-Forwarded-".length())
                    || name.equalsIgnoreCase("Forwarded");
        }
    }
}
