package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The morning's job on the invented course, by pages alone. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MorningIT {
    private RunningOffice office;
    private Chromium chromium;

    @BeforeAll
    void open(@TempDir Path folder) {
        office = RunningOffice.open(folder.resolve("data"), "--demo");
        chromium = new Chromium();
    }

    @AfterAll
    void close() {
        chromium.close();
        office.close();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name));
    }

    /** What to know first, the plan, publishing it and its paper; the warnings stand above the rows. */
    @Test
    void planPublishAndPrint() {
        try (BrowserContext laptop = chromium.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(office.at("/"));
            assertThat(page.getByRole(AriaRole.HEADING, new GetByRoleOptions().setLevel(1)))
                    .hasText("Sat 20 Jun 2026");
            assertThat(page.getByText("Thunder: stop, take shelter")).isVisible();
            button(page, "Plan the day").click();
            Locator rows = page.locator("table.holes tbody tr[data-hole]");
            assertThat(rows).hasCount(18);
            assertThat(rows.first().locator("th")).hasText("1");
            double first = page.getByText("Know first").boundingBox().y;
            assertThat(first).isLessThan(rows.first().boundingBox().y);
            button(page, "Publish").click();
            assertThat(page.getByText("0 of 18 cut").last()).isVisible();
            assertThat(button(page, "Withdraw")).isVisible();
            printed(page, "Changer's card");
            printed(page, "Hole location sheet");
            button(page, "Withdraw").click();
            assertThat(button(page, "Publish")).isVisible();
        }
    }

    private void printed(Page page, String name) {
        String address = page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName(name))
                .getAttribute("href");
        APIResponse paper = page.request().get(office.at(address));
        assertThat(paper.status()).isEqualTo(200);
        assertThat(paper.headers()).containsEntry("content-type", "application/pdf");
        assertThat(new String(paper.body(), 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
    }

    /** Two people look at the same draft; one plans anew, and the other's publishing is refused and says why. */
    @Test
    void whatWasSeenIsWhatIsPublished() {
        try (BrowserContext one = chromium.laptop(ColorScheme.LIGHT);
                BrowserContext other = chromium.phone(ColorScheme.DARK)) {
            String day = office.at("/?date=2026-06-23");
            Page planner = one.newPage();
            planner.navigate(day);
            button(planner, "Plan the day").click();
            Page publisher = other.newPage();
            publisher.navigate(day);
            button(planner, "Plan anew").click();
            assertThat(button(planner, "Publish")).isVisible();
            button(publisher, "Publish").click();
            assertThat(publisher.getByRole(AriaRole.ALERT)).containsText("is another by now");
            planner.reload();
            assertThat(button(planner, "Publish")).isVisible();
        }
    }

    /** Nothing that is not in the table of addresses is given out, and nothing runs that is not ours. */
    @Test
    void theDoorsAreShut() {
        try (BrowserContext laptop = chromium.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            StringBuilder complaints = new StringBuilder();
            page.onConsoleMessage(message -> {
                if (message.type().equals("error")) {
                    complaints.append(message.text()).append('\n');
                }
            });
            String policy = page.navigate(office.at("/")).headers().get("content-security-policy");
            assertThat(policy).contains("default-src 'none'").doesNotContain("unsafe");
            assertThat(complaints).isEmpty();
            assertThat(page.request().get(office.at("/actuator")).status()).isEqualTo(403);
            assertThat(page.request().get(office.at("/h2-console")).status()).isEqualTo(403);
        }
    }
}
