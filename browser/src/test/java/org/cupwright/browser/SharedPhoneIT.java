package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Who writes on a telephone: two people on a shared one with the office closed, and one who stays signed in. */
@Tag("long")
class SharedPhoneIT {
    private static final String DAY = Days.FIRST;
    private static final String KIM = "Kim Invented";
    private static final String REED = "Reed Invented";
    private static final Map<String, String> PINS = Map.of(KIM, "2468", REED, "97531");
    private static final String ALL_SENT = "All you wrote down has been sent.";

    @TempDir
    private Path folder;

    private RunningOffice office;
    private Chromium chromium;

    @BeforeEach
    void open() throws IOException {
        MadeOffice.copyTo(data());
        office = RunningOffice.open(data());
        chromium = new Chromium();
        try (BrowserContext first = chromium.laptop(ColorScheme.LIGHT, "")) {
            Page page = first.newPage();
            page.navigate(office.at("/sign-in"));
            signIn(page, Workplace.FIRST);
            page.waitForURL(office.at("/"));
            List.of(KIM, REED).forEach(name -> joined(page, name));
        }
    }

    @AfterEach
    void close() {
        chromium.close();
        office.close();
    }

    private Path data() {
        return folder.resolve("data");
    }

    private BrowserContext telephone() {
        return chromium.phoneWithMemory(folder.resolve("phone"));
    }

    private static void signIn(Page page, String name) {
        page.locator("#name").fill(name);
        page.locator("#password").fill(Workplace.PASSWORD);
        page.locator("button.main").click();
    }

    /** Invites somebody, who comes with the code and sets a PIN. */
    private void joined(Page first, String name) {
        first.navigate(office.at("/people"));
        first.locator("#inviteName").fill(name);
        first.locator("#inviteRole").selectOption("CHANGER");
        first.locator("form[action='/people/invite'] button").click();
        String code = first.locator(".code").textContent();
        try (BrowserContext laptop = chromium.laptop(ColorScheme.LIGHT, "")) {
            Page page = laptop.newPage();
            page.navigate(office.at("/join"));
            page.locator("#code").fill(code);
            page.locator("#name").fill(name);
            page.locator("#password").fill(Workplace.PASSWORD);
            page.locator("button.main").click();
            page.waitForURL("**/sign-in?joined");
            signIn(page, name);
            page.waitForURL(office.at("/"));
            page.navigate(office.at("/password"));
            page.locator("#pinPassword").fill(Workplace.PASSWORD);
            page.locator("#pin").fill(PINS.get(name));
            button(page, "Set the PIN").click();
            page.waitForURL("**/password?pin");
        }
    }

    private static Locator row(Page page, String hole) {
        return page.locator(".greens li", new Page.LocatorOptions().setHas(page.locator("b:text-is('" + hole + "')")));
    }

    private static void cut(Page page, String hole) {
        row(page, hole).locator("a").click();
        page.locator("#as-planned").click();
        assertThat(page.locator("#became")).containsText("Cut as planned");
        page.locator("a[href='#']").click();
    }

    private static void pick(Page page, String name) {
        button(page, name).click();
        assertThat(page.locator(".names .chosen")).hasText(name);
    }

    private static void typePin(Page page, String pin) {
        page.locator("#pin").fill(pin);
        page.locator("form.pin button").click();
    }

    /** The page lies on the phone, and so does the day. */
    private static void carried(Page page) {
        page.evaluate("navigator.serviceWorker.ready.then(worker => worker.scope)");
        page.waitForFunction("navigator.serviceWorker.controller !== null");
        assertThat(page.locator(".greens li")).hasCount(18);
        assertThat(page.locator("#content")).hasAttribute("aria-busy", "false");
    }

    @Test
    void twoPeopleOnOnePhoneArriveUnderTheirOwnNames() throws Exception {
        int port = office.port();
        String round = office.at("/round?date=" + DAY);
        try (BrowserContext phone = telephone()) {
            Page page = phone.newPage();
            page.navigate(round);
            signIn(page, Workplace.FIRST);
            carried(page);
            page.locator("summary:text-is('Make this a shared phone')").click();
            button(page, "Make this a shared phone").click();
            assertThat(page.locator(".names button")).hasText(new String[] {KIM, REED});
            page.navigate(round);
            pick(page, REED);
            typePin(page, PINS.get(REED));
            assertThat(page.locator("#pin")).hasCount(0);
            carried(page);
            office.close();
            cut(page, "1");
            cut(page, "2");
            pick(page, KIM);
            for (String hole : List.of("3", "4", "5")) {
                cut(page, hole);
            }
            assertThat(page.locator("#unsent")).containsText("5 entries are on this phone alone");
        }
        try (BrowserContext phone = telephone()) {
            Page page = phone.newPage();
            page.navigate(round);
            assertThat(page.locator(".names .chosen")).hasText(KIM);
            office = RunningOffice.open(data(), port);
            button(page, "Send now").click();
            assertThat(page.locator(".waits")).hasText(new String[] {
                "2 entries of " + REED + " wait for the PIN of " + REED + ".",
                "3 entries of " + KIM + " wait for the PIN of " + KIM + "."
            });
            typePin(page, "1357");
            assertThat(page.locator(".who .problem")).hasText("That is not the PIN of " + KIM + ". Try again.");
            Assertions.assertThat(Axe.found(page)).isEmpty();
            typePin(page, PINS.get(KIM));
            assertThat(page.locator("#unsent")).containsText("2 entries are on this phone alone");
            assertThat(page.locator(".waits")).hasCount(1);
            pick(page, REED);
            typePin(page, PINS.get(REED));
            assertThat(page.locator("#unsent")).hasText(ALL_SENT);
            assertThat(page.locator(".waits")).hasCount(0);
            Assertions.assertThat(page.evaluate("JSON.stringify(localStorage)").toString())
                    .contains(KIM)
                    .doesNotContain(PINS.get(KIM), PINS.get(REED));
        }
        Assertions.assertThat(writers())
                .isEqualTo(Map.of(
                        "1",
                        List.of(REED),
                        "2",
                        List.of(REED),
                        "3",
                        List.of(KIM),
                        "4",
                        List.of(KIM),
                        "5",
                        List.of(KIM)));
    }

    /** Browser and office are closed and opened, and nobody types a password; what one wrote is not another's. */
    @Test
    void whoeverStaysSignedInSendsAfterARestartAndOthersDoNotSendForThem() throws Exception {
        int port = office.port();
        String round = office.at("/round?date=" + DAY);
        try (BrowserContext phone = telephone()) {
            Page page = phone.newPage();
            page.navigate(round);
            page.locator("input[name=keep]").check();
            signIn(page, KIM);
            carried(page);
            office.close();
            cut(page, "6");
        }
        office = RunningOffice.open(data(), port);
        try (BrowserContext phone = telephone()) {
            Page page = phone.newPage();
            page.navigate(round);
            assertThat(page.locator("#unsent")).hasText(ALL_SENT);
            assertThat(page.locator(".who")).containsText("Written down as " + KIM);
            office.close();
            cut(page, "7");
            office = RunningOffice.open(data(), port);
            page.navigate(office.at("/sign-in"));
            signIn(page, REED);
            page.waitForURL(office.at("/"));
            page.navigate(round);
            assertThat(page.locator(".waits")).hasText("One entry of " + KIM + " waits until " + KIM + " signs in.");
            assertThat(page.locator(".who")).containsText("Written down as " + REED);
            cut(page, "8");
            assertThat(row(page, "8")).containsText("sent");
            page.navigate(office.at("/sign-in"));
            signIn(page, KIM);
            page.waitForURL(office.at("/"));
            page.navigate(round);
            assertThat(page.locator("#unsent")).hasText(ALL_SENT);
        }
        Assertions.assertThat(writers()).isEqualTo(Map.of("6", List.of(KIM), "7", List.of(KIM), "8", List.of(REED)));
    }

    /** Who changed which hole, as the logbook has it. */
    private Map<String, List<String>> writers() throws IOException, InterruptedException {
        Map<String, List<String>> writers = new TreeMap<>();
        for (JsonNode fact : log().path("facts")) {
            String person = fact.path("person").asString();
            if (PINS.containsKey(person)) {
                writers.computeIfAbsent(fact.path("hole").asString(), hole -> new ArrayList<>())
                        .add(person);
            }
        }
        return writers;
    }

    private JsonNode log() throws IOException, InterruptedException {
        Path out = folder.resolve("log.json");
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String tomorrow = LocalDate.now(ZoneOffset.UTC).plusDays(1).toString();
        List<String> command = List.of(
                java,
                "-jar",
                RunningOffice.JAR.toString(),
                "log",
                "list",
                "--json",
                "--from",
                DAY,
                "--to",
                tomorrow,
                "--data",
                data().toString());
        Process listing = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(folder.resolve("log.err").toFile())
                .start();
        Assertions.assertThat(listing.waitFor())
                .as(Files.readString(folder.resolve("log.err")))
                .isZero();
        return JsonMapper.shared().readTree(Files.readString(out));
    }
}
