package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A learner's round without the office: three greens ticked and an exercise of ten, each of which arrives once. */
class LearningIT {
    private static final String LEARNER = "Noor Invented";
    private static final List<String> GREENS = List.of("1", "2", "3");
    private static final int TEN = 10;

    @TempDir
    private Path folder;

    private static void signIn(Page page) {
        page.locator("#name").fill(Workplace.FIRST);
        page.locator("#password").fill(Workplace.PASSWORD);
        page.locator("button.main").click();
    }

    private static Locator green(Page page, String hole) {
        return page.locator(".greens li", new Page.LocatorOptions().setHas(page.locator("b:text-is('" + hole + "')")))
                .locator("a");
    }

    @Test
    void whatWasTickedWithoutTheOfficeArrivesOnce() throws Exception {
        Path data = folder.resolve("data");
        MadeOffice.copyTo(data);
        RunningOffice office = RunningOffice.open(data);
        int port = office.port();
        String round = office.at("/round?date=" + Days.FIRST);
        try (Chromium chromium = new Chromium();
                BrowserContext phone = chromium.phoneWithMemory(folder.resolve("phone"))) {
            Page page = phone.newPage();
            page.navigate(round);
            signIn(page);
            page.evaluate("navigator.serviceWorker.ready.then(worker => worker.scope)");
            page.waitForFunction("navigator.serviceWorker.controller !== null");
            assertThat(page.locator("#content")).hasAttribute("aria-busy", "false");
            office.close();
            takeAlong(page);
            tenLevelPlugs(page);
            GREENS.forEach(hole -> tick(page, hole));
            assertThat(page.locator("#unsent")).containsText("7 entries");
            page.reload();
            assertThat(page.locator("#unsent")).containsText("7 entries are on this phone alone");
            office = RunningOffice.open(data, port);
            comeBack(page);
            assertThat(page.locator("#unsent")).hasText("All you wrote down has been sent.");
            assertThat(page.locator(".unsent .problem")).hasCount(0);
            everythingOnce(page, office);
        } finally {
            office.close();
        }
    }

    /** Somebody who has no account yet. */
    private static void takeAlong(Page page) {
        page.locator("summary:text-is('Learning')").click();
        page.locator("summary:text-is('Somebody who is not in the list')").click();
        page.locator("#learner-other").fill(LEARNER);
        button(page, "Take along").click();
        assertThat(page.locator(".whom select")).hasValue(LEARNER);
    }

    /** Three level, one not, and then ten in a row: with the tenth it is written down. */
    private static void tenLevelPlugs(Page page) {
        Locator row = page.locator(".exercise", new Page.LocatorOptions().setHasText("Plugs level in a row"));
        for (int plug = 1; plug <= 3; plug++) {
            page.locator("#yes-levelPlugs").click();
            assertThat(row).containsText(plug + " of 10");
        }
        page.locator("#no-levelPlugs").click();
        assertThat(row).containsText("0 of 10");
        assertThat(row).containsText("best 3");
        for (int plug = 1; plug < TEN; plug++) {
            page.locator("#yes-levelPlugs").click();
            assertThat(row).containsText(plug + " of 10");
        }
        page.locator("#yes-levelPlugs").click();
        assertThat(row).containsText("best 10, last 10");
        assertThat(row).containsText("0 of 10");
    }

    private static void tick(Page page, String hole) {
        green(page, hole).click();
        Locator steps = page.locator(".learner");
        assertThat(steps).containsText("With " + LEARNER);
        page.locator("#tick-cutting-withHelp").click();
        assertThat(page.locator("#tick-cutting-withHelp")).hasAttribute("aria-pressed", "true");
        page.locator("#tick-plug-alone").click();
        assertThat(page.locator("#tick-plug-alone")).hasAttribute("aria-pressed", "true");
        page.locator("a[href='#']").click();
    }

    private static void comeBack(Page page) {
        button(page, "Send now").click();
        page.locator("a[href='/round/again']").click();
        signIn(page);
        page.waitForURL("**/round");
    }

    private static void everythingOnce(Page page, RunningOffice office) {
        page.navigate(office.at("/course/training"));
        page.locator("th a:text-is('" + LEARNER + "')").click();
        Locator records = page.locator("h2 + .rows li");
        assertThat(records).hasCount(2 * GREENS.size() + 1);
        for (String hole : GREENS) {
            String cut = "Cutting straight and to depth, hole " + hole + ": with help";
            String plug = "Plug level and kept, hole " + hole + ": alone and well";
            assertThat(records.filter(new Locator.FilterOptions().setHasText(cut)))
                    .hasCount(1);
            assertThat(records.filter(new Locator.FilterOptions().setHasText(plug)))
                    .hasCount(1);
        }
        assertThat(records.filter(new Locator.FilterOptions().setHasText("best 10, last 10")))
                .hasCount(1);
        signOff(page);
    }

    /** What was practised decides nothing until somebody says so. */
    private static void signOff(Page page) {
        Locator cutting = page.locator(".rows li", new Page.LocatorOptions().setHasText("Cutting straight"))
                .first();
        assertThat(cutting).containsText("not signed off yet");
        page.locator("summary:text-is('Sign off')").click();
        page.locator("#signSkill").selectOption("CUTTING");
        button(page, "Sign off").click();
        assertThat(cutting).containsText("by " + Workplace.FIRST + ", refresher by");
    }
}
