package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A judged position in words, piece by piece.
 *
 * @param where the part of the green and paces, or coordinates
 * @param verdict the verdict by its key
 * @param says the verdict in words
 * @param within how far off is still as good; empty where the position is not
 * @param plays how it plays; empty where that is not known
 * @param restsOn what the knowledge of the ground rests on
 * @param rules every rule, in the order in which they are asked
 */
public record ToldPosition(
        String where,
        String verdict,
        String says,
        Optional<String> within,
        Optional<String> plays,
        String restsOn,
        List<Rule> rules) {
    public ToldPosition {
        rules = List.copyOf(rules);
    }

    /**
     * One rule.
     *
     * @param name what it asks about
     * @param key what it answers, by its key; {@code setAside} where it does not count
     * @param outcome what it answers, in words
     * @param says the sentence: what was found, against which limit, and how far that may be wrong
     * @param leans which way it leans where it could not tell
     */
    public record Rule(String name, String key, String outcome, String says, Optional<String> leans) {}

    /** The verdict, how far off is still good, how it plays and what that rests on. */
    public String summary() {
        List<String> summary = new ArrayList<>(List.of(says));
        within.ifPresent(summary::add);
        plays.ifPresent(summary::add);
        summary.add(restsOn);
        return String.join(" · ", summary);
    }
}
