package org.cupwright.formats.outlines;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.cupwright.course.Outline;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.message.Message;

/**
 * One green of a map file.
 *
 * @param outline in the course's frame
 * @param refs the holes its own tag names; a green of two holes names both: {@code ref=1;10}
 * @param loop the part of the course that it belongs to; of a practice green what it is called
 * @param practice whether it is a practice green
 * @param cups how many holes are cut in it, where the map says so
 * @param where which feature it is
 */
record GreenShape(
        Outline outline, List<String> refs, Optional<String> loop, boolean practice, OptionalInt cups, Message where) {
    /** Tags of our own: nothing that is published has words for these. */
    static final String LOOP = "loop";

    private static final String PRACTICE = "practice";
    private static final String CUPS = "cups";

    /** More than any practice green holds; our choice. */
    private static final int MOST_CUPS = 18;

    GreenShape {
        refs = List.copyOf(refs);
    }

    static GreenShape of(Outline outline, MapFeature feature, List<Finding> findings) {
        boolean practice = feature.is(PRACTICE, "yes");
        return new GreenShape(
                outline,
                refs(feature.tag("ref")),
                feature.tag(practice ? "name" : LOOP),
                practice,
                feature.number(CUPS, 1, MOST_CUPS, FindingKind.CUPS_NOT_READABLE, findings),
                feature.where());
    }

    /** The name of one of a practice green's holes, counted from 1: P1, P2; P1a where the green itself is P1. */
    String cupName(int cup) {
        String name = practiceName();
        if (cups.orElse(1) == 1) {
            return name;
        }
        return name.matches(".*[0-9]") ? name + (char) ('a' + cup - 1) : name + cup;
    }

    /** What a practice green's holes begin with. */
    String practiceName() {
        return refs.isEmpty() ? "P" : refs.get(0);
    }

    static List<String> refs(Optional<String> tag) {
        return tag.stream()
                .flatMap(text -> Arrays.stream(text.split("[;,/]")))
                .map(String::strip)
                .filter(ref -> !ref.isEmpty())
                .toList();
    }
}
