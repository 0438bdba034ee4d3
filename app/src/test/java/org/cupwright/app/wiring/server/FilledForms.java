package org.cupwright.app.wiring.server;

import static java.util.Map.entry;

import java.util.Map;
import org.cupwright.app.visit.access.Route;
import org.cupwright.democourse.DemoCourse;

/** Every form of the pages, filled in so far that it is understood: what it asks for is done, or told why not. */
final class FilledForms {
    private static final String NOBODYS = "00000000-0000-0000-0000-000000000000";
    /** No plan has this number. */
    private static final Map<String, String> SEEN = Map.of("seen", "987654321");

    private static final Map<String, String> NOBODY = Map.of("name", "Nobody Here", "role", "READER");
    private static final Map<String, String> ENTRY = Map.of("about", "0123abcd", "form", NOBODYS);

    private static final Map<String, String> DRAWN =
            Map.of("draw", "nothing", "corners", "0,0 1,0", "version", "987654321");

    private static final Map<String, Map<String, String>> FIELDS = Map.ofEntries(
            entry("/sign-in", Map.of("name", "Nobody At The Door", "password", "none of these")),
            entry("/sign-out", Map.of()),
            entry("/join", Map.of("code", "none", "name", "Nobody Here", "password", "none of these")),
            entry("/wish", Map.of("cupwright-theme", "dark")),
            entry("/plan", SEEN),
            entry("/publish", SEEN),
            entry("/withdraw", SEEN),
            entry("/who-cuts", Map.of("seen", "987654321", "start", "SHOTGUN", "person", "Ash", "holes", "1-9, 14")),
            entry("/people/invite", Map.of("name", "Invited", "role", "READER")),
            entry("/people/role", NOBODY),
            entry("/people/remove", NOBODY),
            entry("/people/erase", Map.of("name", "Nobody Here", "typed", "Nobody Here")),
            entry("/people/phones/end", Map.of("phone", NOBODYS)),
            entry("/password/pin", Map.of("old", "none of these", "pin", "2468")),
            entry("/round/pin", Map.of("name", "Nobody Here", "pin", "2468")),
            entry("/round/share", Map.of()),
            entry("/password", Map.of("old", "none of these", "fresh", "three other oars")),
            entry("/green/{hole}/set", Map.of("at", "0,0", "on", "2026-06-20:0")),
            entry("/green/{hole}/keep-off", Map.of("at", "0,0", "within", "2", "seen", "0")),
            entry("/green/{hole}/free", SEEN),
            entry("/green/{hole}/ground", Map.of("at", "0,0", "within", "2", "use", "closed", "reason", "wear")),
            entry("/green/{hole}/level", Map.of("at", "0,0", "front", "1", "left", "1")),
            entry("/log/add", Map.of("about", "speed-read", "form", NOBODYS, "part.feet", "10", "sure", "yes")),
            entry("/log/correct", ENTRY),
            entry("/log/withdraw", ENTRY),
            entry("/log/seen", ENTRY),
            entry(
                    "/round/entries/{id}",
                    Map.of(
                            "entry",
                            "{\"kind\": \"noteToNext\", \"day\": \"2026-06-20\", \"at\": \"2026-06-20T05:10:00Z\","
                                    + " \"parts\": {\"text\": \"invented\"}}")),
            entry(
                    "/round/training/{id}",
                    Map.of(
                            "entry",
                            "{\"kind\": \"practised\", \"exercise\": \"paces\", \"best\": 3, \"last\": 3,"
                                    + " \"day\": \"2026-06-20\", \"at\": \"2026-06-20T05:10:00Z\"}")),
            entry("/course/training/sign-off", Map.of("name", "Nobody Here", "skill", "CUP")),
            entry("/course/training/withdraw", Map.of("name", "Nobody Here", "skill", "PLUG", "reason", "invented")),
            entry("/course/training/correct", Map.of("record", NOBODYS, "reason", "invented")),
            entry("/course/training/trainer", Map.of("name", "Nobody Here", "may", "true")),
            entry("/work/{id}/stop", Map.of()),
            entry("/weeks/plan", Map.of("days", "0")),
            entry("/weeks/change", Map.of("seen", "none")),
            entry("/weeks/undo", Map.of("seen", "none")),
            entry("/course/settings", Map.of("key", "desk.nothing", "value", "1", "from", "2026-06-20")),
            entry("/course/sheet/open", Map.of()),
            entry("/course/sheet/anew", Map.of()),
            entry("/course/sheet/close", Map.of()),
            entry("/course/sheet/office", Map.of("address", "https://greens.example.org")),
            entry("/course/files/look", Map.of("what", "weather", "weather.file", "no table")),
            entry("/course/files/bring", Map.of("parcel", NOBODYS)),
            entry("/begin/place", Map.of("name", "Three Birches")),
            entry("/begin/greens/map", Map.of("file.file", "no map")),
            entry("/begin/greens/remove", Map.of("green", "1")),
            entry("/begin/greens/picture", Map.of("name", "from above")),
            entry("/begin/greens/traced", Map.of("corners", "")),
            entry("/begin/greens/paced", Map.of("green", "0")),
            entry("/begin/greens/grid", Map.of("green", "0")),
            entry("/begin/greens/grid/away", Map.of("green", "1", "hazard", "1")),
            entry("/course/ground/{hole}/look", DRAWN),
            entry("/course/ground/{hole}/keep", DRAWN),
            entry("/course/ground/{hole}/play", Map.of("play", "90", "version", "987654321")),
            entry("/course/ground/{hole}/back", Map.of("version", "987654321")),
            entry("/begin/numbers", Map.of("number1", "1")),
            entry("/begin/settings", Map.of("place.paceMetres", "0.9")),
            entry("/begin/finish", Map.of()),
            entry("/begin/plan", Map.of()));

    private static final Map<String, String> ADDRESSES = Map.ofEntries(
            entry("/assets/**", "/assets/office.css"),
            entry("/webjars/**", "/webjars/htmx.org/dist/htmx.min.js"),
            entry("/round/files/**", "/round/files/round.js"),
            entry("/round/manifest/{language}", "/round/manifest/es"),
            entry("/round/icon/{icon}", "/round/icon/small"),
            entry("/round/entries/{id}", "/round/entries/" + NOBODYS),
            entry("/sheet/{link}", "/sheet/" + DemoCourse.ID),
            entry("/round/training/{id}", "/round/training/" + NOBODYS),
            entry("/course/training/person", "/course/training/person?name=Nobody"),
            entry("/sheet/{course}", "/sheet/" + DemoCourse.ID),
            entry("/paper/{kind}", "/paper/card"),
            entry("/weeks/paper/{kind}", "/weeks/paper/table?days=7"),
            entry("/now", "/now?seen=0&as=0"),
            entry("/weeks/why", "/weeks/why?on=2026-06-20&hole=7"),
            entry("/weeks/wish", "/weeks/wish?kind=free&on=2026-06-20&hole=7"),
            entry("/green/{hole}/spot", "/green/7/spot?at=0,0"),
            entry("/course/findings", "/course/findings?hole=7"),
            entry("/begin/plan", "/begin/plan?date=someday"),
            entry("/work/{id}", "/work/" + NOBODYS),
            entry("/work/{id}/stop", "/work/" + NOBODYS + "/stop"));

    private FilledForms() {}

    /** An address of that pattern, as a page of ours writes it. */
    static String address(String pattern) {
        return ADDRESSES.getOrDefault(pattern, pattern.replaceAll("\\{[^}]*}", "7"));
    }

    static boolean isWithFiles(Route route) {
        return of(route).keySet().stream().anyMatch(name -> name.endsWith(".file"));
    }

    /** What is sent. A form that is not among these is a slip here. */
    static Map<String, String> of(Route route) {
        if (!FIELDS.containsKey(route.pattern())) {
            throw new IllegalStateException("nothing is filled in for " + route.pattern());
        }
        return FIELDS.get(route.pattern());
    }
}
