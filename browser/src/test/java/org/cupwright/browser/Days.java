package org.cupwright.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;

/**
 * The days of the invented course on which the tests work: few for all, since each takes the office as long as
 * eighteen greens are judged. Tests share them by holes: what one does to a hole, no other looks at.
 */
final class Days {
    /** The day that is today there, and the two after it. */
    static final String FIRST = "2026-06-20";

    static final String SECOND = "2026-06-21";
    static final String THIRD = "2026-06-22";
    private static final int PLANNED = 3;

    private static final double LONGEST_WORK_MILLISECONDS = 600_000;

    private Days() {}

    /** Plans the days beside each other by the page of the weeks, and waits for it; tests may change the drafts. */
    static void plan(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            begin(work, page, FIRST, PLANNED);
            page.waitForURL("**/weeks?*", new Page.WaitForURLOptions().setTimeout(LONGEST_WORK_MILLISECONDS));
            page.waitForSelector("table.grid");
        }
    }

    /** Looks at each of the days, so that an office that was just opened has judged them. */
    static void judged(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            for (String day : List.of(FIRST, SECOND, THIRD)) {
                page.navigate(work.at("/?date=" + day));
                page.waitForSelector(
                        "tr[data-hole='18']", new Page.WaitForSelectorOptions().setTimeout(LONGEST_WORK_MILLISECONDS));
            }
        }
    }

    /** Begins to plan so many days. */
    static void begin(Workplace work, Page page, String from, int days) {
        page.navigate(work.at("/weeks?date=" + from));
        if (!page.locator("#from").isVisible()) {
            page.locator("details.drop:not(.cuts) summary").click();
        }
        page.locator("#from").fill(from);
        page.locator("#days").fill("" + days);
        page.locator("details.drop:not(.cuts) button.main").click();
    }
}
