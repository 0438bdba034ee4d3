package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeMorning;
import org.cupwright.app.visit.access.Route;
import org.cupwright.app.visit.access.Routes;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Phones on which somebody stays signed in, and those that several share, by the real server. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PhonesIT {
    private static final String FIRST = "Invented Person";
    private static final String ASH = "Ash Invented";
    private static final String BO = "Bo Invented";
    private static final String PASSWORD = "three plain oars";
    private static final String COOKIE = "cupwright-phone";
    private static final String SESSION = "cupwright";
    private static final String DAY = "2026-06-20";
    private static final Pattern CODE = Pattern.compile("class=\"code\">([^<]+)<");
    private static final Pattern PHONE = Pattern.compile("name=\"phone\" value=\"([^\"]+)\"");

    private final SetClock clock = new SetClock();
    private Path data;
    private OpenOffice office;

    /** A phone, and what its browser keeps. */
    private record Phone(SeenCookies cookies, Caller caller) {}

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        data = folder.resolve("data");
        MadeMorning.copyTo(data);
        office = new OpenOffice(data, clock, false);
        assertThat(phone().caller().join(office.code(), FIRST, PASSWORD)).isEqualTo("/sign-in?joined");
        pin(joined(ASH, "CHANGER"), "2468");
        pin(joined(BO, "CHANGER"), "97531");
    }

    @AfterAll
    void close() throws Exception {
        office.close();
    }

    private Phone phone() {
        SeenCookies cookies = new SeenCookies();
        return new Phone(
                cookies,
                new Caller(path -> office.at(path), HttpClient.newBuilder().cookieHandler(cookies)));
    }

    private Phone in(String name) {
        Phone phone = phone();
        assertThat(phone.caller().signIn(name, PASSWORD)).isEqualTo("/");
        return phone;
    }

    private Phone joined(String name, String role) {
        String page = in(FIRST)
                .caller()
                .post("/people", "/people/invite", Map.of("name", name, "role", role))
                .body();
        Matcher code = CODE.matcher(page);
        assertThat(code.find()).isTrue();
        assertThat(phone().caller().join(code.group(1), name, PASSWORD)).isEqualTo("/sign-in?joined");
        return in(name);
    }

    private static void pin(Phone phone, String pin) {
        assertThat(Caller.leadsTo(
                        phone.caller().post("/password", "/password/pin", Map.of("old", PASSWORD, "pin", pin))))
                .isEqualTo("/password?pin");
    }

    private Phone kept(String name) {
        Phone phone = phone();
        Map<String, String> form = Map.of("name", name, "password", PASSWORD, "keep", "yes");
        assertThat(Caller.leadsTo(phone.caller().post("/sign-in", "/sign-in", form)))
                .isEqualTo("/");
        return phone;
    }

    private Phone shared() {
        Phone phone = in(FIRST);
        assertThat(Caller.leadsTo(phone.caller().post("/people", "/round/share", Map.of())))
                .isEqualTo("/round");
        return phone;
    }

    private static JsonNode json(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JsonMapper.shared().readTree(answer.body());
    }

    private static String who(Phone phone) {
        HttpResponse<String> answer = phone.caller().get("/round/who");
        return answer.statusCode() == 200 ? json(answer).path("person").asString() : Caller.leadsTo(answer);
    }

    private String pinned(Phone phone, String name, String pin) {
        JsonNode mark = json(phone.caller().get("/round/phone"));
        HttpRequest request = phone.caller()
                .form("/round/pin", Map.of("name", name, "pin", pin))
                .header(mark.path("markName").asString(), mark.path("mark").asString())
                .build();
        return json(phone.caller().send(request)).path("came").asString();
    }

    private HttpResponse<String> send(Phone phone, UUID id, String by, String hole) {
        JsonNode mark = json(phone.caller().get("/round/who"));
        String entry = "{\"kind\": \"cupChanged\", \"hole\": \"" + hole + "\", \"day\": \"" + DAY
                + "\", \"at\": \"2026-06-20T05:10:00Z\", \"asPlanned\": true, \"by\": \"" + by + "\"}";
        String part = "--x\r\nContent-Disposition: form-data; name=\"entry\"\r\n\r\n" + entry + "\r\n--x--\r\n";
        return phone.caller()
                .send(HttpRequest.newBuilder(URI.create(office.at("/round/entries/" + id)))
                        .header("Content-Type", "multipart/form-data; boundary=x")
                        .header(
                                mark.path("markName").asString(),
                                mark.path("mark").asString())
                        .POST(BodyPublishers.ofString(part, StandardCharsets.UTF_8))
                        .build());
    }

    /** Who wrote what is kept of a hole's changes that day. */
    private List<String> writers(String hole) {
        InProcess.Result log = new InProcess(data).run("log", "list", "--date", DAY, "--json");
        List<String> writers = new ArrayList<>();
        JsonMapper.shared().readTree(log.out()).path("facts").forEach(one -> {
            if (one.at("/payload/kind").asString().equals("cupChanged")
                    && one.path("happenedAt").asString().startsWith(DAY)
                    && one.path("hole").asString().equals(hole)) {
                writers.add(one.path("person").asString());
            }
        });
        return writers;
    }

    private void officeAnew() throws Exception {
        office.close();
        office = new OpenOffice(data, clock, false);
    }

    @Test
    void whoeverIsKeptIsInAfterARestartAndAfterMonths() throws Exception {
        Phone ash = kept(ASH);
        assertThat(ash.cookies().lines(COOKIE))
                .singleElement()
                .satisfies(line -> assertThat(line.split("; "))
                        .contains("HttpOnly", "SameSite=Lax", "Path=/")
                        .doesNotContain("Secure"));
        officeAnew();
        assertThat(who(ash)).isEqualTo(ASH);
        for (int month = 0; month < 7; month++) {
            clock.forward(Duration.ofDays(30));
            assertThat(who(ash)).isEqualTo(ASH);
        }
        clock.forward(Duration.ofDays(31));
        assertThat(who(ash)).isEqualTo("/sign-in?ended");
        assertThat(who(ash)).isEqualTo("/sign-in");
    }

    /** Without the tick a restart signs everybody out. */
    @Test
    void whoeverDidNotTickIsNotKept() throws Exception {
        Phone ash = in(ASH);
        officeAnew();
        assertThat(ash.cookies().lines(COOKIE)).isEmpty();
        assertThat(who(ash)).isEqualTo("/sign-in");
    }

    /** What was written down from the browser is shown by another one after the owner came back. */
    @Test
    void aCopiedCookieEndsTheSignIn() throws Exception {
        Phone ash = kept(ASH);
        Phone thief = phone();
        thief.cookies().set(COOKIE, ash.cookies().value(COOKIE));
        officeAnew();
        assertThat(who(ash)).isEqualTo(ASH);
        clock.forward(Duration.ofHours(13));
        assertThat(who(ash)).isEqualTo(ASH);
        assertThat(who(thief)).isEqualTo("/sign-in");
        assertThat(who(ash)).as("the session of the phone is over as well").isEqualTo("/sign-in?ended");
        assertThat(in(FIRST).caller().get("/people").body()).contains("as a copy would");
    }

    @Test
    void signingOutAnotherPasswordAndASuperintendentEndIt() {
        Phone out = kept(BO);
        String was = out.cookies().value(COOKIE);
        out.caller().post("/password", "/sign-out", Map.of());
        Phone again = phone();
        again.cookies().set(COOKIE, was);
        assertThat(who(again)).isEqualTo("/sign-in");

        Phone ended = kept(BO);
        Phone first = in(FIRST);
        String page = first.caller().get("/people").body();
        Matcher phone = PHONE.matcher(page.substring(page.indexOf(BO + ": signed in")));
        assertThat(phone.find()).isTrue();
        first.caller().post("/people", "/people/phones/end", Map.of("phone", phone.group(1)));
        assertThat(who(ended)).isEqualTo("/sign-in?ended");

        Phone changed = kept(BO);
        Phone elsewhere = kept(BO);
        changed.caller().post("/password", "/password", Map.of("old", PASSWORD, "fresh", "four other plain oars"));
        assertThat(who(elsewhere)).isEqualTo("/sign-in?ended");
        assertThat(elsewhere.caller().signIn(BO, "four other plain oars")).isEqualTo("/");
        elsewhere.caller().post("/password", "/password", Map.of("old", "four other plain oars", "fresh", PASSWORD));
    }

    /** People, settings and plans ask a superintendent for the password; until then there are a changer's rights. */
    @Test
    void aPhoneGivesASuperintendentTheRightsOfAChanger() throws Exception {
        Phone first = kept(FIRST);
        assertThat(first.caller().get("/people").statusCode()).isEqualTo(200);
        officeAnew();
        assertThat(who(first)).isEqualTo(FIRST);
        assertThat(first.caller().get("/people").statusCode()).isEqualTo(403);
        for (String path : List.of("/people/erase", "/course/settings", "/plan", "/round/share")) {
            assertThat(first.caller()
                            .post("/password", path, Map.of("name", ASH, "typed", ASH))
                            .statusCode())
                    .as(path)
                    .isEqualTo(403);
        }
        assertThat(first.caller().get("/log").body()).contains("sign in with your password");
        assertThat(send(first, UUID.randomUUID(), FIRST, "2").statusCode()).isEqualTo(200);
        assertThat(first.caller().signIn(FIRST, PASSWORD)).isEqualTo("/");
        assertThat(first.caller().get("/people").statusCode()).isEqualTo(200);
    }

    @Test
    void onASharedPhoneNamesAndPinsTellWhoIsWho() {
        Phone shared = shared();
        assertThat(who(shared)).as("nobody's").isEqualTo("/sign-in");
        JsonNode phone = json(shared.caller().get("/round/phone"));
        assertThat(phone.path("shared").asBoolean()).isTrue();
        assertThat(phone.path("names").toString()).isEqualTo("[\"" + ASH + "\",\"" + BO + "\"]");
        assertThat(pinned(shared, ASH, "97531")).isEqualTo("refused");
        assertThat(who(shared)).isEqualTo("/sign-in");
        assertThat(pinned(shared, ASH, "2468")).isEqualTo("in");
        assertThat(who(shared)).isEqualTo(ASH);
        assertThat(pinned(shared, BO, "97531")).isEqualTo("in");
        assertThat(who(shared)).isEqualTo(BO);
        clock.forward(Duration.ofHours(12).plusSeconds(1));
        assertThat(who(shared)).isEqualTo("/sign-in?ended");
        assertThat(json(shared.caller().get("/round/phone")).path("shared").asBoolean())
                .isTrue();
    }

    /** No list of names and no PIN on a phone that nobody made a shared one. */
    @Test
    void aPhoneThatIsNotSharedKnowsNobody() {
        Phone other = phone();
        JsonNode phone = json(other.caller().get("/round/phone"));
        assertThat(phone.path("shared").asBoolean()).isFalse();
        assertThat(phone.path("names").size()).isZero();
        assertThat(pinned(other, ASH, "2468")).isEqualTo("notShared");
        assertThat(pinned(kept(BO), ASH, "2468")).isEqualTo("notShared");
    }

    @Test
    void aPinOpensTheRoundAndNothingElse() {
        Phone shared = shared();
        pinned(shared, ASH, "2468");
        for (Route route : Routes.ALL) {
            if (route.open() || route.pattern().equals("/sign-out")) {
                continue;
            }
            String path = FilledForms.address(route.pattern());
            boolean get = route.method().equals("GET");
            int status = (get ? shared.caller().get(path) : marked(shared, path)).statusCode();
            boolean round =
                    route.pattern().startsWith("/round") && !route.pattern().equals("/round/share");
            assertThat(status == 403).as(route.pattern() + " " + status).isEqualTo(!round);
        }
    }

    private HttpResponse<String> marked(Phone phone, String path) {
        JsonNode mark = json(phone.caller().get("/round/phone"));
        return phone.caller()
                .send(phone.caller()
                        .form(path, Map.of("entry", "none"))
                        .header(
                                mark.path("markName").asString(),
                                mark.path("mark").asString())
                        .build());
    }

    @Test
    void tenWrongPinsAndItIsSharedNoMore() {
        Phone shared = shared();
        pinned(shared, BO, "97531");
        String came = "";
        for (int wrong = 0; wrong < 10; wrong++) {
            clock.forward(Duration.ofMinutes(1));
            came = pinned(shared, ASH, "1357");
        }
        assertThat(came).isEqualTo("notShared");
        assertThat(who(shared)).as("whoever was in as well").isEqualTo("/sign-in?ended");
        assertThat(json(shared.caller().get("/round/phone")).path("shared").asBoolean())
                .isFalse();
        clock.forward(Duration.ofDays(2)); // wrong ones of the name are forgotten
    }

    /** What Ash wrote never stands under the name of Bo, and arrives once when Ash is signed in. */
    @Test
    void anEntryOfAnotherIsNotTaken() {
        Phone shared = shared();
        UUID id = UUID.randomUUID();
        pinned(shared, BO, "97531");
        HttpResponse<String> refused = send(shared, id, ASH, "12");
        assertThat(refused.statusCode()).isEqualTo(409);
        JsonNode told = JsonMapper.shared().readTree(refused.body());
        assertThat(told.path("problem").asString()).isEqualTo("problem.round.byAnother");
        assertThat(told.path("error").asString()).contains(ASH, BO);
        shared.cookies().set("cupwright-language", "es");
        assertThat(send(shared, id, ASH, "12").body()).contains("escribió esta anotación");
        assertThat(writers("12")).isEmpty();
        pinned(shared, ASH, "2468");
        for (int twice = 0; twice < 2; twice++) {
            assertThat(send(shared, id, ASH, "12").statusCode()).isEqualTo(200);
        }
        assertThat(writers("12")).containsExactly(ASH);
        pinned(shared, BO, "97531");
        assertThat(send(shared, id, ASH, "12").statusCode()).isEqualTo(409);
        assertThat(shared.cookies().value(SESSION)).isNotEmpty();
    }

    /** The form asks only where what comes and goes is encrypted, or stays on the machine: as here. */
    @Test
    void theTickIsOnThePage() {
        assertThat(phone().caller().get("/sign-in").body()).contains("name=\"keep\"");
        assertThat(shared().caller().get("/sign-in").body()).doesNotContain("name=\"keep\"");
    }
}
