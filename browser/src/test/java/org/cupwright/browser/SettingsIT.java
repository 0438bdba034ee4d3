package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A setting is changed, refused, and told afterwards with who changed it from what to what. */
@ExtendWith(AtWork.class)
class SettingsIT {
    @Test
    void aSettingIsChangedAndStandsInWhatWasDone(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/course/settings?find=printed"));
            page.getByLabel("Change Paper", new Page.GetByLabelOptions().setExact(true))
                    .click();
            page.locator("#value").selectOption("letter");
            button(page, "Set it").click();
            assertThat(page.locator(".said")).containsText("Paper is letter");
            page.reload();
            assertThat(page.locator(".facts")).containsText("Letter");
            page.navigate(work.at("/people"));
            assertThat(page.locator(".rows").last())
                    .containsText(Workplace.FIRST + ": set paper.size to letter, before a4");
        }
    }

    @Test
    void aValueThatCannotBeIsRefusedWithWhatItTakes(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/course/settings?key=place.paceMetres"));
            page.locator("#value").fill("9");
            button(page, "Set it").click();
            assertThat(page.locator("#refused")).containsText("0.5 to 1.2");
            assertThat(page.locator("#value")).hasValue("9");
            page.navigate(work.at("/course/settings?key=place.paceMetres"));
            assertThat(page.locator(".facts")).containsText("0.914");
        }
    }
}
