package org.cupwright.browser;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.regex.Pattern;

/** The table of the weeks as it stands on somebody's page. */
record WeeksTable(Workplace work, Page page) {
    private static final double LONGEST_WORK_MILLISECONDS = 600_000;
    private static final int MOST_TABS = 120;

    void open(String from) {
        page.navigate(work.at("/weeks?date=" + from));
    }

    Locator cell(String date, String hole) {
        return page.locator("#c-" + date + "-" + hole);
    }

    /** The last day of a hole's row: which it is, depends on what else was planned. */
    Locator last(String hole) {
        return page.locator("tr[data-hole='" + hole + "'] button").last();
    }

    /** Where a hole is on a day, as it is read there. */
    String spot(String date, String hole) {
        return cell(date, hole).locator("span[aria-hidden] > b").textContent()
                + cell(date, hole).locator("span[aria-hidden] > span").textContent();
    }

    /** The signs beside a spot; empty where there are none. */
    String signs(String date, String hole) {
        Locator signs = cell(date, hole).locator("i");
        return signs.count() == 0 ? "" : signs.textContent();
    }

    Locator wishes() {
        return page.locator(".wishes ul li");
    }

    /** Has the gathered changes done. */
    void change() {
        Workplace.button(page, "Change the plans").click();
        done();
    }

    /** Waits for the work that was begun, and looks at the table anew. */
    void done() {
        page.waitForURL(
                Pattern.compile("/weeks\\?.*work="),
                new Page.WaitForURLOptions().setTimeout(LONGEST_WORK_MILLISECONDS));
        page.navigate(page.url().replaceFirst("[&?]work=[^&]*", ""));
    }

    /** Goes on by the tab key until something has the focus, as somebody without a mouse does. */
    void tabTo(Locator wanted) {
        for (int i = 0; i < MOST_TABS; i++) {
            page.keyboard().press("Tab");
            if ((boolean) wanted.evaluate("it => it === document.activeElement")) {
                return;
            }
        }
        throw new AssertionError("the tab key does not lead to " + wanted);
    }

    void press(String... keys) {
        for (String key : keys) {
            page.keyboard().press(key);
        }
    }
}
