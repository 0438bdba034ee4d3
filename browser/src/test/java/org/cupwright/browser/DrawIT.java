package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cupwright.browser.Workplace.button;
import static org.cupwright.browser.Workplace.link;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The map of a green's ground: a bunker is drawn by clicks, and then it is judged how far a spot is from it. */
@ExtendWith(AtWork.class)
class DrawIT {
    private static final String DAY = "2026-07-23";
    private static final String GROUND = "/course/ground/6?date=" + DAY;

    /** Pixels from the cross to where it is clicked; the bunker is a square beside the right of the green. */
    private static final int SIZE = 24;

    private static double number(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(text).isTrue();
        return Double.parseDouble(found.group(1));
    }

    @Test
    void aBunkerIsDrawnAndSpotsAreJudgedByIt(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/green/6?on=10&from=4&side=R&date=" + DAY));
            Locator rule = page.locator("#spot table.rules tr:has-text('bunker')");
            assertThat(rule).containsText("No bunker, water or fall-off by this green");
            page.navigate(work.at(GROUND));
            link(page, "Draw a bunker").click();
            drawBeside(page);
            button(page, "See what changes").click();
            assertThat(page.locator(".changes")).containsText("A new bunker");
            assertThat(page.locator(".hazards li")).hasCount(1); // the edge alone: nothing is kept yet
            button(page, "Keep it").click();
            assertThat(page.locator(".said h2")).containsText("Kept");
            assertThat(page.locator(".hazards li").nth(1)).containsText("Bunker");
            page.navigate(work.at("/green/6?on=10&from=4&side=R&date=" + DAY));
            assertThat(rule).containsText("from the edge by a bunker, water or fall-off");
            page.navigate(work.at(GROUND));
            takeAway(page);
        }
    }

    /**
     * Three corners by the mouse, ten paces on and at the right of the green; the last by the keys, from the middle of
     * the map. Where they lie is read off the field that gets them.
     */
    private static void drawBeside(Page page) {
        Locator map = page.locator("#map");
        BoundingBox edge = page.locator("#map .edge path").boundingBox();
        double x = edge.x + edge.width + SIZE / 2.0;
        double y = edge.y + edge.height / 2 + SIZE;
        page.mouse().click(x, y);
        page.mouse().click(x + SIZE, y);
        page.mouse().click(x + SIZE, y - SIZE);
        assertThat(page.locator("#drawn-now")).containsText("3 corners");
        map.focus();
        page.keyboard().press("ArrowUp");
        page.keyboard().press("Enter");
        String[] corners = page.locator("#corners").inputValue().split("\n");
        assertThat(corners).hasSize(4);
        assertThat(corners[0]).contains("R"); // what is clicked at the right lies at the right
        assertThat(number(corners[1], "R([0-9.]+)")).isGreaterThan(number(corners[0], "R([0-9.]+)"));
        assertThat(number(corners[2], "^([0-9.]+)")).isGreaterThan(number(corners[1], "^([0-9.]+)"));
        page.keyboard().press("Delete");
        page.mouse().click(x, y - SIZE);
        corners = page.locator("#corners").inputValue().split("\n");
        assertThat(number(corners[3], "R([0-9.]+)")).isCloseTo(number(corners[0], "R([0-9.]+)"), within(0.3));
    }

    private static void takeAway(Page page) {
        button(page, "Take number 1 away").click();
        assertThat(page.locator(".changes")).containsText("is taken away");
        button(page, "Keep it").click();
        assertThat(page.locator(".hazards li")).hasCount(1);
        button(page, "Take it back").click();
        assertThat(page.locator(".said")).containsText("Taken back");
        assertThat(page.locator(".hazards li")).hasCount(2);
    }
}
