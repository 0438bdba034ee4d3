package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Today's sheet as strangers look at it on a morning: some holes are cut, one of them elsewhere than planned. */
class GivenOutIT {
    private static final int FOUND = 200;
    private static final int HOLES = 18;

    @TempDir
    private Path folder;

    private Path data() {
        return folder.resolve("data");
    }

    @Test
    void theSheetIsReadByEverybodyWhoHasItsLink() throws Exception {
        MadeOffice.copyTo(data());
        command("publish");
        command("log", "add", "cup-changed", "--hole", "1,2,3", "--as-planned", "--when", "06:10", "--yes");
        command("log", "add", "cup-changed", "--hole", "7", "--on", "12", "--side", "L8", "--when", "06:40", "--yes");
        try (RunningOffice office = RunningOffice.open(data());
                Chromium chromium = new Chromium()) {
            String link = givenOut(office, chromium);
            try (Lookers strangers = new Lookers(chromium, office.at("/"), "")) {
                for (int turn = 0; turn < 4; turn++) {
                    strangers.look(turn, "today's sheet", FOUND, page -> page.navigate(link));
                }
            }
            try (BrowserContext phone = chromium.phone(ColorScheme.LIGHT, "")) {
                Page page = phone.newPage();
                page.navigate(link);
                assertThat(page.locator("tbody tr")).hasCount(HOLES);
                assertThat(page.locator("tr.otherwise")).hasCount(1);
                assertThat(page.locator("script")).hasCount(0);
                assertThat(page.locator(".where").first()).isInViewport();
            }
        }
    }

    /** By the page of whoever answers for the greens, with an address that is none first. */
    private static String givenOut(RunningOffice office, Chromium chromium) {
        try (BrowserContext laptop = chromium.laptop(ColorScheme.LIGHT, "")) {
            Page page = laptop.newPage();
            page.navigate(office.at("/course/sheet"));
            page.locator("#name").fill(Workplace.FIRST);
            page.locator("#password").fill(Workplace.PASSWORD);
            page.locator("button.main").click();
            button(page, "Give it out").click();
            page.locator("#address").fill("greens.example.org");
            button(page, "Keep the address").click();
            assertThat(page.locator("#refused")).containsText("https://");
            page.locator("#address").fill("https://greens.example.org");
            button(page, "Keep the address").click();
            assertThat(page.locator(".link a")).containsText("https://greens.example.org/sheet/");
            assertThat(Axe.found(page)).isEmpty();
            return office.at(page.locator(".link a").getAttribute("href"));
        }
    }

    private void command(String... words) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                RunningOffice.JAR.toString()));
        line.addAll(List.of(words));
        line.addAll(List.of("--data", data().toString()));
        Path said = folder.resolve("said");
        Process process = new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor()).as(line + "\n" + Files.readString(said)).isZero();
    }
}
