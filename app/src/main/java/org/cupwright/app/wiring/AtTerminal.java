package org.cupwright.app.wiring;

import java.io.Console;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Asks whoever sits at the terminal. */
final class AtTerminal {
    /** What counts as a yes, in the languages there are texts for. */
    private static final Set<String> YES = Set.of("y", "yes");

    private AtTerminal() {}

    /** Whether the answer is yes; anything else is a no. Empty where there is no terminal, as in a script. */
    static Optional<Boolean> ask(String question) {
        Console console = System.console();
        if (console == null) {
            return Optional.empty();
        }
        String answer = console.readLine("%s ", question);
        return Optional.of(answer != null && YES.contains(answer.strip().toLowerCase(Locale.ROOT)));
    }
}
