package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody reads who cannot have what was asked for. */
@ExtendWith(AtWork.class)
class RefusalsIT {
    @ParameterizedTest
    @CsvSource({
        "/nowhere, 404, There is no such page",
        "/work/7, 400, There is no such page",
        "/paper/7, 400, There is no such page",
        "/work/00000000-0000-0000-0000-000000000000, 404, There is no such work",
        "/green/99, 404, hole",
        "/?date=someday, 422, someday",
        "/log/photo/zz, 4.., entry"
    })
    void itIsToldInWordsWithTheWayBack(String path, String status, String says, Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            Response answer = page.navigate(work.at(path));
            assertThat(String.valueOf(answer.status())).matches(status);
            assertThat(page.locator("main")).containsText(says);
            assertThat(page.locator("main")).containsText("try:");
            assertThat(page.content()).doesNotContain("Exception", "\tat ", "Whitelabel");
            Workplace.link(page, "To today").click();
            assertThat(page.locator("h1")).hasText("Sat 20 Jun 2026");
        }
    }

    /** A language or a light is chosen on any page, and one stays there. */
    @Test
    void aWishLeadsBackToThePage(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/log?date=2026-06-19"));
            Workplace.button(page, "Español").click();
            assertThat(page).hasURL(work.at("/log?date=2026-06-19"));
            assertThat(page.locator("html")).hasAttribute("lang", "es");
            page.navigate(work.at("/nowhere"));
            assertThat(page.locator("html")).hasAttribute("lang", "es");
            assertThat(page.locator("main")).not().containsText("no such page");
        }
    }

    /** A form that was open too long is not taken, and says so; so does a part of a page. */
    @Test
    void whoeverIsOutSignsInAgain(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/people"));
            laptop.clearCookies();
            page.locator("#inviteName").fill("Nobody Yet");
            Workplace.button(page, "Make a code").click();
            assertThat(page).hasURL(work.at("/sign-in?ended"));
            assertThat(page.getByRole(com.microsoft.playwright.options.AriaRole.STATUS))
                    .containsText("was not taken");
            work.signIn(page, Workplace.FIRST);
            page.waitForURL(work.at("/"));
            page.navigate(work.at("/people"));
            assertThat(page.locator("main")).not().containsText("Nobody Yet");
            page.navigate(work.at("/green/7"));
            laptop.clearCookies();
            page.locator("#map").click();
            page.waitForURL("**/sign-in?ended");
            work.signIn(page, Workplace.FIRST);
            page.waitForURL(work.at("/"));
            assertThat(page.locator("nav").first()).isVisible();
        }
    }

    /** Nothing that is not in the table of addresses is given out, and nothing runs that is not ours. */
    @Test
    void theDoorsAreShut(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            StringBuilder complaints = new StringBuilder();
            page.onConsoleMessage(message -> {
                if (message.type().equals("error")) {
                    complaints.append(message.text()).append('\n');
                }
            });
            String policy = page.navigate(work.at("/")).headers().get("content-security-policy");
            assertThat(policy).contains("default-src 'none'").doesNotContain("unsafe");
            for (String path : List.of("/weeks", "/green/7", "/log", "/course", "/course/settings", "/people")) {
                page.navigate(work.at(path));
            }
            assertThat(complaints).isEmpty();
            for (String path : List.of("/actuator", "/h2-console", "/assets/../pages/today.html")) {
                assertThat(page.request().get(work.at(path)).status()).isIn(400, 404);
            }
        }
    }
}
