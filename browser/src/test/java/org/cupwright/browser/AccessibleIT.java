package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.cupwright.app.office.access.Route;
import org.cupwright.app.office.access.Routes;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page by the rules of WCAG 2.2 AA that a program can tell, and with nothing beyond the edge of a telephone.
 * Page by page in turn light on a laptop and dark on a telephone, the seed says which first; with
 * {@code -Dcupwright.full=true} every page in both on both.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@ExtendWith(AtWork.class)
class AccessibleIT {
    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");
    private static final String DAY = "2026-06-27";

    /** Addresses that answer no page of their own. */
    private static final Map<String, String> NO_PAGES = Map.of(
            "/assets/**", "styles, script and letters",
            "/webjars/**", "script",
            "/paper/{kind}", "a PDF",
            "/weeks/paper/{kind}", "a PDF, a calendar, a table",
            "/green", "leads to a green",
            "/course/ground", "leads to a green",
            "/green/{hole}/spot", "a part of the page of the green, where it is looked at",
            "/weeks/wish", "leads back to the weeks",
            "/log/photo/{id}", "a photograph");

    /** What stands for the parts of an address that are left open, and what else is worth looking at there. */
    private static final Map<String, List<String>> EXAMPLES = Map.of(
            "/", List.of("/?date=" + DAY, "/?date=2026-06-19", "/?date=2026-08-03"),
            "/green/{hole}",
                    List.of(
                            "/green/7?date=" + DAY,
                            "/green/2?on=12&from=5&side=L&level=true&date=" + DAY,
                            "/green/99?date=" + DAY),
            "/log", List.of("/log?date=" + DAY, "/log?date=2026-06-19", "/log?do=greenSpeed"),
            "/sheet/{course}", List.of("/sheet/wrenfold-moor"),
            "/work/{id}", List.of("/work/00000000-0000-0000-0000-000000000000"),
            "/weeks", List.of("/weeks?date=" + DAY, "/weeks?date=" + DAY + "&cell=" + DAY + ":4"),
            "/weeks/why", List.of("/weeks/why?hole=4&on=" + DAY),
            "/course/findings", List.of("/course/findings", "/course/findings?hole=2"),
            "/course/ground/{hole}",
                    List.of("/course/ground/7", "/course/ground/7?draw=edge", "/course/ground/2?draw=bunker"),
            "/course/settings",
                    List.of("/course/settings", "/course/settings?find=pace", "/course/settings?key=desk.language"));

    private final Map<String, BrowserContext> people = new java.util.LinkedHashMap<>();
    private Workplace work;

    @BeforeAll
    void open(Workplace workplace) {
        work = workplace;
        people.put("laptop, light", work.laptop(ColorScheme.LIGHT));
        people.put("telephone, dark", work.phone(ColorScheme.DARK));
        if (Suite.full()) {
            people.put("laptop, dark", work.laptop(ColorScheme.DARK));
            people.put("telephone, light", work.phone(ColorScheme.LIGHT));
        }
        Days.planned(work, DAY, 7);
    }

    @AfterAll
    void close() {
        people.values().forEach(BrowserContext::close);
    }

    private static Stream<Route> asked() {
        return Routes.ALL.stream().filter(route -> route.method().equals("GET"));
    }

    static Stream<String> pages() {
        return asked().map(Route::pattern)
                .filter(pattern -> !NO_PAGES.containsKey(pattern))
                .flatMap(pattern -> EXAMPLES.getOrDefault(pattern, List.of(pattern)).stream());
    }

    /** What is left out is left out by its name; no example stands for nothing. */
    @Test
    void everyAddressIsLookedAtOrNamed() {
        Set<String> patterns = asked().map(Route::pattern).collect(java.util.stream.Collectors.toSet());
        assertThat(patterns).containsAll(NO_PAGES.keySet()).containsAll(EXAMPLES.keySet());
        assertThat(pages()).noneMatch(path -> path.contains("{") || path.contains("*"));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void thePageIsAccessible(String path) {
        List<String> wrong = new ArrayList<>();
        for (String who : lookers(path)) {
            try (Page page = people.get(who).newPage()) {
                page.navigate(work.at(path));
                assertThat(page.locator(".htmx-request, [hx-trigger=load]"))
                        .hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(30_000));
                wrong.addAll(found(page, who));
            }
        }
        assertThat(wrong).as(path + ", seed " + Suite.seed()).isEmpty();
    }

    private List<String> lookers(String path) {
        List<String> all = List.copyOf(people.keySet());
        long turn = pages().toList().indexOf(path) + Suite.seed();
        return Suite.full() ? all : List.of(all.get(Math.floorMod(turn, all.size())));
    }

    private static List<String> found(Page page, String who) {
        // No page has a frame within it: nothing has to be gathered from others, which takes as long again.
        AxeResults results =
                new AxeBuilder(page).withTags(RULES).setLegacyMode(true).analyze();
        List<String> wrong = new ArrayList<>();
        results.getViolations()
                .forEach(rule -> rule.getNodes()
                        .forEach(node ->
                                wrong.add(who + ": " + rule.getId() + ", " + rule.getHelp() + ": " + node.getHtml())));
        int beyond = (int) page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (beyond > 0) {
            wrong.add(who + ": " + beyond + " pixels beyond the edge");
        }
        return wrong;
    }
}
