package org.cupwright.app.wiring;

import java.io.Console;
import java.util.Optional;

/** Asks whoever sits at the terminal. */
final class AtTerminal {
    private AtTerminal() {}

    /** What was typed; nothing where the input ends. Empty where there is no terminal, as in a script. */
    static Optional<String> ask(String question) {
        Console console = System.console();
        if (console == null) {
            return Optional.empty();
        }
        String answer = console.readLine("%s ", question);
        return Optional.of(answer == null ? "" : answer);
    }
}
