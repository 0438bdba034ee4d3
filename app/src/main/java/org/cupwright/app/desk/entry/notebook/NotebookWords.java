package org.cupwright.app.desk.entry.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.cupchange.CupWork.Across;
import org.cupwright.cupchange.CupWork.Depth;
import org.cupwright.formats.Separator;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * Places as crews write them into notebooks: {@code 12 on 5 left}, {@code 12 on, 5 from the left}, {@code L5, 12 on},
 * {@code 12 L5}, {@code 5L 12}, {@code 14F 5R}, {@code back left}, {@code BL}, {@code B/L}, {@code middle},
 * {@code left in yesterday's hole}. Which words are understood is our choice.
 */
final class NotebookWords {
    private static final String NUMBER = "([0-9]{1,3}(?:[.,][0-9]{1,2})?\u00bd?|\u00bd)";
    private static final String SIDE = "(left|right|l|r)";
    private static final String ON = "(?:on|front|f)";
    private static final String AND = "[ ,;/]+";

    /** Ways to write paces; which group is on, which the side, which the paces from it. */
    private static final Map<Pattern, List<Integer>> PACED = Map.of(
            written(NUMBER + " ?" + ON + AND + NUMBER + " ?" + SIDE), List.of(1, 3, 2),
            written(NUMBER + " ?" + ON + AND + SIDE + " ?" + NUMBER), List.of(1, 2, 3),
            written(NUMBER + " ?" + SIDE + AND + NUMBER + " ?" + ON), List.of(3, 2, 1),
            written(SIDE + " ?" + NUMBER + AND + NUMBER + " ?" + ON), List.of(3, 1, 2),
            written(NUMBER + AND + SIDE + NUMBER), List.of(1, 2, 3),
            written(NUMBER + SIDE + AND + NUMBER), List.of(3, 2, 1));

    private static final Pattern EITHER_WAY = written(NUMBER + AND + SIDE + AND + NUMBER);

    private static final Pattern UNCHANGED =
            written("(?:left |same |stayed )?in (?:yesterday'?s|the old|the same|old|same) (?:old )?hole|not changed"
                    + "|unchanged|no change|same(?: hole)?(?: as yesterday)?|as yesterday|stayed");

    private static final Map<String, Depth> DEPTHS = Map.of(
            "front", Depth.FRONT,
            "f", Depth.FRONT,
            "middle", Depth.MIDDLE,
            "mid", Depth.MIDDLE,
            "m", Depth.MIDDLE,
            "back", Depth.BACK,
            "b", Depth.BACK);

    private static final Map<String, Across> SIDES = Map.of(
            "left", Across.LEFT,
            "l", Across.LEFT,
            "right", Across.RIGHT,
            "r", Across.RIGHT);

    /** {@code BL}: both words by their first letters, written as one. */
    private static final Pattern LETTERS = written("([fmb])([lcmr])|([lcr])([fmb])");

    private static final List<String> CENTRE = List.of("centre", "center", "c", "middle", "mid", "m");

    private NotebookWords() {}

    private static Pattern written(String form) {
        return Pattern.compile(form);
    }

    static NotebookPlace of(String words) {
        String plain = words.toLowerCase(Locale.ROOT)
                .replace('\u2019', '\'')
                .replaceAll("[.](?![0-9])", " ")
                .replaceAll("\\s+", " ")
                .strip()
                .replaceAll("\\b(left|right|l|r)(?: side)? edge\\b|\\bedge\\b", "$1")
                .replaceAll("\\b(?:paces?|from|of) |\\bthe (?=left|right|front|back|middle|centre|center)", "")
                .replaceAll("\\s+", " ")
                .strip();
        if (UNCHANGED.matcher(plain).matches()) {
            return new NotebookPlace.Unchanged();
        }
        Matcher either = EITHER_WAY.matcher(plain);
        if (either.matches()) {
            String side = either.group(2).substring(0, 1).toUpperCase(Locale.ROOT);
            throw Problem.of(
                    Message.of("history.eitherWay", new Name(words)),
                    Message.of(
                            "history.try.eitherWay",
                            new Name(either.group(3) + " on, " + side + either.group(1)),
                            new Name(either.group(1) + " on, " + side + either.group(3))));
        }
        for (Map.Entry<Pattern, List<Integer>> way : PACED.entrySet()) {
            Matcher matcher = way.getKey().matcher(plain);
            if (matcher.matches()) {
                List<Integer> groups = way.getValue();
                String side = matcher.group(groups.get(1)).substring(0, 1) + matcher.group(groups.get(2));
                return new NotebookPlace.Paced(
                        HistoryLine.place(matcher.group(groups.get(0)), side, Separator.SEMICOLON));
            }
        }
        return part(plain).orElseThrow(() -> HistoryLine.not("words", words));
    }

    /** A part of the green: how far back, how far across, in either order; the middle is both. */
    private static Optional<NotebookPlace> part(String plain) {
        List<String> words = new ArrayList<>(
                List.of((LETTERS.matcher(plain).matches() ? plain.substring(0, 1) + " " + plain.substring(1) : plain)
                        .split("[ ,/-]+")));
        if (words.size() == 1 && CENTRE.contains(words.get(0))) {
            return Optional.of(new NotebookPlace.PartOf(Depth.MIDDLE, Optional.of(Across.CENTRE)));
        }
        if (words.size() == 1) {
            return Optional.ofNullable(DEPTHS.get(words.get(0)))
                    .map(depth -> new NotebookPlace.PartOf(depth, Optional.empty()));
        }
        return words.size() == 2
                ? both(words.get(0), words.get(1)).or(() -> both(words.get(1), words.get(0)))
                : Optional.empty();
    }

    private static Optional<NotebookPlace> both(String back, String side) {
        Optional<Depth> depth = Optional.ofNullable(CENTRE.contains(back) ? Depth.MIDDLE : DEPTHS.get(back));
        Optional<Across> across = Optional.ofNullable(CENTRE.contains(side) ? Across.CENTRE : SIDES.get(side));
        return depth.flatMap(known -> across.map(beside -> new NotebookPlace.PartOf(known, Optional.of(beside))));
    }
}
