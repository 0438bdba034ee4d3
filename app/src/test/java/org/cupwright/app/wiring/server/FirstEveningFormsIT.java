package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.desk.begin.MadePlace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A club's first evening by its forms, without script: eighteen greens to a published plan and its card. */
class FirstEveningFormsIT {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T18:00:00Z"), ZoneOffset.UTC);
    private static final String PASSWORD = "three plain oars";
    private static final int GREENS = 18;
    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");
    private static final Pattern SEEN = Pattern.compile("name=\"seen\" value=\"([0-9]+)\"");

    @TempDir
    private Path folder;

    private Caller superintendent(OpenOffice office) {
        Caller ida = new Caller(office);
        assertThat(ida.join(office.code(), "Ida", PASSWORD)).isEqualTo("/sign-in?joined");
        assertThat(ida.signIn("Ida", PASSWORD)).isEqualTo("/");
        return ida;
    }

    /** A form that leads on to an address. */
    private static void on(Caller caller, String page, String form, Map<String, String> fields, String next) {
        HttpResponse<String> answer = caller.post(page, form, fields);
        assertThat(Caller.leadsTo(answer))
                .as("%s %s", form, answer.statusCode())
                .isEqualTo(next);
    }

    private static Map<String, String> place(Map<String, String> at) {
        Map<String, String> place = new HashMap<>(at);
        place.putAll(Map.of("name", "Three Birches", "zone", "UTC", "id", ""));
        place.putAll(Map.of("desk.language", "en", "desk.units", "paces"));
        return place;
    }

    /** An oval some paces long, each a little other than the one before. */
    private static Map<String, String> paced(int hole) {
        Map<String, String> typed = new HashMap<>(Map.of(
                "green", "0", "hole", Integer.toString(hole), "unit", "paces", "frontEast", "", "frontNorth", ""));
        typed.putAll(Map.of("play", hole % 2 == 0 ? "south-west" : "20", "length", Integer.toString(28 + hole % 5)));
        String[][] rows = {
            {"4", "6½", "7"}, {"9", "10", "9,5"}, {"15", "11", "10"}, {"21", "9.5", "9"}, {"25", "6", "6"}
        };
        for (int i = 0; i < rows.length; i++) {
            typed.put("on" + (i + 1), rows[i][0]);
            typed.put("left" + (i + 1), rows[i][1]);
            typed.put("right" + (i + 1), rows[i][2]);
        }
        return typed;
    }

    /** What was typed before the server was started anew is there after it. */
    @Test
    void pacedGreensToACard() throws InterruptedException {
        Path data = folder.resolve("paced");
        try (OpenOffice office = new OpenOffice(data, CLOCK, false)) {
            Caller ida = superintendent(office);
            assertThat(Caller.leadsTo(ida.get("/"))).isEqualTo("/begin");
            HttpResponse<String> wrong =
                    ida.post("/begin/place", "/begin/place", place(Map.of("longitude", "east", "latitude", "52")));
            assertThat(wrong.statusCode()).isEqualTo(422);
            assertThat(wrong.body()).contains("That is not a number", "Here: east", "value=\"Three Birches\"");
            Map<String, String> at = Map.of("longitude", "12,0", "latitude", "52.0");
            on(ida, "/begin/place", "/begin/place", place(at), "/begin/greens");
            for (int hole = 1; hole <= GREENS; hole++) {
                on(ida, "/begin/greens/paced", "/begin/greens/paced", paced(hole), "/begin/greens/paced");
            }
        }
        try (OpenOffice office = new OpenOffice(data, CLOCK, false)) {
            Caller ida = new Caller(office);
            ida.signIn("Ida", PASSWORD);
            assertThat(Caller.leadsTo(ida.get("/begin"))).isEqualTo("/begin/settings");
            assertThat(ida.get("/begin/greens").body()).contains("hole 18");
            finish(ida, "place unknown");
        }
    }

    @Test
    void aMapToACard() throws InterruptedException, IOException {
        Path map = MadeCourse.outlines(Files.createDirectories(folder.resolve("files")), GREENS);
        try (OpenOffice office = new OpenOffice(folder.resolve("map"), CLOCK, false)) {
            Caller ida = superintendent(office);
            on(ida, "/begin/place", "/begin/place", place(MadePlace.ofMap()), "/begin/greens");
            HttpResponse<String> none = sent(ida, office, "", "");
            assertThat(none.statusCode()).isEqualTo(422);
            assertThat(none.body()).contains("No file was chosen");
            HttpResponse<String> broken = sent(ida, office, "bad.geojson", "{\"type\":");
            assertThat(broken.statusCode()).isEqualTo(422);
            HttpResponse<String> taken = sent(ida, office, "greens.geojson", Files.readString(map));
            assertThat(Caller.leadsTo(taken)).isEqualTo("/begin/greens");
            finish(ida, "from a map");
        }
    }

    /** The settings as they come, a look, the course, tomorrow's plan published, its two papers. */
    private static void finish(Caller ida, String way) throws InterruptedException {
        assertThat(ida.get("/begin/numbers").body()).contains(way);
        on(ida, "/begin/settings", "/begin/settings", Map.of("place.paceMetres", "0.9"), "/begin/look");
        assertThat(ida.get("/begin/look").body())
                .doesNotContain("Still missing")
                .contains("18 greens");
        on(ida, "/begin/look", "/begin/finish", Map.of(), "/begin/print");
        String planned = Caller.leadsTo(ida.post("/begin/print", "/begin/plan?date=2026-06-21", Map.of()));
        assertThat(ida.worked(planned)).startsWith("/begin/print");
        Matcher seen = SEEN.matcher(ida.get("/begin/print").body());
        assertThat(seen.find()).isTrue();
        on(ida, "/begin/print", "/publish?date=2026-06-21", Map.of("seen", seen.group(1)), "/?date=2026-06-21");
        assertThat(ida.awaited("/?date=2026-06-21").body()).contains("data-hole=\"18\"", "published");
        for (String paper : new String[] {"card", "sheet"}) {
            assertThat(ida.get("/paper/" + paper + "?date=2026-06-21").body()).startsWith("%PDF-");
        }
        assertThat(ida.get("/begin/greens").statusCode())
                .as("closed once the course is there")
                .isEqualTo(422);
        assertThat(Caller.leadsTo(ida.get("/begin"))).isEqualTo("/begin/print");
    }

    /** A file as a browser sends it. */
    private static HttpResponse<String> sent(Caller caller, OpenOffice office, String name, String content) {
        Matcher token = TOKEN.matcher(caller.get("/begin/greens").body());
        assertThat(token.find()).isTrue();
        String part = "--made\r\nContent-Disposition: form-data; name=\"%s\"%s\r\n\r\n%s\r\n";
        String body = part.formatted("_csrf", "", token.group(1))
                + part.formatted("file", "; filename=\"" + name + "\"", content)
                + "--made--\r\n";
        return caller.send(HttpRequest.newBuilder(URI.create(office.at("/begin/greens/map")))
                .header("Content-Type", "multipart/form-data; boundary=made")
                .POST(BodyPublishers.ofString(body))
                .build());
    }
}
