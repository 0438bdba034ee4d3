package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;
import static org.cupwright.browser.Workplace.link;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The morning's job, by pages alone: from signing in to the papers. */
@ExtendWith(AtWork.class)
class MorningIT {
    private static final String TODAY = Days.FIRST;
    private static final String TOMORROW = Days.SECOND;

    /** A paper with eighteen holes and drawings has more than this. */
    private static final int SOME_BYTES = 5_000;

    @Test
    void signInReadPlanChangePublishAndPrint(Workplace work) {
        try (BrowserContext laptop = work.stranger()) {
            Page page = laptop.newPage();
            page.navigate(work.at("/"));
            assertThat(page).hasURL(work.at("/sign-in"));
            work.signIn(page, Workplace.FIRST);
            assertThat(page.locator("h1")).hasText("Sat 20 Jun 2026");
            warnedAboveTheRows(page);
            exchanged(work, page);
            locked(work, page);
            published(work, page);
        }
    }

    /** All that is to be done this morning stands on the page as it comes. */
    @Test
    void eighteenRowsAreSeenWithoutScrolling(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT);
                BrowserContext phone = work.phone(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/?date=" + TODAY));
            Locator rows = page.locator("table.holes tbody tr[data-hole]");
            assertThat(rows).hasCount(18);
            BoundingBox last = rows.last().boundingBox();
            assertThat(last.y + last.height).isLessThanOrEqualTo(page.viewportSize().height);
            Page small = phone.newPage();
            small.navigate(work.at("/?date=" + TODAY));
            assertThat(small.locator("table.holes tbody tr[data-hole]")).hasCount(18);
            assertThat((int) small.evaluate("document.documentElement.scrollWidth"))
                    .isLessThanOrEqualTo(small.viewportSize().width);
        }
    }

    private static void warnedAboveTheRows(Page page) {
        Locator first = page.locator(".first").first();
        assertThat(first).containsText("Know first");
        assertThat(first).containsText("Thunder: stop, take shelter");
        Locator rows = page.locator("table.holes tbody tr[data-hole]");
        assertThat(rows).hasCount(18);
        assertThat(first.boundingBox().y).isLessThan(rows.first().boundingBox().y);
    }

    /** Today's hole on the fourth green goes where tomorrow's was, and the other way round. */
    private static void exchanged(Workplace work, Page page) {
        WeeksTable weeks = new WeeksTable(work, page);
        weeks.open(TODAY);
        String today = weeks.spot(TODAY, "4");
        String tomorrow = weeks.spot(TOMORROW, "4");
        assertThat(today).isNotEqualTo(tomorrow);
        weeks.cell(TODAY, "4").click();
        page.locator("#other").selectOption(TOMORROW);
        button(page, "Exchange").click();
        weeks.change();
        assertThat(weeks.spot(TODAY, "4")).isEqualTo(tomorrow);
        assertThat(weeks.spot(TOMORROW, "4")).isEqualTo(today);
    }

    /** The ninth hole stays where it is when the day is planned anew. */
    private static void locked(Workplace work, Page page) {
        WeeksTable weeks = new WeeksTable(work, page);
        weeks.open(TODAY);
        weeks.cell(TODAY, "9").click();
        button(page, "Lock where it is planned").click();
        weeks.change();
        page.navigate(work.at("/?date=" + TODAY));
        Locator ninth = page.locator("tr[data-hole='9'] .where");
        assertThat(ninth.locator(".locked")).hasText("asked for");
        String where =
                ninth.locator("b").textContent() + ninth.locator(".paces").textContent();
        planAnewAllTheSame(page);
        assertThat(ninth.locator("b").textContent() + ninth.locator(".paces").textContent())
                .isEqualTo(where);
    }

    /** What was changed by hand is not thrown away without a question. */
    private static void planAnewAllTheSame(Page page) {
        assertThat(button(page, "Plan anew")).hasCount(0);
        page.locator("summary", new Page.LocatorOptions().setHasText("Plan anew"))
                .click();
        assertThat(page.locator("details.drop:not(.cuts)")).containsText("What was asked for holes 4, 9 stays");
        button(page, "Plan anew all the same").click();
        assertThat(page.locator("details.drop[open]")).hasCount(0);
        assertThat(button(page, "Publish")).isVisible();
    }

    private static void published(Workplace work, Page page) {
        button(page, "Publish").click();
        assertThat(page.locator("#progress")).containsText(" of 18 cut");
        printed(work, page, "Changer's card");
        printed(work, page, "Hole location sheet");
        page.reload();
        assertThat(button(page, "Publish")).hasCount(0);
        button(page, "Withdraw").click();
        assertThat(button(page, "Publish")).isVisible();
    }

    private static void printed(Workplace work, Page page, String name) {
        APIResponse paper = page.request().get(work.at(link(page, name).getAttribute("href")));
        assertThat(paper.status()).isEqualTo(200);
        assertThat(paper.headers()).containsEntry("content-type", "application/pdf");
        assertThat(new String(paper.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        assertThat(paper.body().length).isGreaterThan(SOME_BYTES);
    }
}
