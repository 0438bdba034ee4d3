package org.cupwright.app.office.frame;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.session.Right;

/**
 * A page that stands in the way about.
 *
 * @param key its name among the words
 * @param address where it is
 * @param right who has none of it does not see it; empty: everybody does
 */
record Pages(String key, String address, Optional<Right> right) {
    static final List<Pages> IN_ORDER = List.of(
            everybodys("today", "/"),
            everybodys("green", "/green"),
            everybodys("weeks", "/weeks"),
            everybodys("log", "/log"),
            everybodys("course", "/course"),
            new Pages("people", "/people", Optional.of(Right.PEOPLE)));

    private static Pages everybodys(String key, String address) {
        return new Pages(key, address, Optional.empty());
    }

    /** Whether an address is of this page, or of one below it. */
    boolean isAt(String here) {
        return here.equals(address) || !address.equals("/") && here.startsWith(address);
    }
}
