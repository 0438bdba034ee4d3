package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Entries that change nothing about greens: written down, put right, withdrawn, and one with a photo. */
@ExtendWith(AtWork.class)
class LogbookIT {
    private static final String DAY = "2026-06-19";

    private static Locator entry(Page page, String says) {
        return page.locator(".entries tbody tr", new Page.LocatorOptions().setHasText(says));
    }

    @Test
    void aNoteIsWrittenPutRightAndWithdrawn(Workplace work) {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/log?date=" + DAY));
            Workplace.link(page, "A note").click();
            page.locator("[name='part.text']").fill("invented: the rake is lent");
            button(page, "Keep").click();
            assertThat(page.locator(".said")).containsText("Kept:");
            entry(page, "the rake is lent").getByText("Correct").click();
            page.locator("[name='part.text']").fill("invented: the rake is back");
            button(page, "Keep").click();
            assertThat(page.locator(".said")).containsText("Corrected:");
            assertThat(entry(page, "the rake is lent")).hasCount(0);
            Locator right = entry(page, "the rake is back");
            assertThat(right).containsText(Workplace.FIRST);
            right.getByText("Withdraw").click();
            assertThat(page.locator("form.entry")).containsText("Withdraw this entry?");
            button(page, "Withdraw").click();
            assertThat(page.locator(".said")).containsText("Withdrawn");
            assertThat(right).hasCount(0);
        }
    }

    /** What is odd stands above the entries of today, with its photo, until somebody has seen to it. */
    @Test
    void somethingOddWithAPhotoIsSeenTo(Workplace work, @TempDir Path folder) throws IOException {
        Path photo = folder.resolve("invented.png");
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(work.at("/log"));
            Workplace.link(page, "Something odd").click();
            page.locator("[name='part.text']").fill("invented: a gate stands open");
            page.locator("[name='part.severity']").selectOption("soon");
            page.locator("[name='part.photo']").setInputFiles(photo);
            button(page, "Keep").click();
            Locator odd = page.locator(".odd li", new Page.LocatorOptions().setHasText("a gate stands open"));
            APIResponse shown =
                    page.request().get(work.at(odd.getByText("Photo").getAttribute("href")));
            assertThat(shown.status()).isEqualTo(200);
            assertThat(shown.headers()).containsEntry("content-type", "image/png");
            odd.locator("button").click();
            assertThat(odd).hasCount(0);
            assertThat(entry(page, "a gate stands open").first()).isVisible();
        }
    }
}
