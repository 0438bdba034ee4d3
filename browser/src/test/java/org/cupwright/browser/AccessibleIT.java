package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.browser.Workplace.button;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.visit.access.Route;
import org.cupwright.app.visit.access.Routes;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page of an office that has a course, as {@link Lookers} look at it; {@link BeginningIT} has the others. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@ExtendWith(AtWork.class)
class AccessibleIT {
    private static final String DAY = Days.FIRST;
    private static final int FOUND = 200;

    /** Addresses that answer no page of their own. */
    private static final Set<String> NO_PAGES = Set.of(
            "/assets/**", // styles, scripts and letters
            "/webjars/**",
            "/paper/{kind}", // a PDF
            "/weeks/paper/{kind}", // a PDF, a calendar, a table
            "/log/photo/{id}", // a photograph
            "/round/files/**", // styles and scripts
            "/round/worker.js",
            "/round/manifest/{language}", // what a telephone puts the page among its own by
            "/round/icon/{icon}",
            "/round/day", // what the changer's page loads
            "/round/who",
            "/round/phone",
            "/round/again", // leads to the changer's page
            "/now", // a part of today, where it is looked at
            "/green/{hole}/spot", // a part of the page of the green, where it is looked at
            "/green", // leads to a green
            "/course/ground",
            "/weeks/wish", // leads back to the weeks
            "/begin"); // leads to a step of the first evening

    /** What stands for the parts of an address that are left open, and what else is worth looking at there. */
    private static final Map<String, List<String>> EXAMPLES = Map.ofEntries(
            Map.entry("/", List.of("/?date=" + DAY, "/?date=2026-06-19", "/?date=2026-08-03")),
            Map.entry(
                    "/green/{hole}",
                    List.of("/green/7?date=" + DAY, "/green/2?on=12&from=5&side=L&level=true&date=" + DAY)),
            Map.entry("/log", List.of("/log?date=" + DAY, "/log?date=2026-06-19", "/log?do=speed")),
            Map.entry("/round", List.of("/round?date=" + DAY, "/round?date=" + DAY + "#7")),
            Map.entry("/course/training/person", List.of("/course/training/person?name=Noor")),
            Map.entry("/sheet/{link}", List.of()),
            Map.entry("/work/{id}", List.of()),
            Map.entry("/weeks", List.of("/weeks?date=" + DAY, "/weeks?date=" + DAY + "&cell=" + DAY + ":4")),
            Map.entry("/weeks/why", List.of("/weeks/why?hole=4&on=" + DAY)),
            Map.entry("/course/findings", List.of("/course/findings", "/course/findings?hole=2")),
            Map.entry(
                    "/course/ground/{hole}",
                    List.of("/course/ground/7", "/course/ground/7?draw=edge", "/course/ground/2?draw=bunker")),
            Map.entry(
                    "/course/settings",
                    List.of("/course/settings", "/course/settings?find=pace", "/course/settings?key=desk.language")),
            Map.entry("/sign-in", List.of("/sign-in", "/sign-in?refused", "/sign-in?ended")));

    private Workplace work;
    private Lookers lookers;

    @BeforeAll
    void open(Workplace workplace) {
        work = workplace;
        lookers = work.lookers();
    }

    @AfterAll
    void close() {
        lookers.close();
    }

    private static Stream<Route> asked() {
        return Routes.ALL.stream().filter(route -> route.method().equals("GET"));
    }

    /** In a full check every example, else one of each address. */
    private static final List<String> PAGES = Suite.ofEach(
            "pages looked at",
            asked().map(Route::pattern)
                    .filter(pattern -> !NO_PAGES.contains(pattern) && !BeginningIT.PAGES.contains(pattern))
                    .map(pattern -> EXAMPLES.getOrDefault(pattern, List.of(pattern)))
                    .filter(examples -> !examples.isEmpty())
                    .toList());

    static List<String> pages() {
        return PAGES;
    }

    static List<Sight> sights() {
        return Sight.ALL;
    }

    /** What is left out is left out by its name; no example stands for nothing. */
    @Test
    void everyAddressIsLookedAtOrNamed() {
        Set<String> patterns = asked().map(Route::pattern).collect(Collectors.toSet());
        assertThat(patterns)
                .containsAll(NO_PAGES)
                .containsAll(EXAMPLES.keySet())
                .containsAll(BeginningIT.PAGES);
        assertThat(pages()).noneMatch(path -> path.contains("{") || path.contains("*"));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void thePageIsAccessible(String path) {
        lookers.look(pages().indexOf(path), path, FOUND, page -> page.navigate(work.at(path)));
    }

    /** What pages come to when something is done there, and what stands where nothing can be given. */
    @ParameterizedTest
    @MethodSource("sights")
    void whatComesOfItIsAccessible(Sight sight) {
        lookers.look(
                sights().indexOf(sight),
                sight.name(),
                sight.status(),
                page -> sight.arrive().apply(work, page));
    }

    /** Long work is looked at while it goes on; then somebody presses Stop, and nothing of it was kept. */
    @Test
    void workThatGoesOnIsAccessibleAndStops() {
        try (BrowserContext laptop = work.laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            Days.begin(work, page, "2026-09-01", 28);
            assertThat(page.locator("progress")).isVisible();
            String address = page.url();
            assertThat(address).contains("/work/");
            lookers.look(0, "work that goes on", FOUND, other -> other.navigate(address));
            button(page, "Stop").click();
            assertThat(page.getByRole(com.microsoft.playwright.options.AriaRole.ALERT))
                    .containsText("Stopped before it was done");
            lookers.look(1, "work that was stopped", FOUND, other -> other.navigate(address));
            page.navigate(work.at("/weeks?date=2026-09-01"));
            assertThat(page.locator("main")).containsText("Nothing is planned");
        }
    }
}
