package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

/**
 * Two people share a round: each sees the own holes first, with no connection as well. In an office of their own, since
 * no hole of the day may have been cut by whoever was tried before.
 */
class TwoPhonesIT {
    private static final String DAY = Days.FIRST;
    private static final String OTHER = "Noor Ito";

    @Test
    void eachSeesTheOwnHolesFirst() {
        try (Workplace work = Workplace.begun();
                BrowserContext office = work.laptop(ColorScheme.LIGHT);
                BrowserContext late = work.laptop(ColorScheme.LIGHT);
                BrowserContext one = work.phone(ColorScheme.DARK);
                BrowserContext other = work.colleague(OTHER, "CHANGER")) {
            Page second = late.newPage();
            second.navigate(work.at("/?date=" + DAY));
            Page page = office.newPage();
            page.navigate(work.at("/?date=" + DAY));
            give(page, Workplace.FIRST, "1-9", OTHER.toUpperCase(java.util.Locale.ROOT), "10-17");
            assertThat(page.locator(".standing .starts")).containsText(OTHER + ": 10–17. Nobody has 18.");
            assertThat(page.locator("tr[data-hole='10'] .by")).containsText(OTHER + " · by 06:50");

            give(second, "Kim", "1-18", "", "");
            assertThat(second.getByRole(AriaRole.ALERT)).containsText(Workplace.FIRST + ": 1–9.");
            second.navigate(work.at("/?date=" + DAY));
            assertThat(second.locator("tr[data-hole='10'] .by")).containsText(OTHER);

            second.locator("details.cuts summary").click();
            Assertions.assertThat(Axe.found(second)).isEmpty();

            Page mine = carried(one, work);
            Assertions.assertThat(Axe.found(mine)).isEmpty();
            Page theirs = carried(other, work);
            one.setOffline(true);
            other.setOffline(true);
            ownFirst(mine, "1", 9);
            ownFirst(theirs, "10", 8);
            onToTheNextOfOnesOwn(theirs);
        }
    }

    private static void give(Page page, String first, String holes, String second, String others) {
        page.locator("details.cuts summary").click();
        page.locator("#cut-person0").fill(first);
        page.locator("#cut-holes0").fill(holes);
        page.locator("#cut-person1").fill(second);
        page.locator("#cut-holes1").fill(others);
        page.locator("#cut-start").selectOption("TWO_TEES");
        page.locator("#cut-first").fill("7:00");
        page.locator("details.cuts button.main").click();
    }

    private static Page carried(BrowserContext phone, Workplace work) {
        Page page = phone.newPage();
        page.navigate(work.at("/round?date=" + DAY));
        assertThat(page.locator("#content")).hasAttribute("aria-busy", "false");
        assertThat(page.locator(".greens li")).hasCount(18);
        return page;
    }

    /** One's own stand first, and alone where that is wanted; the phone keeps the wish. */
    private static void ownFirst(Page page, String first, int own) {
        Locator holes = page.locator(".greens li b");
        assertThat(holes.first()).hasText(first);
        assertThat(page.locator(".greens li .by").first()).containsText("by 06:50");
        assertThat(page.locator(".others .greens li")).hasCount(18 - own);
        button(page, "My holes alone").click();
        assertThat(holes).hasCount(own);
        page.locator(".greens li a").first().click();
        page.locator("a[href='#']").click();
        assertThat(holes).hasCount(own);
        button(page, "All holes").click();
        assertThat(holes).hasCount(18);
        page.locator("details.shed summary").click();
        assertThat(page.locator("details.shed .own")).containsText("Of these for your holes");
    }

    /** What is done is passed over; after the last comes what was left out before it. */
    private static void onToTheNextOfOnesOwn(Page page) {
        cut(page, "11");
        page.navigate(page.url().replaceAll("#.*", "") + "#10");
        assertThat(page.locator("a.wide")).hasText("On to hole 12");
        cut(page, "17");
        assertThat(page.locator("a.wide")).hasText("On to hole 10");
    }

    private static void cut(Page page, String hole) {
        page.navigate(page.url().replaceAll("#.*", "") + "#" + hole);
        page.locator("#as-planned").click();
        assertThat(page.locator("#became")).containsText("Cut as planned");
    }
}
