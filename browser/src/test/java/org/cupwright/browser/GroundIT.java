package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Ground of a green: closed by drawing it with a mouse and with keys, read with a level, and a ball rolled on it. */
@ExtendWith(AtWork.class)
class GroundIT {
    private static final String DAY = Days.THIRD;

    /** Pixels from the spot to the corners of what is drawn about it. */
    private static final double CORNER = 30;

    /** The same in steps of an arrow key, which are half a pace. */
    private static final int STEPS = 4;

    private static Locator closed(Page page) {
        return page.locator("#spot table.rules tr.fail:has-text('closed ground')");
    }

    @Test
    void closedGroundIsDrawnAndJudged(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            GreenPage green = new GreenPage(work, page);
            green.open("11", DAY);
            green.askInTheMiddle();
            assertThat(closed(page)).hasCount(0);
            String before = green.where().textContent();
            green.unfold("[name=corners]");
            button(page, "Draw it on the map instead").click();
            double[] scrolled = green.middle();
            for (double[] corner : new double[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
                page.mouse().click(scrolled[0] + CORNER * corner[0], scrolled[1] + CORNER * corner[1]);
            }
            kept(page);
            green.open("11", DAY);
            green.askInTheMiddle();
            assertThat(green.where()).containsText("do not cut");
            assertThat(green.where().textContent()).isNotEqualTo(before);
            assertThat(closed(page)).hasCount(1);
        }
    }

    /** The same without a mouse: the cross is moved by arrows, Enter sets a corner, and the last one is taken back. */
    @Test
    void closedGroundIsDrawnByKeysAlone(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            GreenPage green = new GreenPage(work, page);
            green.open("13", DAY);
            green.map().focus();
            green.answered(() -> green.press("Enter", 1));
            assertThat(closed(page)).hasCount(0);
            green.unfold("[name=corners]");
            button(page, "Draw it on the map instead").press("Enter");
            green.map().focus();
            green.press("ArrowLeft", STEPS);
            green.press("ArrowUp", STEPS);
            green.press("Enter", 1);
            green.press("ArrowRight", 2 * STEPS);
            green.press("Enter", 2); // one too many
            Locator corners = page.locator("form.close [name=corners]");
            assertThat(corners.inputValue().split(" ")).hasSize(3);
            button(page, "Take the last corner back").press("Enter");
            assertThat(corners.inputValue().split(" ")).hasSize(2);
            green.map().focus();
            green.press("ArrowDown", 2 * STEPS);
            green.press("Enter", 1);
            green.press("ArrowLeft", 2 * STEPS);
            green.press("Enter", 1);
            kept(page);
            green.open("13", DAY);
            green.map().focus();
            green.answered(() -> green.press("Enter", 1));
            assertThat(closed(page)).hasCount(1);
        }
    }

    /** For the day alone, so that no other test's day is another for it. */
    private static void kept(Page page) {
        page.locator("form.close input[name=from]").fill(DAY);
        page.locator("form.close input[name=until]").fill(DAY);
        assertThat(page.locator("form.close input[name=sure]")).hasCount(0); // nothing looks wrong about it
        Response kept = page.waitForResponse(
                answer -> answer.request().method().equals("POST"),
                () -> button(page, "Keep it").click());
        assertThat(kept.status()).isEqualTo(302);
        page.waitForLoadState();
        assertThat(page.locator(".said")).containsText("Kept: ");
    }

    /** What was read stands in the table of the greens afterwards. */
    @Test
    void aLevelReadingIsKept(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            GreenPage green = new GreenPage(work, page);
            page.navigate(work.at("/course"));
            Locator readings = page.locator("table.known")
                    .first()
                    .locator("tr:has(th:text-is('15')) td.number:not(:has(a))")
                    .last();
            String before = readings.textContent();
            green.open("15", DAY);
            green.askInTheMiddle();
            Locator level = green.unfold("[name=front]");
            assertThat(level).containsText("What the level read at");
            level.locator("[name=front]").fill("1,5");
            level.locator("[name=left]").fill("-0.5");
            button(page, "Keep the reading").click();
            page.waitForURL("**/green/15?**");
            assertThat(green.where()).isVisible();
            page.navigate(work.at("/course"));
            assertThat(readings).not().hasText(before);
        }
    }

    @Test
    void aBallIsRolled(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            GreenPage green = new GreenPage(work, page);
            green.open("12", DAY);
            green.askInTheMiddle();
            page.locator(".roll input[name=far]").fill("6");
            button(page, "Roll").click();
            assertThat(page.locator(".rolled")).containsText("It lies at");
        }
    }

    @Test
    void whereNobodyMeasuredNoBallIsRolled(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            GreenPage green = new GreenPage(work, page);
            green.open("10", DAY);
            green.askInTheMiddle();
            assertThat(page.locator(".roll")).containsText("This green has no survey");
        }
    }
}
