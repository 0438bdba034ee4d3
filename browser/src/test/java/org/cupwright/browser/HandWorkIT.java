package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The hand work on a telephone without the office: steps by keyboard, ticks, plugs in passing, the cutter's stop. */
class HandWorkIT {
    private static final String DAY = Days.FIRST;

    /** How wide the page may be on a telephone of 360. */
    private static final String TOO_WIDE =
            "document.documentElement.scrollWidth > document.documentElement.clientWidth";

    @TempDir
    private Path folder;

    private Path data() {
        return folder.resolve("data");
    }

    /** A telephone switched on again: what it kept it still has. */
    private void phone(Chromium chromium, String address, Consumer<Page> work) {
        try (BrowserContext phone = chromium.phoneWithMemory(folder.resolve("phone"))) {
            Page page = phone.newPage();
            page.navigate(address);
            work.accept(page);
        }
    }

    private static void carry(Page page) {
        page.locator("#name").fill(Workplace.FIRST);
        page.locator("#password").fill(Workplace.PASSWORD);
        page.locator("button.main").click();
        assertThat(page.locator("#content")).hasAttribute("aria-busy", "false");
        page.waitForFunction("navigator.serviceWorker.controller !== null");
        assertThat(page.locator(".greens li")).hasCount(18);
    }

    @Test
    void everythingOfTheHandWorkGoesWithoutTheOffice() throws Exception {
        MadeOffice.copyTo(data());
        RunningOffice office = RunningOffice.open(data());
        int port = office.port();
        String round = office.at("/round?date=" + DAY);
        try (Chromium chromium = new Chromium()) {
            phone(chromium, round, HandWorkIT::carry);
            office.close();
            phone(chromium, round, HandWorkIT::ticks);
            phone(chromium, round, page -> {
                ticksAreStillThere(page);
                stepsByKeyboard(page, round);
            });
            phone(chromium, round, page -> {
                everyStepAtOnce(page, round);
                threeGreensOneWay(page);
                plugsInPassing(page);
            });
            office = RunningOffice.open(data(), port);
            phone(chromium, round, HandWorkIT::everythingIsTaken);
        } finally {
            office.close();
        }
    }

    private static void ticks(Page page) {
        page.locator("summary:text-is('Before leaving the shed')").click();
        page.getByLabel("hole cutter", new Page.GetByLabelOptions().setExact(true))
                .check();
        page.locator(".shed .tick input").first().check();
        assertThat(page.locator("#ticked")).containsText("2 of ");
        page.locator("#cutter").fill("B2");
        page.locator("#cutter").press("Tab");
        assertThat(Axe.found(page)).isEmpty();
    }

    private static void ticksAreStillThere(Page page) {
        page.locator("summary:text-is('Before leaving the shed')").click();
        assertThat(page.getByLabel("hole cutter", new Page.GetByLabelOptions().setExact(true)))
                .isChecked();
        assertThat(page.locator(".shed .tick input").first()).isChecked();
        assertThat(page.locator("#ticked")).containsText("2 of ");
        assertThat(page.locator("#cutter")).hasValue("B2");
    }

    /** From the summary on by Enter alone: each step opens with its drawing, and the one before it shuts. */
    private static void stepsByKeyboard(Page page, String round) {
        page.navigate(round + "#1");
        page.locator("summary:text-is('The hand work')").focus();
        page.keyboard().press("Enter");
        Locator steps = page.locator(".steps-of-work > ol > li");
        int count = steps.count();
        assertThat(count).isGreaterThan(20);
        page.locator("#next-step").focus();
        for (int i = 1; i < count; i++) {
            page.locator("#next-step").press("Enter");
            assertThat(page.locator("#step" + i)).isFocused();
            assertThat(page.locator("#step" + i)).hasAttribute("aria-expanded", "true");
            assertThat(page.locator("#step" + (i - 1))).hasAttribute("aria-expanded", "false");
            assertThat(page.locator("svg.handwork > g")).hasCount(1);
            assertThat(page.locator("svg.handwork > title")).not().isEmpty();
            assertThat(page.locator("svg.handwork > desc")).not().isEmpty();
        }
        assertThat(page.locator("#next-step")).hasCount(0);
        assertThat(page.locator("#as-planned")).isVisible();
        assertThat(Axe.found(page)).isEmpty();
    }

    private static void everyStepAtOnce(Page page, String round) {
        page.navigate(round + "#2");
        page.locator("a[href='#']").click();
        page.locator(".greens a[href='#2']").click();
        assertThat(page.locator("details.work")).hasAttribute("open", "");
        button(page, "All steps at once").press("Enter");
        assertThat(page.locator("#work-way")).isFocused();
        int steps = page.locator(".steps-of-work > ol > li").count();
        assertThat(page.locator("svg.handwork > g")).hasCount(steps);
        assertThat(page.locator(".steps-of-work .if").first())
                .containsText("The cup will not go? Take soil out of the hole");
        assertThat(page.locator(".steps-of-work .if")).hasCount(5);
        for (ColorScheme light : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(light));
            assertThat(Axe.found(page)).isEmpty();
            assertThat(page.evaluate(TOO_WIDE)).isEqualTo(false);
        }
        page.evaluate("document.documentElement.style.fontSize = '200%'");
        assertThat(page.evaluate(TOO_WIDE)).isEqualTo(false);
        page.evaluate("document.documentElement.style.fontSize = ''");
        page.locator("a[href='#']").click();
        page.locator(".greens a[href='#3']").click();
        assertThat(page.locator("#work-way")).hasText("One step at a time");
        page.locator("a[href='#']").click();
    }

    /** Soil was taken out on three greens in a row: the same words as in the office, with the cutter that was named. */
    private static void threeGreensOneWay(Page page) {
        for (String hole : List.of("1", "2", "3")) {
            assertThat(page.locator(".remark")).hasCount(0);
            page.locator(".greens a[href='#" + hole + "']").click();
            page.locator("#soil").selectOption("took-out");
            page.locator("#as-planned").click();
            assertThat(page.locator("#became")).containsText("Cut as planned");
            page.locator("a[href='#']").click();
        }
        assertThat(page.locator(".remark"))
                .containsText(
                        "Cutter B2: plugs high on 3 greens in a row. Check the stop: slipped, or two stops in use;"
                                + " soil stuck in the shell; a dry plug.");
    }

    /** The plug that was set today is there to be watered; the one before it to be looked at. */
    private static void plugsInPassing(Page page) {
        page.locator(".greens a[href='#3']").click();
        Locator plugs = page.locator(".plugs li");
        assertThat(plugs.first()).containsText("The plug you set here today");
        button(page, "Watered").first().click();
        assertThat(plugs.first()).containsText("on this phone");
        assertThat(page.locator("#plug0-watered")).hasAttribute("aria-pressed", "true");
        page.locator("#plug1-knit").click();
        assertThat(page.locator("#plug1-knit")).hasAttribute("aria-pressed", "true");
        page.locator("summary:text-is('Measured in millimetres')").click();
        page.locator("form:has(#measured-cup) button.main").click();
        assertThat(page.locator("#unsent")).containsText("5 entries");
        page.locator("#measured-cup").fill("26");
        page.locator("form:has(#measured-cup) button.main").click();
        assertThat(page.locator("#unsent")).containsText("6 entries");
    }

    /** The office, that was closed and knows nobody any more, takes each of them. */
    private static void everythingIsTaken(Page page) {
        button(page, "Send now").click();
        page.locator("a[href='/round/again']").click();
        page.locator("#name").fill(Workplace.FIRST);
        page.locator("#password").fill(Workplace.PASSWORD);
        page.locator("button.main").click();
        assertThat(page.locator("#unsent")).hasText("All you wrote down has been sent.");
        assertThat(page.locator(".unsent .problem")).hasCount(0);
    }
}
