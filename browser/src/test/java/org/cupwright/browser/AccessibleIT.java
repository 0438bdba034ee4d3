package org.cupwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pages by the rules of WCAG 2.2 AA that a program can tell, light and dark, on a laptop and on a telephone, where
 * nothing may stand beyond the edge.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccessibleIT {
    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    private RunningOffice office;
    private Chromium chromium;

    @BeforeAll
    void open(@TempDir Path folder) {
        office = RunningOffice.open(folder.resolve("data"), "--demo");
        chromium = new Chromium();
        try (BrowserContext laptop = chromium.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(office.at("/"));
            page.locator("button.main").click();
            page.waitForSelector("table.holes");
        }
    }

    @AfterAll
    void close() {
        chromium.close();
        office.close();
    }

    /** Pages that are held to it so far; those with the day, the weeks, the logbook and the course are to follow. */
    static Stream<String> pages() {
        return Stream.of("/sign-in", "/join", "/people", "/password", "/green/7");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void thePageIsAccessible(String path) {
        for (ColorScheme light : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            try (BrowserContext laptop = chromium.laptop(light);
                    BrowserContext phone = chromium.phone(light)) {
                check(laptop.newPage(), path);
                check(phone.newPage(), path);
            }
        }
    }

    private void check(Page page, String path) {
        page.navigate(office.at(path));
        AxeResults results = new AxeBuilder(page).withTags(RULES).analyze();
        assertThat(results.getViolations())
                .as(path)
                .extracting(rule -> rule.getId() + ": " + rule.getHelp() + " "
                        + rule.getNodes().get(0).getHtml())
                .isEmpty();
        int beyond = (int) page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(beyond).as("pixels beyond the edge on %s", path).isZero();
    }
}
