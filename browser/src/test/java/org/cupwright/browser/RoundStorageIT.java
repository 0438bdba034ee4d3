package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What lies on a telephone: storage that is full, refused, cleared, or of the version before; and how much comes. */
@Tag("long")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoundStorageIT {
    private static final String ROUND = "/round?date=" + Days.FIRST;
    private static final String NO_ROOM = "This phone has no room for this page";
    private static final int MOST_WITHOUT_THE_DAY = 1_500_000;
    private static final int MOST_OF_THE_DAY = 15_000_000;

    private static final String REFUSED =
            "IDBFactory.prototype.open = () => { throw new DOMException('not here', 'SecurityError'); };";

    /** As the first version of the storage left it: days by their date alone, entries ordered by the clock. */
    private static final String VERSION_1 = """
            ([day, id]) => new Promise((found, failed) => {
              const asked = indexedDB.open('cupwright-round', 1);
              asked.onupgradeneeded = () => {
                asked.result.createObjectStore('days', {keyPath: 'date'});
                asked.result.createObjectStore('entries', {keyPath: 'id'});
              };
              asked.onerror = () => failed(asked.error);
              asked.onsuccess = () => {
                const work = asked.result.transaction(['days', 'entries'], 'readwrite');
                work.objectStore('days').put({date: '2026-06-01', course: 'wrenfold-moor', title: 'An old day'});
                work.objectStore('entries').put({id, order: Date.now(), state: 'waiting', photo: null,
                    course: 'wrenfold-moor', says: {kind: 'cupChanged', asPlanned: true, parts: {}, hole: '5', day,
                    at: new Date().toISOString(), clockBehind: 0}});
                work.oncomplete = () => { asked.result.close(); found(true); };
              };
            })
            """;

    private static final String CARRIED =
            "async () => (await (await import('/round/files/kept.js')).days()).map(one => one.course + ' ' + one.date)";

    private static final String TAPS = "window.taps = 0;"
            + " document.addEventListener('click', event => { if (event.isTrusted) { taps++; } }, true);";

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

    private RoundPhone phone(String... scripts) {
        BrowserContext context = chromium.phone(ColorScheme.LIGHT, "");
        List.of(scripts).forEach(context::addInitScript);
        return RoundPhone.of(context);
    }

    private void keptOnce(String id) throws Exception {
        Assertions.assertThat(KeptLog.times(KeptLog.of(data), id)).isEqualTo(1);
    }

    /** Said before the round begins, and what is written there is not called kept; the day is shown all the same. */
    private static void saysThatNothingIsKept(RoundPhone phone) {
        assertThat(phone.page().locator(".greens li")).hasCount(18);
        phone.settled();
        assertThat(phone.page().locator(".unsent")).containsText(NO_ROOM);
        assertThat(phone.page().locator(".unsent")).containsText("Take the card.");
        phone.row("6").locator("a").click();
        phone.page().locator("#as-planned").click();
        assertThat(phone.page().locator(".unsent")).containsText("That was not kept");
        assertThat(phone.page().locator("#became")).hasCount(0);
        Assertions.assertThat(phone.said()).isEmpty();
        phone.context().close();
    }

    @Test
    void aPhoneThatKeepsNothingSaysSoBeforeTheRound() {
        RoundPhone phone = phone(REFUSED);
        phone.page().navigate(line.at(ROUND));
        phone.signIn(Workplace.FIRST);
        saysThatNothingIsKept(phone);
    }

    @Test
    void aPhoneThatIsFullSaysSoBeforeTheRound() {
        RoundPhone phone = phone();
        phone.page().navigate(line.at("/sign-in"));
        JsonObject bound = new JsonObject();
        bound.addProperty("origin", line.at(""));
        bound.addProperty("quotaSize", 2000);
        phone.context().newCDPSession(phone.page()).send("Storage.overrideQuotaForOrigin", bound);
        phone.signIn(Workplace.FIRST);
        phone.page().waitForURL(line.at("/"));
        phone.page().navigate(line.at(ROUND));
        saysThatNothingIsKept(phone);
    }

    /** Entries stay where the days have gone, and can still be sent. */
    @Test
    void whereTheDaysWereClearedTheEntriesAreSent() throws Exception {
        RoundPhone phone = phone();
        phone.load(line.at(ROUND), Workplace.FIRST);
        line.faults((method, path) -> FaultyLine.Fault.LOST_ON_THE_WAY);
        phone.cut("8");
        phone.page().evaluate("async day => (await import('/round/files/kept.js')).dropDay(day)", dayKey());
        RoundPhone again = phone.reopened(line.at(ROUND));
        assertThat(again.page().locator("#content")).containsText("No day is on this phone yet");
        assertThat(again.page().locator("#unsent")).hasText("One entry is on this phone alone.");
        String id = again.said().keySet().iterator().next();
        Path file = saved(again);
        String taken = KeptLog.run(data, "log", "take", file.toString(), "--person", Workplace.FIRST);
        Assertions.assertThat(taken).contains("One entry kept");
        line.faults((method, path) -> FaultyLine.Fault.NONE);
        again.allSent(Workplace.FIRST);
        keptOnce(id);
        phone.context().close();
    }

    private static Map<String, String> dayKey() {
        return Map.of("course", "wrenfold-moor", "date", Days.FIRST);
    }

    private static Path saved(RoundPhone phone) {
        Download download = phone.page()
                .waitForDownload(
                        () -> Workplace.button(phone.page(), "Save to a file").click());
        return download.path();
    }

    @Test
    void theStorageOfTheVersionBeforeIsBroughtOnAndLosesNothing() throws Exception {
        RoundPhone phone = phone();
        phone.page().navigate(line.at("/sign-in"));
        String id = "5c1d3f60-7e57-4d6a-8c29-0d6f7c1b2a05";
        phone.page().evaluate(VERSION_1, List.of(Days.FIRST, id));
        phone.load(line.at(ROUND), Workplace.FIRST);
        phone.allSent(Workplace.FIRST);
        keptOnce(id);
        Assertions.assertThat((List<?>) phone.page().evaluate(CARRIED))
                .asList()
                .containsExactlyInAnyOrder("wrenfold-moor 2026-06-01", "wrenfold-moor " + Days.FIRST);
        phone.context().close();
    }

    @Test
    void twoCoursesAreCarriedForOneDate() {
        RoundPhone phone = phone();
        phone.load(line.at(ROUND), Workplace.FIRST);
        phone.page()
                .evaluate(
                        "async day => { const kept = await import('/round/files/kept.js');"
                                + " const mine = (await kept.days()).find(one => one.date === day);"
                                + " await kept.keepDay({...mine, course: 'another', title: 'Another course'}); }",
                        Days.FIRST);
        line.faults((method, path) -> FaultyLine.Fault.LOST_ON_THE_WAY);
        RoundPhone other = phone.reopened(line.at(ROUND + "&course=another"));
        assertThat(other.page().locator("h1")).hasText("Another course");
        line.faults((method, path) -> FaultyLine.Fault.NONE);
        RoundPhone mine = other.reopened(line.at(ROUND + "&course=wrenfold-moor"));
        mine.settled();
        assertThat(mine.page().locator("h1")).not().hasText("Another course");
        Assertions.assertThat((List<?>) mine.page().evaluate(CARRIED))
                .asList()
                .contains("another " + Days.FIRST, "wrenfold-moor " + Days.FIRST);
        phone.context().close();
    }

    @Test
    void aGreenTakesThreeTapsAndTheFirstLoadIsSmall() {
        line.countPacked();
        RoundPhone phone = phone(TAPS);
        phone.load(line.at(ROUND), Workplace.FIRST);
        long day = line.bytes().remove("/round/day").get();
        long rest = line.bytes().values().stream().mapToLong(Number::longValue).sum();
        System.out.println("first load: " + rest + " bytes, and the day " + day);
        Assertions.assertThat(rest).isBetween(1L, (long) MOST_WITHOUT_THE_DAY);
        Assertions.assertThat(day).isBetween(1L, (long) MOST_OF_THE_DAY);
        phone.page().evaluate("taps = 0");
        phone.row("13").locator("a").click();
        phone.page().locator("#as-planned").click();
        phone.page().locator("a.button.wide").click();
        assertThat(phone.page().locator("h1")).containsText("Hole 14");
        Assertions.assertThat((int) phone.page().evaluate("taps")).isLessThanOrEqualTo(3);
        phone.context().close();
    }
}
