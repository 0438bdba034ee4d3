package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A round with a telephone and no office: its process has ended and its port is closed, not only switched off. */
class RoundIT {
    private static final String DAY = Days.FIRST;
    private static final int HOLES = 18;
    private static final List<String> ELSEWHERE = List.of("4", "11");
    private static final String ODD = "8";

    /** Written down before all others, and nothing that the office could take: what comes after it is to arrive. */
    private static final String OF_NO_HOLE = """
            async day => (await import('/round/files/kept.js')).keepEntry({
                id: crypto.randomUUID(), order: 0, state: 'waiting', photo: null, course: 'wrenfold-moor',
                says: {kind: 'cupChanged', asPlanned: true, hole: '99', day, at: new Date().toISOString()}})
            """;

    @TempDir
    private Path folder;

    private Path data() {
        return folder.resolve("data");
    }

    private static void signIn(Page page) {
        page.locator("#name").fill(Workplace.FIRST);
        page.locator("#password").fill(Workplace.PASSWORD);
        page.locator("button.main").click();
    }

    private static Locator row(Page page, String hole) {
        return page.locator(".greens li", new Page.LocatorOptions().setHas(page.locator("b:text-is('" + hole + "')")));
    }

    @Test
    void whatIsDoneWithoutTheOfficeArrivesOnce() throws Exception {
        MadeOffice.copyTo(data());
        RunningOffice office = RunningOffice.open(data());
        int port = office.port();
        String round = office.at("/round?date=" + DAY);
        try (Chromium chromium = new Chromium()) {
            try (BrowserContext phone = chromium.phoneWithMemory(folder.resolve("phone"))) {
                Page page = phone.newPage();
                page.navigate(round);
                signIn(page);
                assertThat(page.locator(".greens li")).hasCount(HOLES);
                kept(page);
                Assertions.assertThat(Installable.errors(page)).isEmpty();
                office.close();
                assertClosed(port);
                eighteenGreens(page);
                assertThat(page.locator("#unsent")).containsText("19 entries");
                page.evaluate(OF_NO_HOLE, DAY);
            }
            try (BrowserContext phone = chromium.phoneWithMemory(folder.resolve("phone"))) {
                Page page = phone.newPage();
                page.navigate(round);
                assertThat(page.locator(".greens li.done")).hasCount(HOLES);
                assertThat(row(page, ELSEWHERE.get(0))).containsText("Cut elsewhere");
                assertThat(page.locator("#unsent")).containsText("20 entries are on this phone alone");
                office = RunningOffice.open(data(), port);
                comeBack(page);
                assertThat(page.locator("#unsent")).hasText("All you wrote down has been sent.");
                assertThat(page.locator(".unsent .problem")).containsText("did not take what you wrote of hole 99");
            }
        } finally {
            office.close();
        }
        everythingOnce();
    }

    /** The page lies on the phone, and so does the day. */
    private static void kept(Page page) {
        page.evaluate("navigator.serviceWorker.ready.then(worker => worker.scope)");
        page.waitForFunction("navigator.serviceWorker.controller !== null");
        assertThat(page.locator("#content")).hasAttribute("aria-busy", "false");
    }

    private static void assertClosed(int port) {
        Assertions.assertThatThrownBy(() -> new Socket(InetAddress.getLoopbackAddress(), port).close())
                .isInstanceOf(ConnectException.class);
    }

    /** Two taps a green: its row, and that it is cut as planned. Two are cut elsewhere, on one is something odd. */
    private void eighteenGreens(Page page) throws IOException {
        for (String hole :
                IntStream.rangeClosed(1, HOLES).mapToObj(Integer::toString).toList()) {
            row(page, hole).locator("a").click();
            if (ELSEWHERE.contains(hole)) {
                page.locator("details.elsewhere summary").click();
                page.locator("#on").fill("9");
                page.locator("#from").fill("4");
                page.locator("details.elsewhere button.main").click();
                assertThat(page.locator("#became")).containsText("Cut elsewhere");
            } else {
                page.locator("#as-planned").click();
                assertThat(page.locator("#became")).containsText("Cut as planned");
            }
            if (hole.equals(ODD)) {
                somethingOdd(page);
            }
            page.locator("a[href='#']").click();
        }
    }

    private void somethingOdd(Page page) throws IOException {
        Path photo = folder.resolve("ring.png");
        page.locator("summary:text-is('Something odd')").click();
        page.locator("#odd").fill("A dark ring behind the cup, invented");
        page.locator("#odd-photo").setInputFiles(AerialPicture.drawn(photo).file());
        page.locator("form:has(#odd) button.main").click();
        assertThat(page.locator("#unsent")).containsText("9 entries");
    }

    /** The office was closed and knows nobody any more: whoever was signed in signs in again, and it goes on. */
    private static void comeBack(Page page) {
        button(page, "Send now").click();
        page.locator("a[href='/round/again']").click();
        signIn(page);
        page.waitForURL("**/round");
    }

    private void everythingOnce() throws Exception {
        List<String> holes = new ArrayList<>();
        int odd = 0;
        for (JsonNode fact : log().path("facts")) {
            boolean ours = fact.path("person").asString().equals(Workplace.FIRST);
            String kind = fact.at("/payload/kind").asString();
            if (ours && kind.equals("cupChanged")) {
                holes.add(fact.path("hole").asString());
                boolean asPlanned = fact.at("/payload/cutAt").equals(fact.at("/payload/planned"));
                Assertions.assertThat(asPlanned)
                        .isEqualTo(!ELSEWHERE.contains(fact.path("hole").asString()));
            }
            if (ours && kind.equals("somethingOdd")) {
                odd++;
                Assertions.assertThat(fact.at("/payload/photo").asString()).isNotBlank();
            }
        }
        Assertions.assertThat(holes)
                .containsExactlyInAnyOrderElementsOf(IntStream.rangeClosed(1, HOLES)
                        .mapToObj(Integer::toString)
                        .toList());
        Assertions.assertThat(odd).isEqualTo(1);
    }

    private JsonNode log() throws IOException, InterruptedException {
        Path out = folder.resolve("log.json");
        Process listing = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-jar",
                        RunningOffice.JAR.toString(),
                        "log",
                        "list",
                        "--json",
                        "--from",
                        DAY,
                        "--to",
                        LocalDate.now(ZoneOffset.UTC).plusDays(1).toString(),
                        "--data",
                        data().toString())
                .redirectOutput(out.toFile())
                .redirectError(folder.resolve("log.err").toFile())
                .start();
        Assertions.assertThat(listing.waitFor())
                .as(Files.readString(folder.resolve("log.err"), StandardCharsets.UTF_8))
                .isZero();
        return JsonMapper.shared().readTree(Files.readString(out));
    }
}
