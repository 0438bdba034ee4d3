package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.util.Base64;
import java.util.List;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A telephone at an office that is reached over the network, with an authority made by the very commands of the guide.
 *
 * <p>That the office's certificate comes from that authority and is for its name is held by a client that trusts the
 * authority and nothing else. The browser is told otherwise, since its list of authorities is the machine's: by the sum
 * of one key, that of this office, which it trusts from then on as if an authority had signed it.
 */
class PhoneOverHttpsIT {
    private static final Path GUIDE = Path.of("..", "docs", "guide", "https.md");
    private static final int HOLES = 18;

    @TempDir
    private Path folder;

    private Path made(String name) {
        return folder.resolve(name);
    }

    @Test
    void theRoundStaysOnATelephoneThatTrustsTheOffice() throws Exception {
        makeTheAuthority();
        MadeOffice.copyTo(made("data"));
        try (Chromium chromium = new Chromium()) {
            String round;
            try (RunningOffice office = RunningOffice.open(
                    made("data"),
                    "--bind",
                    "0.0.0.0",
                    "--certificate",
                    made("office.pem").toString(),
                    "--key",
                    made("office.key").toString())) {
                String at = "https://localhost:" + office.port();
                round = at + "/round?date=" + Days.FIRST;
                assertThat(statusFor(authority(), at + "/sign-in")).isEqualTo(200);
                staysOut(chromium, round);
                comesIn(chromium, round);
            }
            assertClosed(URI.create(round).getPort());
            standsThere(chromium, round);
        }
    }

    /** Line by line as they stand in the guide; what they write of themselves is kept beside. */
    private void makeTheAuthority() throws IOException, InterruptedException {
        List<String> lines = Files.readAllLines(GUIDE).stream()
                .filter(line -> line.matches(" {4}(openssl|rm) .*"))
                .map(String::strip)
                .toList();
        assertThat(lines).hasSize(4);
        for (String line : lines) {
            Process command = new ProcessBuilder("sh", "-c", line)
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(made("said").toFile())
                    .start();
            assertThat(command.waitFor())
                    .as(line + "\n" + Files.readString(made("said")))
                    .isZero();
        }
        assertThat(made("authority.key")).as("nobody can sign anything more").doesNotExist();
    }

    private Certificate certificate(String name) throws IOException, GeneralSecurityException {
        try (InputStream in = Files.newInputStream(made(name))) {
            return CertificateFactory.getInstance("X.509").generateCertificate(in);
        }
    }

    /** Trusts what the authority signed, and nothing else. */
    private SSLContext authority() throws IOException, GeneralSecurityException {
        KeyStore known = KeyStore.getInstance("PKCS12");
        known.load(null, null);
        known.setCertificateEntry("authority", certificate("authority.pem"));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(known);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return context;
    }

    private static int statusFor(SSLContext trusted, String address) throws IOException, InterruptedException {
        HttpRequest asked = HttpRequest.newBuilder(URI.create(address)).build();
        return HttpClient.newBuilder()
                .sslContext(trusted)
                .build()
                .send(asked, BodyHandlers.discarding())
                .statusCode();
    }

    /** One that trusts another key, here the authority's: the office's is signed by it, and is another. */
    private void staysOut(Chromium chromium, String round) throws Exception {
        try (BrowserContext phone = chromium.phoneWithMemory(made("other"), trusting("authority.pem"))) {
            Page page = phone.newPage();
            Assertions.assertThatThrownBy(() -> page.navigate(round))
                    .isInstanceOf(PlaywrightException.class)
                    .hasMessageContaining("ERR_CERT_AUTHORITY_INVALID");
        }
    }

    private void comesIn(Chromium chromium, String round) throws Exception {
        try (BrowserContext phone = chromium.phoneWithMemory(made("phone"), trusting("office.pem"))) {
            Page page = phone.newPage();
            page.navigate(round);
            page.locator("#name").fill(Workplace.FIRST);
            page.locator("#password").fill(Workplace.PASSWORD);
            page.locator("button.main").click();
            assertThat(page.locator(".greens li")).hasCount(HOLES);
            assertThat(page.evaluate("isSecureContext")).isEqualTo(true);
            page.evaluate("navigator.serviceWorker.ready.then(worker => worker.scope)");
            page.waitForFunction("navigator.serviceWorker.controller !== null");
            assertThat(page.locator("#content")).hasAttribute("aria-busy", "false");
            assertThat(Installable.errors(page)).isEmpty();
        }
    }

    private static void assertClosed(int port) {
        Assertions.assertThatThrownBy(() -> new Socket(InetAddress.getLoopbackAddress(), port).close())
                .isInstanceOf(ConnectException.class);
    }

    /** The browser was closed, and the office is. */
    private void standsThere(Chromium chromium, String round) throws Exception {
        try (BrowserContext phone = chromium.phoneWithMemory(made("phone"), trusting("office.pem"))) {
            Page page = phone.newPage();
            page.navigate(round);
            assertThat(page.locator(".greens li")).hasCount(HOLES);
        }
    }

    /** Takes one key for good, whoever signed it. */
    private String trusting(String name) throws IOException, GeneralSecurityException {
        byte[] key = certificate(name).getPublicKey().getEncoded();
        byte[] sum = MessageDigest.getInstance("SHA-256").digest(key);
        return "--ignore-certificate-errors-spki-list=" + Base64.getEncoder().encodeToString(sum);
    }
}
