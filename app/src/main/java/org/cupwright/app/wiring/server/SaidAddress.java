package org.cupwright.app.wiring.server;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An IP address as another server writes it, which may put the port behind it. */
final class SaidAddress {
    private static final int LONGEST = 64;
    private static final Pattern FOUR = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,3}){3})(?::\\d{1,5})?");
    private static final Pattern SIX =
            Pattern.compile("\\[?([0-9A-Fa-f.]*:[0-9A-Fa-f:.]*)(?:%\\w+)?(?:](?::\\d{1,5})?)?");

    private SaidAddress() {}

    /** The address alone; nothing where there is none, such as {@code unknown}. */
    static Optional<String> of(String said) {
        if (said.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher four = FOUR.matcher(said);
        Matcher six = SIX.matcher(said);
        if (four.matches()) {
            return Optional.of(four.group(1));
        }
        return six.matches() ? Optional.of(six.group(1)) : Optional.empty();
    }
}
