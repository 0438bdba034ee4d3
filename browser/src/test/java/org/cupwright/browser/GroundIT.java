package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The map of a green: ground is closed by drawing it, and a ball is rolled. */
@ExtendWith(AtWork.class)
class GroundIT {
    private static final String DAY = "2026-07-22";

    /** Pixels from the spot to the corners of what is drawn about it. */
    private static final double CORNER = 30;

    private static double[] middle(Page page) {
        BoundingBox map = page.locator("#map").boundingBox();
        return new double[] {map.x + map.width / 2, map.y + map.height / 2};
    }

    private static void ask(Page page, double x, double y) {
        page.waitForResponse("**/spot?**", () -> page.mouse().click(x, y));
        assertThat(page.locator("#spot .where")).isVisible();
    }

    @Test
    void closedGroundIsDrawnAndJudged(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/green/11?date=" + DAY));
            double[] at = middle(page);
            ask(page, at[0], at[1]);
            Locator verdict = page.locator("#spot .where .verdict");
            assertThat(page.locator("#spot table.rules tr.fail:has-text('closed ground')"))
                    .hasCount(0);
            String before = verdict.textContent();
            page.locator("details:has(form.close) summary").first().click();
            button(page, "Draw it on the map instead").click();
            double[] scrolled = middle(page);
            for (double[] corner : new double[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
                page.mouse().click(scrolled[0] + CORNER * corner[0], scrolled[1] + CORNER * corner[1]);
            }
            page.locator("form.close input[name=from]").fill(DAY);
            page.locator("form.close input[name=until]").fill(DAY);
            assertThat(page.locator("form.close input[name=sure]")).hasCount(0);
            Response kept = page.waitForResponse(
                    answer -> answer.request().method().equals("POST"),
                    () -> button(page, "Keep it").click());
            assertThat(kept.status()).isEqualTo(302);
            page.waitForLoadState();
            assertThat(page.locator(".said")).containsText("Kept: ");
            page.navigate(work.at("/green/11?date=" + DAY));
            double[] again = middle(page);
            ask(page, again[0], again[1]);
            assertThat(verdict).containsText("do not cut");
            assertThat(verdict.textContent()).isNotEqualTo(before);
            assertThat(page.locator("#spot table.rules tr.fail:has-text('closed ground')"))
                    .hasCount(1);
        }
    }

    @Test
    void aBallIsRolled(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/green/12?date=" + DAY));
            double[] at = middle(page);
            ask(page, at[0], at[1]);
            page.locator(".roll input[name=far]").fill("6");
            button(page, "Roll").click();
            assertThat(page.locator(".rolled")).containsText("It lies at");
        }
    }

    @Test
    void whereNobodyMeasuredNoBallIsRolled(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/green/10?date=" + DAY));
            double[] at = middle(page);
            ask(page, at[0], at[1]);
            assertThat(page.locator(".roll")).containsText("This green has no survey");
        }
    }
}
