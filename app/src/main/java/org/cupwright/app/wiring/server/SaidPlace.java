package org.cupwright.app.wiring.server;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the pages were asked for.
 *
 * @param scheme {@code http} or {@code https}
 * @param host a name or an address
 * @param port of it
 */
record SaidPlace(String scheme, String host, int port) {
    private static final int HTTP = 80;
    private static final int HTTPS = 443;
    private static final int LAST_PORT = 65_535;
    private static final Pattern HOST =
            Pattern.compile("([\\p{Alnum}._-]{1,253}|\\[[0-9A-Fa-f:.]{2,45}])(?::(\\d{1,5}))?");

    /** From a host as it stands in a header; nothing where it cannot be one. */
    static Optional<SaidPlace> of(String scheme, String said) {
        Matcher host = HOST.matcher(said);
        if (!host.matches()) {
            return Optional.empty();
        }
        int port = host.group(2) == null ? usual(scheme) : Integer.parseInt(host.group(2));
        return port > LAST_PORT ? Optional.empty() : Optional.of(new SaidPlace(scheme, host.group(1), port));
    }

    private static int usual(String scheme) {
        return scheme.equals("https") ? HTTPS : HTTP;
    }

    String address() {
        return scheme + "://" + host + (port == usual(scheme) ? "" : ":" + port);
    }
}
