package org.cupwright.app.field;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.Flags;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.sheets.WhoAndWhen;
import org.cupwright.app.storage.DayRound.Share;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a carried day says of its round: how play begins, who has which hole and by when it is to be ready, and which
 * flags each person takes along. Whose holes come first is for the phone to say: it knows who carries it.
 */
record CarriedOrder(DaySheet sheet, Texts texts) {
    /** Adds it to a day whose holes are there. */
    void addTo(ObjectNode day) {
        sheet.round().filter(RoundOfDay::tells).ifPresent(round -> {
            ArrayNode says = day.putArray("round");
            round.says().forEach(one -> says.add(texts.say(one)));
            flags(round, day.putArray("people"));
            Map<String, SheetHole> holes = new HashMap<>();
            sheet.holes().forEach(hole -> holes.put(hole.hole(), hole));
            for (JsonNode part : day.path("parts")) {
                for (JsonNode hole : part.path("holes")) {
                    ObjectNode out = (ObjectNode) hole;
                    hole(holes.get(out.path("hole").asString()), round, out);
                }
            }
        });
    }

    private void hole(SheetHole hole, RoundOfDay round, ObjectNode out) {
        WhoAndWhen words = WhoAndWhen.of(sheet, texts);
        round.shares().who(hole.hole()).ifPresent(person -> out.put("person", person));
        words.who(hole).ifPresent(who -> out.put("who", who));
        words.cutBy(hole).ifPresent(by -> out.put("cutBy", by));
    }

    private void flags(RoundOfDay round, ArrayNode people) {
        for (Share share : round.shares().all()) {
            ObjectNode person = people.addObject();
            person.put("person", share.person());
            List<SheetHole> own = sheet.holes().stream()
                    .filter(hole -> share.holes().contains(hole.hole()))
                    .toList();
            ArrayNode flags = person.putArray("flags");
            new Flags(texts, sheet.policy()).load(sheet.of(own)).forEach(flags::add);
        }
    }
}
