package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.api.Condition;
import org.cupwright.app.cli.DemoFolder;
import org.cupwright.app.session.Role;
import org.cupwright.app.visit.access.Route;
import org.cupwright.app.visit.access.Routes;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Who comes in, and who may ask for what: every address with every role, by asking. What a page answers to somebody who
 * may ask is its own business; here it is anything but a refusal.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DoorsIT {
    private static final String PASSWORD = "three plain oars";
    private static final Pattern CODE = Pattern.compile("class=\"code\">([^<]+)<");
    private static final int REFUSED = 403;

    /**
     * What was asked for, or on to where it is; else a problem in words. No address, no form, or a defect,
     * is neither.
     */
    private static final Condition<HttpResponse<String>> DONE_OR_TOLD = new Condition<>(
            answer -> switch (answer.statusCode()) {
                case 200, 302, 303 -> true;
                case 404, 409, 422 -> answer.body().contains("class=\"problem\"");
                default -> false;
            },
            "done, or a problem in words");

    private OpenOffice office;
    private final Map<Role, Caller> callers = new EnumMap<>(Role.class);

    @BeforeAll
    void everybodyComesIn(@TempDir Path folder) throws Exception {
        Path data = folder.resolve("data");
        DemoFolder.copyTo(data);
        office = new OpenOffice(data, Clock.systemUTC(), false);
        Caller first = new Caller(office);
        assertThat(first.join(office.code(), name(Role.SUPERINTENDENT), PASSWORD))
                .isEqualTo("/sign-in?joined");
        assertThat(first.signIn(name(Role.SUPERINTENDENT), PASSWORD)).isEqualTo("/");
        callers.put(Role.SUPERINTENDENT, first);
        for (Role role : List.of(Role.OFFICIAL, Role.CHANGER, Role.READER)) {
            callers.put(role, invited(name(role), role));
        }
    }

    private Caller invited(String name, Role role) {
        Caller caller = new Caller(office);
        assertThat(caller.join(code(name, role), name, PASSWORD)).isEqualTo("/sign-in?joined");
        assertThat(caller.signIn(name, PASSWORD)).isEqualTo("/");
        return caller;
    }

    private String code(String name, Role role) {
        String page = callers.get(Role.SUPERINTENDENT)
                .post("/people", "/people/invite", Map.of("name", name, "role", role.name()))
                .body();
        Matcher code = CODE.matcher(page);
        assertThat(code.find()).as("a code on the page").isTrue();
        return code.group(1);
    }

    @AfterAll
    void close() throws InterruptedException {
        office.close();
    }

    @TestFactory
    Stream<DynamicTest> everyAddressWithEveryRole() {
        return Routes.ALL.stream()
                .flatMap(route -> Stream.of(Role.values())
                        .map(role -> DynamicTest.dynamicTest(
                                route.method() + " " + route.pattern() + " " + role, () -> asked(route, role))));
    }

    private void asked(Route route, Role role) {
        String path = FilledForms.address(route.pattern());
        boolean leaves = List.of("/sign-out", "/round/share").contains(route.pattern());
        Caller caller = leaves ? again(role) : callers.get(role);
        HttpResponse<String> answer = route.method().equals("GET")
                ? caller.get(path)
                : FilledForms.isWithFiles(route)
                        ? caller.sendFiles(path, FilledForms.of(route))
                        : caller.post("/password", path, FilledForms.of(route));
        boolean may = route.open() || route.roles().contains(role);
        if (may) {
            assertThat(answer).is(DONE_OR_TOLD);
        } else {
            assertThat(answer.statusCode()).isEqualTo(REFUSED);
            assertThat(answer.body()).contains("class=\"problem\"").doesNotContain("Wrenfold");
        }
        if (route.pattern().equals("/sign-out")) {
            assertThat(Caller.leadsTo(answer)).isEqualTo("/sign-in");
            assertThat(Caller.leadsTo(caller.get("/password"))).isEqualTo("/sign-in");
        }
    }

    /** The same person at another machine. */
    private Caller again(Role role) {
        Caller caller = new Caller(office);
        assertThat(caller.signIn(name(role), PASSWORD)).isEqualTo("/");
        return caller;
    }

    private static String name(Role role) {
        return role.name() + " One";
    }

    /** Whoever is not signed in is led to where one signs in; no page says anything of the course. */
    @TestFactory
    Stream<DynamicTest> everyAddressWithoutSigningIn() {
        return Routes.ALL.stream()
                .filter(route -> !route.open())
                .map(route -> DynamicTest.dynamicTest(route.method() + " " + route.pattern(), () -> {
                    String path = route.pattern().replaceAll("\\{[^}]*}", "7");
                    Caller stranger = new Caller(office);
                    HttpResponse<String> answer = route.method().equals("GET")
                            ? stranger.get(path)
                            : stranger.post("/sign-in", path, Map.of());
                    assertThat(answer.body()).doesNotContain("Wrenfold");
                    boolean form =
                            route.method().equals("POST") && !route.pattern().equals("/sign-out");
                    String where = !form ? "/sign-in" : "/sign-in?ended";
                    assertThat(Caller.leadsTo(answer)).isEqualTo(where);
                }));
    }

    /** A form that no page of ours made changes nothing. */
    @Test
    void aFormFromElsewhereIsRefused() {
        HttpResponse<String> answer =
                callers.get(Role.SUPERINTENDENT).postAsItIs("/plan?date=2026-06-20", Map.of("_csrf", "guessed"));
        assertThat(answer.statusCode()).isEqualTo(REFUSED);
    }

    /** A form of a page that was open for too long is not taken, and its sender signs in again. */
    @Test
    void aFormOfSomebodyWhoIsOutLeadsIn() {
        HttpResponse<String> answer = new Caller(office).postAsItIs("/plan?date=2026-06-20", Map.of("_csrf", "old"));
        assertThat(Caller.leadsTo(answer)).isEqualTo("/sign-in?ended");
    }

    /** A part of a page is not replaced by the page where one signs in: the whole page goes there. */
    @Test
    void aPartOfAPageLeadsThePageIn() {
        HttpRequest request = HttpRequest.newBuilder(URI.create(office.at("/green/7/spot?at=0,0")))
                .header("HX-Request", "true")
                .build();
        HttpResponse<String> answer = new Caller(office).send(request);
        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.headers().firstValue("HX-Redirect")).contains("/sign-in?ended");
    }

    /** Whoever is signed in reads that it is not there; strangers are led in, and learn nothing. */
    @Test
    void whatIsNotInTheTableIsNotThere() {
        for (Caller caller : callers.values()) {
            for (String path : List.of("/actuator", "/nowhere", "/begin/nothing", "/plan")) {
                HttpResponse<String> answer = caller.get(path);
                assertThat(answer.statusCode()).as(path).isEqualTo(404);
                assertThat(answer.body()).contains("There is no such page").doesNotContain("not yours");
            }
            assertThat(caller.post("/password", "/nowhere", Map.of()).statusCode())
                    .isEqualTo(404);
        }
        assertThat(callers.get(Role.SUPERINTENDENT).get("/assets/../today.html").statusCode())
                .isIn(400, 404);
        assertThat(Caller.leadsTo(new Caller(office).get("/nowhere"))).isEqualTo("/sign-in");
    }

    /** Whoever may come in no more is out with the next request; a wrong password says nothing of what is wrong. */
    @Test
    void whoeverIsRemovedIsOutAtOnce() {
        Caller helper = invited("Helper for a day", Role.CHANGER);
        assertThat(helper.get("/").statusCode()).isEqualTo(200);
        callers.get(Role.SUPERINTENDENT).post("/people", "/people/remove", Map.of("name", "Helper for a day"));
        assertThat(Caller.leadsTo(helper.get("/"))).isEqualTo("/sign-in?ended");
        assertThat(helper.signIn("Helper for a day", PASSWORD)).isEqualTo("/sign-in?refused");
        assertThat(new Caller(office).signIn("Nobody at all", PASSWORD)).isEqualTo("/sign-in?refused");
    }

    @Test
    void whoeverTriesTooOftenWaits() {
        Caller guesser = new Caller(office);
        String last = "";
        for (int i = 0; i < 7; i++) {
            last = guesser.signIn("Reader Two", "wrong password " + i);
        }
        assertThat(last).startsWith("/sign-in?wait=");
        assertThat(guesser.get(last).body()).contains("tried too often");
    }

    @Test
    void aCodeCountsOnce() {
        String code = code("Twice", Role.READER);
        assertThat(new Caller(office).join(code, "Twice", "short")).contains("too short");
        assertThat(new Caller(office).join(code, "Twice", PASSWORD)).isEqualTo("/sign-in?joined");
        assertThat(new Caller(office).join(code, "Twice", PASSWORD)).contains("does not count");
    }

    /** A page elsewhere whose name is made to lead here gets nothing. */
    @Test
    void anotherNameForThisMachineIsRefused() throws Exception {
        int port = URI.create(office.at("/")).getPort();
        try (var socket = new java.net.Socket("127.0.0.1", port)) {
            socket.getOutputStream()
                    .write("GET /sign-in HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"
                            .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 400").doesNotContain("password");
        }
    }

    @Test
    void everyAnswerSaysWhatABrowserMayDo() {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(office.at("/sign-in"))).build();
        Map<String, List<String>> headers =
                new Caller(office).send(request).headers().map();
        assertThat(headers.get("content-security-policy").get(0))
                .contains("default-src 'none'", "frame-ancestors 'none'")
                .doesNotContain("unsafe");
        assertThat(headers).containsKeys("x-content-type-options", "referrer-policy", "cache-control");
    }
}
