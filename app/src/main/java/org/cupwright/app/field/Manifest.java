package org.cupwright.app.field;

import java.util.Locale;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** By which a telephone puts the page among its own programs, in the words of whoever put it there. */
record Manifest(Texts texts) {
    private static final String ROUND = "/round";

    /** Paper and ink of the pages. */
    private static final String BACKGROUND = "#fdfaf3";

    private static final String THEME = "#25221d";

    ObjectNode document() {
        ObjectNode manifest = Json.object();
        manifest.put("name", texts.say("round.app.name"));
        manifest.put("short_name", texts.say("round.title"));
        manifest.put("description", texts.say("round.app.says"));
        manifest.put("lang", texts.language());
        manifest.put("dir", "ltr");
        manifest.put("id", ROUND);
        manifest.put("start_url", ROUND);
        manifest.put("scope", ROUND);
        manifest.put("display", "standalone");
        manifest.put("background_color", BACKGROUND);
        manifest.put("theme_color", THEME);
        ArrayNode icons = manifest.putArray("icons");
        for (PageIcon icon : PageIcon.values()) {
            ObjectNode one = icons.addObject();
            one.put("src", ROUND + "/icon/" + icon.name().toLowerCase(Locale.ROOT));
            one.put("sizes", icon.pixels() + "x" + icon.pixels());
            one.put("type", "image/png");
            one.put("purpose", icon.purpose());
        }
        return manifest;
    }
}
