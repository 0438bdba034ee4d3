package org.cupwright.app.field;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.texts.Texts;
import org.cupwright.holelocation.RuleId;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The words of the changer's page, which has none of its own: where something comes in there stand {0} to {3}. */
record RoundWords(Texts texts) {
    /** Its own words; those of the logbook for what is written down; and those by which spots are told of. */
    private static final List<String> BEGINNINGS = List.of("round.", "log.kind.", "area.", "difficulty.", "verdict.");

    /** Said by card, desk and page alike. */
    private static final List<String> SHARED = List.of(
            "first.title",
            "goodJustThere",
            "goodWithin",
            "justThere",
            "place.coordinates",
            "sameWithin",
            "sheet.caution.title",
            "sheet.card.before",
            "sheet.card.load",
            "sheet.card.soil",
            "sheet.card.soil.in",
            "sheet.card.soil.none",
            "sheet.card.soil.out",
            "sheet.fromLeft",
            "sheet.fromRight",
            "sheet.on",
            "sheet.work.title",
            "signal.plugsRunHigh",
            "signal.plugsRunLow",
            "slopeNotChecked");

    ObjectNode all() {
        ObjectNode words = Json.object();
        Stream<String> ofKinds = BEGINNINGS.stream().flatMap(beginning -> texts.keys(beginning).stream());
        Stream<String> rules = Arrays.stream(RuleId.values()).map(rule -> "rule." + rule.id());
        Stream.of(SHARED.stream(), ofKinds, rules)
                .flatMap(keys -> keys)
                .forEach(key -> words.put(key, texts.say(key, "{0}", "{1}", "{2}", "{3}")));
        return words;
    }

    /** As it may stand in a page: nothing in it ends the element. */
    String inPage() {
        return JsonMapper.shared().writeValueAsString(all()).replace("<", "\\u003c");
    }
}
