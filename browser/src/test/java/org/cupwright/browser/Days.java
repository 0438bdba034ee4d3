package org.cupwright.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;

/** Days of the invented course as tests want them. */
final class Days {
    private static final double LONGEST_WORK_MILLISECONDS = 600_000;

    private Days() {}

    /** Plans days beside each other by the page of the weeks, and waits for it. */
    static void planned(Workplace work, String from, int days) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/weeks?date=" + from));
            if (!page.locator("#from").isVisible()) {
                page.locator("details.drop summary").click();
            }
            page.locator("#from").fill(from);
            page.locator("#days").fill("" + days);
            page.locator("details.drop button.main").click();
            page.waitForURL("**/weeks?*", new Page.WaitForURLOptions().setTimeout(LONGEST_WORK_MILLISECONDS));
            page.waitForSelector("table.grid");
        }
    }
}
