package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.api.Assertions;
import org.cupwright.browser.FaultyLine.Fault;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Rounds between an office and telephones whose line fails: what was written down arrives, and each of it once. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoundFaultsIT {
    private static final String ROUND = "/round?date=" + Days.FIRST;
    private static final String OTHER = "Robin Marlow";

    private static final List<String> HOLES =
            IntStream.rangeClosed(1, 18).mapToObj(Integer::toString).toList();

    private static final String A_DAY_BEHIND = """
            const Right = Date;
            Date = class extends Right {
                constructor(...when) { if (when.length) { super(...when); } else { super(Date.now()); } }
                static now() { return Right.now() - 86400000; }
            };
            """;

    private Path data;
    private RunningOffice office;
    private FaultyLine line;
    private Chromium chromium;

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        data = folder.resolve("data");
        MadeOffice.copyTo(data);
        office = RunningOffice.open(data);
        line = new FaultyLine(office.port());
        chromium = new Chromium();
    }

    @AfterAll
    void close() {
        chromium.close();
        line.close();
        office.close();
    }

    private RoundPhone phone() {
        return RoundPhone.of(chromium.phone(ColorScheme.LIGHT, ""));
    }

    private RoundPhone loaded(String name) {
        RoundPhone phone = phone();
        phone.load(line.at(ROUND), name);
        return phone;
    }

    /** Every third of what the phones ask meets a fault, each kind in turn from where the seed says. */
    private static FaultyLine.Faults everyThird() {
        List<Fault> kinds = new ArrayList<>(List.of(Fault.values()));
        kinds.remove(Fault.NONE);
        Collections.shuffle(kinds, new Random(Suite.seed()));
        System.out.println("faults in the order " + kinds + ", seed " + Suite.seed());
        int[] asked = {0};
        return (method, path) -> {
            synchronized (asked) {
                int number = asked[0]++;
                return number % 3 == 2 ? kinds.get(number / 3 % kinds.size()) : Fault.NONE;
            }
        };
    }

    private void joins(String name) {
        try (BrowserContext laptop = chromium.laptop(ColorScheme.LIGHT, "")) {
            Page page = laptop.newPage();
            page.navigate(office.at("/sign-in"));
            new RoundPhone(laptop, page).signIn(Workplace.FIRST);
            page.navigate(office.at("/people"));
            page.locator("#inviteName").fill(name);
            page.locator("#inviteRole").selectOption("CHANGER");
            page.locator("form[action='/people/invite'] button").click();
            String code = page.locator(".code").textContent();
            laptop.clearCookies();
            page.navigate(office.at("/join"));
            page.locator("#code").fill(code);
            new RoundPhone(laptop, page).signIn(name);
            page.waitForURL("**/sign-in?joined");
        }
    }

    private void eachOnce(RoundPhone... phones) throws Exception {
        List<JsonNode> log = KeptLog.of(data);
        for (RoundPhone phone : phones) {
            Map<String, String> said = phone.said();
            Assertions.assertThat(said).isNotEmpty();
            said.forEach((id, state) -> {
                Assertions.assertThat(state).isEqualTo("sent");
                Assertions.assertThat(KeptLog.times(log, id)).as(id).isEqualTo(1);
            });
        }
    }

    @Test
    void whatTwoPhonesWroteWithoutTheOfficeArrivesOnceOverAFaultyLine() throws Exception {
        joins(OTHER);
        RoundPhone one = loaded(Workplace.FIRST);
        RoundPhone other = loaded(OTHER);
        office.close();
        HOLES.forEach(one::cut);
        other.cutElsewhere("3", "9", "4");
        other.cutElsewhere("7", "8", "5");
        assertThat(one.page().locator("#unsent")).containsText("18 entries");
        assertThat(other.page().locator("#unsent")).containsText("2 entries");
        office = RunningOffice.open(data);
        line.leadTo(office.port());
        line.faults(everyThird());
        one.allSent(Workplace.FIRST);
        other.allSent(OTHER);
        line.faults((method, path) -> Fault.NONE);
        Assertions.assertThat(one.said()).hasSize(18);
        Assertions.assertThat(other.said()).hasSize(2);
        eachOnce(one, other);
        bothAreShown("3");
        one.context().close();
        other.context().close();
    }

    private void bothAreShown(String hole) throws Exception {
        List<String> people = KeptLog.of(data).stream()
                .filter(fact -> fact.path("hole").asString("").equals(hole)
                        && fact.at("/payload/kind").asString().equals("cupChanged")
                        && Instant.parse(fact.path("happenedAt").asString())
                                .isAfter(Instant.now().minus(Duration.ofHours(1))))
                .map(fact -> fact.path("person").asString())
                .toList();
        Assertions.assertThat(people).containsExactlyInAnyOrder(Workplace.FIRST, OTHER);
    }

    @Test
    void aClockThatIsADayBehindIsPutRightAndBothAreKept() throws Exception {
        BrowserContext context = chromium.phone(ColorScheme.LIGHT, "");
        context.addInitScript(A_DAY_BEHIND);
        RoundPhone phone = RoundPhone.of(context);
        phone.load(line.at(ROUND), Workplace.FIRST);
        phone.cut("9");
        phone.allSent(Workplace.FIRST);
        String id = phone.said().keySet().iterator().next();
        JsonNode fact = KeptLog.of(data).stream()
                .filter(one -> one.path("id").asString().equals(id))
                .findFirst()
                .orElseThrow();
        Instant happened = Instant.parse(fact.path("happenedAt").asString());
        Instant shown = Instant.parse(fact.path("recordedAtDevice").asString());
        Assertions.assertThat(Duration.between(happened, Instant.now()))
                .isBetween(Duration.ofMinutes(-1), Duration.ofMinutes(10));
        Assertions.assertThat(Duration.between(shown, happened))
                .isBetween(Duration.ofMinutes(24 * 60 - 2), Duration.ofMinutes(24 * 60 + 2));
        context.close();
    }

    /** The page that is open goes on; the next opening has the new one. */
    @Test
    void aNewPageThatArrivesMidRoundLosesNothing() throws Exception {
        RoundPhone phone = loaded(Workplace.FIRST);
        line.faults((method, path) -> Fault.LOST_ON_THE_WAY);
        phone.cut("1");
        newPage(phone);
        phone.until("navigator.serviceWorker.getRegistration().then(one => one.waiting !== null)");
        phone.cut("2");
        Assertions.assertThat(phone.page().evaluate("document.documentElement.dataset.page ?? ''"))
                .isEqualTo("");
        RoundPhone next = phone.reopened(line.at(ROUND));
        next.until("document.documentElement.dataset.page === 'later'");
        assertThat(next.row("1")).containsText("on this phone");
        next.cut("3");
        line.faults((method, path) -> Fault.NONE);
        next.allSent(Workplace.FIRST);
        Assertions.assertThat(next.said()).hasSize(3);
        eachOnce(next);
        asItWas();
        phone.context().close();
    }

    /** Whoever is signed out is led to the doors: they must not be kept in the page's place. */
    @Test
    void aNewPageThatArrivesWhileSignedOutIsNotTheDoors() throws Exception {
        RoundPhone phone = loaded(Workplace.FIRST);
        phone.context().clearCookies();
        line.bytes().clear();
        newPage(phone);
        phone.until("navigator.serviceWorker.getRegistration().then(one => one.installing === null)");
        Assertions.assertThat(line.bytes())
                .as("what the later page's worker asked for")
                .containsKey("/round");
        line.up(false);
        RoundPhone next = phone.reopened(line.at(ROUND));
        assertThat(next.page().locator(".greens li")).hasCount(HOLES.size());
        line.up(true);
        asItWas();
        phone.context().close();
    }

    private void newPage(RoundPhone phone) {
        String[] files = {"/round/worker.js", "/round/files/age.js"};
        for (String file : files) {
            String text = (String) phone.page().evaluate("file => fetch(file + '?as=it-is').then(a => a.text())", file);
            line.say(
                    file,
                    file.endsWith("worker.js")
                            ? text.replaceFirst("const KEPT = 'round-", "const KEPT = 'round-later-")
                            : text + "\ndocument.documentElement.dataset.page = 'later';\n");
        }
        phone.page()
                .evaluate("navigator.serviceWorker.getRegistration().then(one => one.update()).then(() => 0, () => 1)");
    }

    private void asItWas() {
        line.sayNothing();
        line.faults((method, path) -> Fault.NONE);
    }
}
