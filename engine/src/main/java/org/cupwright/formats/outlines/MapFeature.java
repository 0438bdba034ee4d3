package org.cupwright.formats.outlines;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.Excerpt;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Geometry;

/**
 * One feature of a map file: a shape with tags.
 *
 * @param shape in the file's own frame, east first
 * @param tags properties or tags, all as text
 * @param where which feature of the file it is
 */
public record MapFeature(Geometry shape, Map<String, String> tags, Message where) {
    private static final List<String> TELLING = List.of("golf", "leisure", "kind", "ref", "hole", "name", "@id", "id");

    /** Tags that are kept, listed or told. */
    static final Set<String> NAMES = Set.of(
            "golf",
            "leisure",
            "name",
            "ref",
            "loop",
            "hole",
            "tee",
            "par",
            "dist",
            "practice",
            "cups",
            "kind",
            "id",
            "person",
            "date",
            "since",
            "until",
            "radius",
            "radiusMetres");

    public MapFeature {
        tags = Map.copyOf(tags);
    }

    /** The value of a tag, when it is there and not blank. */
    public Optional<String> tag(String key) {
        return Optional.ofNullable(tags.get(key)).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** Whether a tag has a value. */
    public boolean is(String key, String value) {
        return value.equals(tags.get(key));
    }

    /** A tag's whole number; empty with a finding where it says anything but one from least to most. */
    OptionalInt number(String key, int least, int most, FindingKind notReadable, List<Finding> findings) {
        Optional<String> text = tag(key);
        int digits = Integer.toString(most).length();
        int number = text.filter(written -> written.matches("[0-9]{1," + digits + "}"))
                .map(Integer::parseInt)
                .orElse(0);
        if (number >= least && number <= most) {
            return OptionalInt.of(number);
        }
        text.ifPresent(slip -> findings.add(Finding.of(notReadable, where, Excerpt.of(slip))));
        return OptionalInt.empty();
    }

    /** The tags by which a person finds the feature again: {@code golf=green ref=7}. */
    static String label(Map<String, String> tags) {
        return TELLING.stream()
                .filter(tags::containsKey)
                .map(key -> key + "=" + Excerpt.of(tags.get(key)))
                .collect(Collectors.joining(" "));
    }

    /** A trouble that costs one feature and not the file; its advice stays that of the trouble. */
    static Finding leftOut(Finding trouble) {
        Message.Argument why = new Message.Translated(trouble.kind().key());
        return new Finding(
                FindingKind.FEATURE_LEFT_OUT, trouble.place(), trouble.where(), why, List.of(), trouble.tryThis());
    }
}
