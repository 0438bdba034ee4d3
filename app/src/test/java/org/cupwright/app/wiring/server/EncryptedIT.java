package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.SSLSession;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.command.Serving.Request;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages with a certificate of one's own: by a real handshake, with a client that trusts it and one without. */
class EncryptedIT {
    private static final String COOKIE = "__Host-cupwright";
    private static final String PASSWORD = "three plain oars";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"RSA", "EC"})
    void whoeverTrustsTheCertificateComesIn(String kind) throws Exception {
        MadeCertificate made = new MadeCertificate(folder.resolve("files"), kind);
        Request everywhere = new Request(folder.resolve("data"), "0.0.0.0", 0, false, false, Optional.of(made.files()));
        try (OpenOffice office = new OpenOffice(everywhere, InProcess.CLOCK)) {
            assertThat(office.at("/")).startsWith("https://");
            String here = "https://localhost:" + URI.create(office.at("/")).getPort();
            SeenCookies cookies = new SeenCookies();
            Caller caller = new Caller(
                    path -> here + path,
                    HttpClient.newBuilder().sslContext(made.trusted()).cookieHandler(cookies));
            HttpResponse<String> page = caller.get("/sign-in");
            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.sslSession().map(SSLSession::getProtocol).orElse(""))
                    .isIn("TLSv1.3", "TLSv1.2");
            assertThat(page.headers().firstValue("Strict-Transport-Security")).contains("max-age=31536000");
            comesIn(caller, office.code(), cookies);
            assertThatThrownBy(() -> new Caller(path -> here + path).get("/sign-in"))
                    .hasCauseInstanceOf(SSLHandshakeException.class);
            assertThat(new Caller(path -> here.replace("https:", "http:") + path).get("/sign-in"))
                    .as("not encrypted")
                    .satisfies(answer -> assertThat(answer.statusCode()).isEqualTo(400))
                    .satisfies(answer -> assertThat(answer.body()).doesNotContain("Cupwright", "Tomcat"));
        }
    }

    private static void comesIn(Caller caller, String code, SeenCookies cookies) {
        assertThat(caller.join(code, "Ida", PASSWORD)).isEqualTo("/sign-in?joined");
        assertThat(caller.signIn("Ida", PASSWORD)).isEqualTo("/");
        assertThat(caller.get("/password").statusCode()).isEqualTo(200);
        assertThat(cookies.lines(COOKIE))
                .hasSizeGreaterThan(1)
                .allSatisfy(line -> assertThat(line.split("; "))
                        .contains("Secure", "HttpOnly", "SameSite=Lax", "Path=/")
                        .noneMatch(part -> part.startsWith("Domain")));
        caller.post("/sign-in", "/sign-in", Map.of("name", "Ida", "password", PASSWORD, "keep", "yes"));
        assertThat(cookies.lines(COOKIE + "-phone"))
                .singleElement()
                .satisfies(line -> assertThat(line.split("; "))
                        .contains("Secure", "HttpOnly", "SameSite=Lax", "Path=/")
                        .noneMatch(part -> part.startsWith("Domain")));
        caller.post("/password", "/wish", Map.of("cupwright-theme", "dark"));
        assertThat(cookies.lines("cupwright-theme"))
                .singleElement()
                .satisfies(line -> assertThat(line).contains("Secure", "HttpOnly", "SameSite=Lax"));
    }
}
