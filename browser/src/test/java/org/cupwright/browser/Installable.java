package org.cupwright.browser;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;

/** What Chromium itself has against putting a page among the telephone's own programs. */
final class Installable {
    private Installable() {}

    /** The reasons, and what is wrong with the manifest; none: it offers to install it. */
    static List<String> errors(Page page) {
        CDPSession asked = page.context().newCDPSession(page);
        List<String> errors = new ArrayList<>();
        JsonObject manifest = asked.send("Page.getAppManifest");
        each(manifest, "errors", errors);
        if (manifest.get("url").getAsString().isEmpty()) {
            errors.add("no manifest");
        }
        each(asked.send("Page.getInstallabilityErrors"), "installabilityErrors", errors);
        asked.detach();
        return errors;
    }

    private static void each(JsonObject answer, String name, List<String> into) {
        for (JsonElement one : answer.getAsJsonArray(name)) {
            into.add(one.toString());
        }
    }
}
