package org.cupwright.app.wiring.server;

import java.net.CookieHandler;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Keeps cookies as a browser behind an encrypting server would have them: sends them all back, and lets them be looked
 * at as they came.
 */
final class SeenCookies extends CookieHandler {
    private final Map<String, String> values = new TreeMap<>();
    private final List<String> lines = new ArrayList<>();

    @Override
    public Map<String, List<String>> get(URI uri, Map<String, List<String>> headers) {
        String all = String.join(
                "; ", values.entrySet().stream().map(Map.Entry::toString).toList());
        return all.isEmpty() ? Map.of() : Map.of("Cookie", List.of(all));
    }

    @Override
    public void put(URI uri, Map<String, List<String>> headers) {
        for (String line : headers.getOrDefault("set-cookie", headers.getOrDefault("Set-Cookie", List.of()))) {
            lines.add(line);
            String[] named = line.split(";")[0].split("=", 2);
            values.put(named[0], named[1]);
        }
    }

    /** The value of a cookie as it is now. */
    String value(String name) {
        return values.getOrDefault(name, "");
    }

    /** All lines that set one, in order. */
    List<String> lines(String name) {
        return lines.stream().filter(line -> line.startsWith(name + "=")).toList();
    }

    /** Goes back to another value. */
    void set(String name, String value) {
        values.put(name, value);
    }
}
