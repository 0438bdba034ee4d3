package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The weeks by keyboard alone, and by dragging. What came of it is read on the page as it is fetched anew. */
@ExtendWith(AtWork.class)
class WeeksByHandIT {
    private static final String FIRST = Days.FIRST;
    private static final String SECOND = Days.SECOND;
    private static final String THIRD = Days.THIRD;

    @Test
    void byKeyboardAlone(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            WeeksTable weeks = new WeeksTable(work, page);
            weeks.open(FIRST);
            String one = weeks.spot(SECOND, "2");
            String other = weeks.spot(THIRD, "2");
            weeks.tabTo(weeks.cell(FIRST, "1"));
            weeks.press("ArrowDown", "ArrowRight", "Space", "ArrowRight", "Space");
            page.waitForURL("**wish=swap**");
            assertThat(weeks.wishes()).hasCount(1);
            weeks.tabTo(button(page, "Change the plans"));
            weeks.press("Enter");
            weeks.done();
            assertThat(weeks.spot(SECOND, "2")).isEqualTo(other);
            assertThat(weeks.spot(THIRD, "2")).isEqualTo(one);
            locked(weeks);
            takenBack(weeks);
        }
    }

    private static void locked(WeeksTable weeks) {
        Page page = weeks.page();
        assertThat(weeks.signs(FIRST, "3")).doesNotContain("+").doesNotContain("=");
        weeks.tabTo(weeks.cell(FIRST, "1"));
        weeks.press("ArrowDown", "ArrowDown", "Enter");
        assertThat(page.locator(".chosen h2")).isFocused();
        weeks.tabTo(button(page, "Lock where it is planned"));
        weeks.press("Enter");
        page.waitForURL("**wish=here**");
        assertThat(weeks.cell(FIRST, "3")).isFocused();
        weeks.tabTo(button(page, "Change the plans"));
        weeks.press("Enter");
        weeks.done();
        assertThat(weeks.signs(FIRST, "3")).containsAnyOf("+", "=");
    }

    private static void takenBack(WeeksTable weeks) {
        weeks.tabTo(button(weeks.page(), "Take that change back"));
        weeks.press("Enter");
        weeks.done();
        assertThat(weeks.signs(FIRST, "3")).doesNotContain("+").doesNotContain("=");
    }

    /** Escape shuts what is shown of a cell, and the reading goes on where it was. */
    @Test
    void escapeLeadsBackToTheCell(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            WeeksTable weeks = new WeeksTable(work, page);
            weeks.open(FIRST);
            weeks.tabTo(weeks.cell(FIRST, "1"));
            weeks.press("End", "Enter");
            assertThat(page.locator(".chosen h2")).isFocused();
            weeks.press("Escape");
            assertThat(weeks.last("1")).isFocused();
            assertThat(page.locator(".chosen")).hasCount(0);
        }
    }

    @Test
    void byDragging(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            WeeksTable weeks = new WeeksTable(work, page);
            weeks.open(FIRST);
            String one = weeks.spot(FIRST, "5");
            String other = weeks.spot(THIRD, "5");
            drag(
                    page,
                    weeks.cell(FIRST, "5").boundingBox(),
                    weeks.cell(THIRD, "6").boundingBox());
            assertThat(weeks.wishes()).hasCount(0); // another green: nothing is meant by it
            drag(
                    page,
                    weeks.cell(FIRST, "5").boundingBox(),
                    weeks.cell(THIRD, "5").boundingBox());
            page.waitForURL("**wish=swap**");
            weeks.change();
            assertThat(weeks.spot(FIRST, "5")).isEqualTo(other);
            assertThat(weeks.spot(THIRD, "5")).isEqualTo(one);
        }
    }

    private static void drag(Page page, BoundingBox from, BoundingBox to) {
        page.mouse().move(from.x + from.width / 2, from.y + from.height / 2);
        page.mouse().down();
        page.mouse().move(to.x + to.width / 2, to.y + to.height / 2, new Mouse.MoveOptions().setSteps(8));
        page.mouse().up();
    }
}
