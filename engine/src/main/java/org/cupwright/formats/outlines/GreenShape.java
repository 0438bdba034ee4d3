package org.cupwright.formats.outlines;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Outline;
import org.cupwright.message.Message;

/**
 * One green of a map file.
 *
 * @param outline in the course's frame
 * @param refs the holes its own tag names; a green of two holes names both: {@code ref=1;10}
 * @param where which feature it is
 */
record GreenShape(Outline outline, List<String> refs, Message where) {
    GreenShape {
        refs = List.copyOf(refs);
    }

    static GreenShape of(Outline outline, MapFeature feature) {
        return new GreenShape(outline, refs(feature.tag("ref")), feature.where());
    }

    private static List<String> refs(Optional<String> tag) {
        return tag.stream()
                .flatMap(text -> Arrays.stream(text.split("[;,/]")))
                .map(String::strip)
                .filter(ref -> !ref.isEmpty())
                .toList();
    }
}
