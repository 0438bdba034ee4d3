package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.stream.Stream;

/** The page of a green as it stands on somebody's screen. */
record GreenPage(Workplace work, Page page) {
    /** What the drawing shows of itself: where it begins and how much, in its own units. */
    record View(double x, double y, double width, double height) {}

    void open(String hole, String date) {
        page.navigate(work.at("/green/" + hole + "?date=" + date));
        assertThat(page.locator("[data-zoom=in]")).isVisible(); // the script has begun
    }

    Locator map() {
        return page.locator("#map");
    }

    /** Where the asked spot lies, and what is said of it. */
    Locator where() {
        return page.locator("#spot .where");
    }

    /** The middle of the map on the screen. */
    double[] middle() {
        BoundingBox box = map().boundingBox();
        return new double[] {box.x + box.width / 2, box.y + box.height / 2};
    }

    View view() {
        double[] box = Stream.of(page.locator("#map .picture svg")
                        .getAttribute("viewBox")
                        .split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        return new View(box[0], box[1], box[2], box[3]);
    }

    /** Asks about the spot under a point of the screen, and waits for the answer. */
    void ask(double x, double y) {
        answered(() -> page.mouse().click(x, y));
    }

    void askInTheMiddle() {
        double[] at = middle();
        ask(at[0], at[1]);
    }

    /** Asks by paces. */
    void ask(String on, String from, String side) {
        page.locator("#paces [name=on]").fill(on);
        page.locator("#paces [name=from]").fill(from);
        page.locator("#paces [name=side]").selectOption(side);
        answered(() -> page.locator("#paces button").click());
    }

    /** Does what asks about a spot, and waits until the answer stands there. */
    void answered(Runnable asking) {
        page.waitForResponse("**/spot?**", asking);
        assertThat(page.locator(".htmx-request, .htmx-swapping, .htmx-settling"))
                .hasCount(0);
        assertThat(where()).isVisible();
    }

    /** Opens a part of the page that is folded up. */
    Locator unfold(String within) {
        Locator part = page.locator("details.more:has(" + within + ")");
        if (part.getAttribute("open") == null) {
            part.locator("summary").click();
        }
        return part;
    }

    void press(String key, int times) {
        for (int i = 0; i < times; i++) {
            page.keyboard().press(key);
        }
    }
}
