package org.cupwright.app.field;

import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The words of the changer's page, which has none of its own: where something comes in there stand {0} to {3}. */
record RoundWords(Texts texts) {
    private static final String OWN = "round.";

    /** Said by card and page alike. */
    private static final List<String> SHARED = List.of(
            "first.title",
            "sheet.caution.title",
            "sheet.card.before",
            "sheet.card.load",
            "sheet.card.soil",
            "sheet.card.soil.in",
            "sheet.card.soil.none",
            "sheet.card.soil.out",
            "sheet.work.title");

    ObjectNode all() {
        ObjectNode words = Json.object();
        Stream.concat(SHARED.stream(), texts.keys(OWN).stream())
                .forEach(key -> words.put(key, texts.say(key, "{0}", "{1}", "{2}", "{3}")));
        return words;
    }

    /** As it may stand in a page: nothing in it ends the element. */
    String inPage() {
        return JsonMapper.shared().writeValueAsString(all()).replace("<", "\\u003c");
    }
}
