package org.cupwright.formats.outlines;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.message.Message;

/** How findings speak of tagged features. */
final class Tags {
    private static final List<String> TELLING = List.of("golf", "leisure", "kind", "ref", "hole", "name", "@id", "id");

    private Tags() {}

    /** The tags by which a person finds the feature again: {@code golf=green ref=7}. */
    static String label(Map<String, String> tags) {
        return TELLING.stream()
                .filter(tags::containsKey)
                .map(key -> key + "=" + tags.get(key))
                .collect(Collectors.joining(" "));
    }

    /** A trouble that costs one feature and not the file; its advice stays that of the trouble. */
    static Finding leftOut(Finding trouble) {
        Message.Argument why = new Message.Translated(trouble.kind().key());
        return new Finding(
                FindingKind.FEATURE_LEFT_OUT, trouble.place(), trouble.where(), why, List.of(), trouble.tryThis());
    }
}
