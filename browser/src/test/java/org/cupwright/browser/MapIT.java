package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cupwright.browser.Workplace.button;
import static org.cupwright.browser.Workplace.link;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The map of a green is moved and asked, by keys, wheel and dragging; two spots are held against each other. */
@ExtendWith(AtWork.class)
class MapIT {
    private static final String DAY = Days.THIRD;

    @Test
    void byKeys(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            GreenPage green = new GreenPage(work, page);
            green.open("12", DAY);
            GreenPage.View whole = green.view();
            green.map().focus();
            green.answered(() -> green.press("Enter", 1));
            String first = green.where().textContent();
            green.answered(() -> green.press("ArrowUp", 6));
            assertThat(green.where().textContent()).isNotEqualTo(first);
            green.answered(() -> green.press("ArrowDown", 6));
            assertThat(green.where().textContent()).isEqualTo(first);
            green.press("+", 2);
            GreenPage.View nearer = green.view();
            assertThat(nearer.width()).isCloseTo(whole.width() / 1.96, within(0.01));
            green.press("Shift+ArrowRight", 1);
            assertThat(green.view().x()).isCloseTo(nearer.x() + nearer.width() / 8, within(0.01));
            green.press("-", 1);
            assertThat(green.view().width()).isCloseTo(whole.width() / 1.4, within(0.01));
            green.press("0", 1);
            assertThat(green.view()).isEqualTo(whole);
        }
    }

    /** What is dragged is not asked about; what lies under the pointer stays there as the wheel turns. */
    @Test
    void byMouse(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            AtomicInteger asked = new AtomicInteger();
            page.onRequest(request -> {
                if (request.url().contains("/spot?")) {
                    asked.incrementAndGet();
                }
            });
            GreenPage green = new GreenPage(work, page);
            green.open("12", DAY);
            green.map().scrollIntoViewIfNeeded();
            GreenPage.View whole = green.view();
            button(page, "Larger").click();
            assertThat(green.view().width()).isCloseTo(whole.width() / 1.6, within(0.01));
            button(page, "All of it").click();
            assertThat(green.view()).isEqualTo(whole);
            double[] at = green.middle();
            page.mouse().move(at[0], at[1]);
            page.mouse().wheel(0, -300);
            page.waitForCondition(() -> green.view().width() < whole.width());
            GreenPage.View nearer = green.view();
            page.mouse().down();
            page.mouse().move(at[0] - 60, at[1], new Mouse.MoveOptions().setSteps(5));
            page.mouse().up();
            assertThat(green.view().x()).isGreaterThan(nearer.x());
            assertThat(green.view().width()).isCloseTo(nearer.width(), within(0.01));
            assertThat(asked).hasValue(0);
            green.ask(at[0], at[1]);
            assertThat(asked).hasValue(1);
        }
    }

    @Test
    void twoSpotsStandSideBySide(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            GreenPage green = new GreenPage(work, page);
            green.open("12", DAY);
            green.ask("9", "8", "L");
            String held = green.where().locator("b").textContent();
            link(page, "Compare with another spot").click();
            assertThat(page.locator(".heldNow")).isVisible();
            green.ask("14", "8", "R");
            Locator heads = page.locator("table.two thead th");
            assertThat(heads).hasCount(2);
            assertThat(heads.first()).containsText(held);
            assertThat(heads.last()).containsText(green.where().locator("b").textContent());
            assertThat(page.locator("table.two tbody tr")).not().hasCount(0);
            link(page, "Stop comparing").click();
            assertThat(page.locator("table.two")).hasCount(0);
            assertThat(page.locator("table.rules")).isVisible();
        }
    }

    /** Ground is kept off on a planned day, and freed again. */
    @Test
    void groundIsKeptOffAndFreed(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            GreenPage green = new GreenPage(work, page);
            green.open("14", DAY);
            green.askInTheMiddle();
            page.locator("form.off [name=within]").fill("2");
            button(page, "Not here").click();
            assertThat(page.locator(".wishes")).containsText("Kept off: 2 paces");
            button(page, "Free what was asked").click();
            assertThat(page.locator(".wishes")).hasCount(0);
        }
    }
}
