package org.cupwright.app.wiring;

import java.net.http.HttpResponse;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.cupwright.app.wiring.server.Caller;

/** Somebody who writes into the logbook by its page, one entry after another. */
final class EntriesByPage {
    private static final int SEEN_NEXT = 302;

    private final Caller caller;
    private final Map<String, String> token;

    /** @param caller signed in */
    EntriesByPage(Caller caller) {
        this(caller, caller.token("/log"));
    }

    /** @param token of a page that was open before */
    EntriesByPage(Caller caller, Map<String, String> token) {
        this.caller = caller;
        this.token = token;
    }

    /** An invented reading of the green speed; its form's id is the entry's. */
    HttpResponse<String> speedRead(UUID form) {
        Map<String, String> fields = new TreeMap<>(token);
        fields.putAll(Map.of("about", "speed-read", "form", form.toString(), "part.feet", "10", "sure", "yes"));
        return caller.postAsItIs("/log/add", fields);
    }

    /** Whether the page said that what was sent is kept. */
    static boolean isKept(HttpResponse<String> answer) {
        return answer.statusCode() == SEEN_NEXT && Caller.leadsTo(answer).startsWith("/log?");
    }
}
