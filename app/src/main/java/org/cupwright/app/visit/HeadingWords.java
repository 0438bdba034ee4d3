package org.cupwright.app.visit;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cupwright.app.texts.Texts;

/** The eight winds, which may be typed for a direction in degrees. */
public record HeadingWords(Texts texts) {
    private static final double EIGHTH_DEGREES = 45;

    /** Clockwise from north. */
    private static final List<String> WINDS =
            List.of("north", "northEast", "east", "southEast", "south", "southWest", "west", "northWest");

    /** The words, for a list to choose from. */
    public List<String> all() {
        return WINDS.stream().map(wind -> texts.say("begin.wind." + wind)).toList();
    }

    /** What was typed, with degrees for words in the fields of directions. */
    public Map<String, String> inDegrees(Map<String, String> typed) {
        Map<String, String> all = new HashMap<>(typed);
        all.replaceAll((field, value) -> field.startsWith("play") ? inDegrees(value) : value);
        return all;
    }

    /** The same of one field. */
    public String inDegrees(String typed) {
        String word = plain(typed);
        for (int i = 0; i < WINDS.size(); i++) {
            String wind = WINDS.get(i);
            if (word.equals(plain(texts.say("begin.wind." + wind)))
                    || word.equals(plain(texts.say("begin.windShort." + wind)))) {
                return Long.toString(Math.round(i * EIGHTH_DEGREES));
            }
        }
        return typed;
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]", "");
    }
}
