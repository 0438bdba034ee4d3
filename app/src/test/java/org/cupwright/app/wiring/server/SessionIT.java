package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** How long somebody is signed in, and what the cookie that says so is worth. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SessionIT {
    private static final String NAME = "Invented Person";
    private static final String PASSWORD = "three plain oars";
    private static final String COOKIE = "cupwright";
    private static final String ENDED = "/sign-in?ended";
    /** A page of everybody who is signed in, for which nothing is computed. */
    private static final String PAGE = "/password";

    private final SetClock clock = new SetClock();
    private OpenOffice office;
    private SeenCookies cookies;
    private Caller caller;

    @BeforeAll
    void open(@TempDir Path folder) throws InterruptedException {
        office = new OpenOffice(folder.resolve("data"), clock, false);
        assertThat(with(new SeenCookies()).join(office.code(), NAME, PASSWORD)).isEqualTo("/sign-in?joined");
    }

    @BeforeEach
    void somebodyComes() {
        cookies = new SeenCookies();
        caller = with(cookies);
    }

    private Caller with(SeenCookies kept) {
        return new Caller(office::at, HttpClient.newBuilder().cookieHandler(kept));
    }

    @AfterAll
    void close() throws InterruptedException {
        office.close();
    }

    private String leads() {
        return Caller.leadsTo(caller.get(PAGE));
    }

    @Test
    void signingInMakesAnotherSession_andTheOldOneIsNobody() {
        caller.get("/sign-in");
        String before = cookies.value(COOKIE);
        assertThat(before).isNotEmpty();
        assertThat(caller.signIn(NAME, PASSWORD)).isEqualTo("/");
        String after = cookies.value(COOKIE);
        assertThat(after).isNotEmpty().isNotEqualTo(before);
        assertThat(caller.get(PAGE).statusCode()).isEqualTo(200);
        cookies.set(COOKIE, before);
        assertThat(leads()).isEqualTo("/sign-in");
    }

    @Test
    void noScriptReadsTheCookie_andNoFormFromElsewhereSendsIt() {
        caller.signIn(NAME, PASSWORD);
        assertThat(cookies.lines(COOKIE))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.split("; "))
                        .contains("HttpOnly", "SameSite=Lax", "Path=/")
                        .doesNotContain("Secure"));
        caller.post("/sign-in", "/wish", Map.of("cupwright-language", "es"));
        assertThat(cookies.lines("cupwright-language"))
                .singleElement()
                .satisfies(line -> assertThat(line).contains("HttpOnly", "SameSite=Lax"));
    }

    /** The cookie of before is tried again by whoever wrote it down. */
    @Test
    void afterSigningOutTheCookieIsWorthNothing() {
        caller.signIn(NAME, PASSWORD);
        String was = cookies.value(COOKIE);
        HttpResponse<String> out = caller.post(PAGE, "/sign-out", Map.of());
        assertThat(Caller.leadsTo(out)).isEqualTo("/sign-in");
        SeenCookies noted = new SeenCookies();
        noted.set(COOKIE, was);
        assertThat(Caller.leadsTo(with(noted).get(PAGE))).isEqualTo("/sign-in");
    }

    /** A sign-out that no page of ours asked for is none. */
    @Test
    void signingOutTakesAFormOfOurs() {
        caller.signIn(NAME, PASSWORD);
        assertThat(caller.get("/sign-out").statusCode()).isEqualTo(404);
        assertThat(caller.postAsItIs("/sign-out", Map.of()).statusCode()).isEqualTo(403);
        assertThat(caller.get(PAGE).statusCode()).isEqualTo(200);
    }

    @Test
    void twelveHoursWithoutAClickAreTheLongest() {
        caller.signIn(NAME, PASSWORD);
        clock.forward(Duration.ofHours(11).plusMinutes(59));
        assertThat(caller.get(PAGE).statusCode()).isEqualTo(200);
        clock.forward(Duration.ofHours(12));
        assertThat(caller.get(PAGE).statusCode()).as("since the last click").isEqualTo(200);
        clock.forward(Duration.ofHours(12).plusSeconds(1));
        assertThat(leads()).isEqualTo(ENDED);
        assertThat(leads()).as("for good").isEqualTo("/sign-in");
    }

    /** A page of Today that stands open asks again and again by itself. */
    @Test
    void aPageThatStandsOpenKeepsNobodyIn() {
        caller.signIn(NAME, PASSWORD);
        for (int hour = 0; hour < 12; hour++) {
            clock.forward(Duration.ofHours(1));
            assertThat(Caller.leadsTo(caller.get("/now?seen=0&as=0"))).isEmpty();
        }
        clock.forward(Duration.ofSeconds(1));
        assertThat(Caller.leadsTo(caller.get("/now?seen=0&as=0"))).isEqualTo(ENDED);
    }

    @Test
    void aWeekIsTheLongestAltogether() {
        caller.signIn(NAME, PASSWORD);
        for (int half = 0; half < 14; half++) {
            clock.forward(Duration.ofHours(12));
            assertThat(caller.get(PAGE).statusCode()).isEqualTo(200);
        }
        clock.forward(Duration.ofSeconds(1));
        assertThat(leads()).isEqualTo(ENDED);
        assertThat(caller.signIn(NAME, PASSWORD)).isEqualTo("/");
        assertThat(caller.get(PAGE).statusCode()).isEqualTo(200);
    }
}
