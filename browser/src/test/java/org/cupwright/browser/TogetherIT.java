package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Two people have the same day before them. */
@ExtendWith(AtWork.class)
class TogetherIT {
    private static final String DAY = Days.SECOND;
    private static final String OTHER = "Hazel Underhill";

    /** The second is told what the first did, by name; what the first did is still there. */
    @Test
    void theSecondIsToldAndNothingIsLost(Workplace work) {
        try (BrowserContext one = work.laptop(ColorScheme.LIGHT);
                BrowserContext other = work.colleague(OTHER, "OFFICIAL")) {
            Page second = other.newPage();
            second.navigate(work.at("/?date=" + DAY));
            Locator third = second.locator("tr[data-hole='3'] .where");
            String before = third.locator(".paces").textContent();

            Page first = one.newPage();
            first.navigate(work.at("/green/3?on=9&from=8&side=L&date=" + DAY));
            first.locator("#spot form[action*='/set'] button").click();
            assertThat(first.locator(".wishes")).containsText(Workplace.FIRST);

            planAnew(second);
            assertThat(second.getByRole(com.microsoft.playwright.options.AriaRole.ALERT))
                    .containsText("hole 3 elsewhere, by " + Workplace.FIRST);
            second.navigate(work.at("/?date=" + DAY));
            assertThat(third.locator(".locked")).isVisible();
            String asked = third.locator(".paces").textContent();
            assertThat(asked).isNotEqualTo(before);
            assertThat(changedByHand(second)).isVisible();
            planAnew(second);
            assertThat(second.locator("details.drop[open]")).hasCount(0);
            assertThat(third.locator(".paces")).hasText(asked);
        }
    }

    /** Whoever has today before him sees what others write down, and what he has opened stays as it is. */
    @Test
    void whatOthersWriteDownAppears(Workplace work) {
        try (BrowserContext one = work.laptop(ColorScheme.LIGHT);
                BrowserContext other = work.colleague("Robin Marlow", "CHANGER")) {
            Page office = one.newPage();
            office.navigate(work.at("/"));
            button(office, "Publish").click();
            assertThat(button(office, "Withdraw")).isVisible();
            Locator progress = office.locator("#progress");
            int cut = Integer.parseInt(progress.textContent().strip().split(" ")[0]);
            Locator tenth = office.locator("tr[data-hole='10'] th a");
            tenth.focus();

            Page green = other.newPage();
            green.navigate(work.at("/log?do=as-planned"));
            green.locator(".entry [name=hole]").selectOption("17");
            button(green, "Keep").click();
            assertThat(green.locator(".said")).containsText("Kept");

            office.evaluate("document.dispatchEvent(new Event('visibilitychange'))");
            assertThat(progress).containsText(cut + 1 + " of 18 cut");
            assertThat(office.locator("tr[data-hole='17'] .done")).containsText("Robin Marlow");
            assertThat(tenth).isFocused();
            whatIsDoneFitsOnATelephone(work);
            button(office, "Withdraw").click();
            assertThat(button(office, "Publish")).isVisible();
        }
    }

    /** What stands in the button's place where somebody changed the draft by hand: as another test may have. */
    private static Locator changedByHand(Page page) {
        return page.locator("summary", new Page.LocatorOptions().setHasText("Plan anew"));
    }

    private static void planAnew(Page page) {
        if (changedByHand(page).isVisible()) {
            changedByHand(page).click();
            button(page, "Plan anew all the same").click();
        } else {
            button(page, "Plan anew").click();
        }
    }

    /** Whoever walks the greens sees what is cut, and nothing beyond the edge. */
    private static void whatIsDoneFitsOnATelephone(Workplace work) {
        try (BrowserContext pocket = work.phone(ColorScheme.LIGHT)) {
            Page page = pocket.newPage();
            page.navigate(work.at("/"));
            assertThat(page.locator("tr[data-hole='17'] .done")).isVisible();
            assertThat(page.locator("tr[data-hole='16'] .done")).isHidden(); // nothing is done there
            assertThat((int) page.evaluate(
                            "document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                    .isZero();
        }
    }

    /** Nobody publishes what somebody else has made another plan of meanwhile. */
    @Test
    void whatWasSeenIsWhatIsPublished(Workplace work) {
        String day = work.at("/?date=" + Days.THIRD);
        try (BrowserContext one = work.laptop(ColorScheme.LIGHT);
                BrowserContext other = work.colleague(OTHER, "OFFICIAL")) {
            Page planner = one.newPage();
            planner.navigate(day);
            Page publisher = other.newPage();
            publisher.navigate(day);
            planAnew(planner);
            assertThat(button(planner, "Publish")).isVisible();
            button(publisher, "Publish").click();
            assertThat(publisher.getByRole(com.microsoft.playwright.options.AriaRole.ALERT))
                    .containsText("Since these plans were shown");
            planner.reload();
            assertThat(button(planner, "Publish")).isVisible();
        }
    }
}
