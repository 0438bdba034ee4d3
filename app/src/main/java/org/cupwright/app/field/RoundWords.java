package org.cupwright.app.field;

import java.util.List;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The words of the changer's page, which has none of its own: where something comes in there stand {0} and {1}. */
record RoundWords(Texts texts) {
    private static final List<String> KEYS = List.of(
            "first.title",
            "sheet.caution.title",
            "sheet.card.before",
            "sheet.card.load",
            "sheet.card.soil",
            "sheet.card.soil.in",
            "sheet.card.soil.none",
            "sheet.card.soil.out",
            "sheet.work.title",
            "round.again",
            "round.all",
            "round.asPlanned",
            "round.done.cut",
            "round.done.elsewhere",
            "round.done.left",
            "round.elsewhere",
            "round.forget",
            "round.from",
            "round.hole",
            "round.keep",
            "round.keepsNothing",
            "round.left",
            "round.loadAgain",
            "round.loadedAt",
            "round.loading",
            "round.next",
            "round.noDay",
            "round.noPlan",
            "round.notTaken",
            "round.odd",
            "round.odd.note",
            "round.odd.now",
            "round.odd.photo",
            "round.odd.severity",
            "round.odd.soon",
            "round.odd.text",
            "round.offline",
            "round.on",
            "round.otherDay",
            "round.refused",
            "round.saveFile",
            "round.send",
            "round.sent",
            "round.side",
            "round.side.left",
            "round.side.right",
            "round.signIn",
            "round.signedOut",
            "round.title",
            "round.unsent.many",
            "round.unsent.none",
            "round.unsent.one",
            "round.waiting");

    ObjectNode all() {
        ObjectNode words = Json.object();
        KEYS.forEach(key -> words.put(key, texts.say(key, "{0}", "{1}")));
        return words;
    }

    /** As it may stand in a page: nothing in it ends the element. */
    String inPage() {
        return JsonMapper.shared().writeValueAsString(all()).replace("<", "\\u003c");
    }
}
