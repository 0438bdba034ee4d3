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
import org.cupwright.app.office.access.Route;
import org.cupwright.app.office.access.Routes;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page by the rules of WCAG 2.2 AA that a program can tell, light and dark, on a laptop and on a telephone, where
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

    /** The pages there are, by the table of addresses; what stands in braces is of the invented course. */
    static Stream<String> pages() {
        return Routes.ALL.stream()
                .filter(route -> route.method().equals("GET") && isPage(route))
                .map(route -> route.pattern().replace("{hole}", "7"));
    }

    /** Files, papers and parts of pages are no pages. */
    private static boolean isPage(Route route) {
        return !route.pattern().contains("**") && !route.pattern().startsWith("/paper/");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyPageIsAccessible(String path) {
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
