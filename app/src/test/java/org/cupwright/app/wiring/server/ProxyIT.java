package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.command.Serving.Request;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What another server in front says of who asks, by real requests; addresses are of documentation (RFC 5737). The
 * clock stands: so does every wait.
 */
class ProxyIT {
    private static final int FREE_TRIES = 20;
    private static final String GUESSER = "203.0.113.7";
    private static final String PASSWORD = "three plain oars";

    @TempDir
    private Path folder;

    private OpenOffice office(boolean behindProxy) throws InterruptedException {
        Request request = new Request(folder.resolve("data"), "127.0.0.1", 0, false, behindProxy, Optional.empty());
        return new OpenOffice(request, InProcess.CLOCK);
    }

    private static Caller caller(OpenOffice office) {
        return new Caller(office::at, HttpClient.newBuilder().cookieHandler(new SeenCookies()));
    }

    /** A wrong try of one name, as the server in front hands it on; where it leads. */
    private static String tried(Caller caller, String name, String... headers) {
        Map<String, String> fields = new HashMap<>(caller.token("/sign-in"));
        fields.putAll(Map.of("name", name, "password", "a wrong one"));
        HttpRequest.Builder form = caller.form("/sign-in", fields);
        return Caller.leadsTo(caller.send(form.headers(headers).build()));
    }

    private static HttpResponse<String> asked(Caller caller, String path) {
        return caller.send(caller.request(path)
                .headers(LastHop.PROTO, "http, https", LastHop.HOST, "elsewhere.example, office.example")
                .build());
    }

    private static HttpResponse<String> signedIn(Caller caller, OpenOffice office) {
        assertThat(caller.join(office.code(), "Ida", PASSWORD)).isEqualTo("/sign-in?joined");
        asked(caller, "/people");
        Map<String, String> fields = new HashMap<>(caller.token("/sign-in"));
        fields.putAll(Map.of("name", "Ida", "password", PASSWORD));
        return caller.send(caller.form("/sign-in", fields)
                .headers(LastHop.PROTO, "https", LastHop.HOST, "office.example")
                .build());
    }

    /** Pages are where the server in front has them, and who asks is who it says. */
    @Test
    void theServerInFrontIsBelieved() throws InterruptedException {
        try (OpenOffice office = office(true)) {
            Caller caller = caller(office);
            HttpResponse<String> stranger = asked(caller, "/people");
            assertThat(stranger.headers().firstValue("Location")).contains("/sign-in");
            assertThat(stranger.headers().firstValue("Strict-Transport-Security"))
                    .contains("max-age=31536000");
            assertThat(signedIn(caller, office).headers().firstValue("Location"))
                    .hasValueSatisfying(to -> assertThat(to).startsWith("https://office.example/people"));
            whoeverGuessesWaits(caller(office));
        }
    }

    /** Also where he writes addresses of his own before the one that the server adds; and he alone. */
    private static void whoeverGuessesWaits(Caller caller) {
        for (int i = 0; i < FREE_TRIES; i++) {
            String own = "198.51.100." + i;
            String[] headers = {LastHop.FOR, own + ", " + GUESSER, "Forwarded", "for=" + own};
            assertThat(tried(caller, "Guessed name " + i, headers))
                    .as("try %s", i)
                    .isEqualTo("/sign-in?refused");
        }
        String[] waits = {LastHop.FOR, "198.51.100.99", LastHop.FOR, "198.51.100.99," + GUESSER + ":4711"};
        assertThat(tried(caller, "Nobody at all", waits)).startsWith("/sign-in?wait=");
        assertThat(tried(caller, "Nobody at all", LastHop.FOR, GUESSER + ", 198.51.100.1"))
                .as("whom he wrote himself down as is not counted")
                .isEqualTo("/sign-in?refused");
    }

    @Test
    void withoutAServerInFrontNobodyIsBelieved() throws InterruptedException {
        try (OpenOffice office = office(false)) {
            Caller caller = caller(office);
            assertThat(asked(caller, "/people").headers().firstValue("Strict-Transport-Security"))
                    .isEmpty();
            assertThat(signedIn(caller, office).headers().firstValue("Location"))
                    .hasValueSatisfying(to -> assertThat(to).startsWith(office.at("/people")));
            Caller guesser = caller(office);
            for (int i = 0; i < FREE_TRIES; i++) {
                tried(guesser, "Guessed name " + i, LastHop.FOR, "198.51.100." + i);
            }
            assertThat(tried(guesser, "Nobody at all", LastHop.FOR, "198.51.100.99"))
                    .startsWith("/sign-in?wait=");
        }
    }
}
