package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.cupwright.testing.Suite;

/**
 * The same person at pages in ways that differ: language, light, and laptop or telephone. One way by turns, the seed
 * says which first, is held against the rules of WCAG 2.2 AA that programs can tell; {@code -Dcupwright.full=true}:
 * each. Nothing may be beyond the edge of a telephone, in one language by turns, in a full check in both.
 */
final class Lookers implements AutoCloseable {
    private static final double LOADED_MILLISECONDS = 240_000; // all greens may have to be judged first

    /** What has been asked for, has still only the way there in it, or shows how far its work has come. */
    private static final String UNDERWAY =
            ".htmx-request, [hx-get][hx-trigger=load]:has(> a:only-child), [hx-trigger=load] progress,"
                    + " [aria-busy=true]";

    private static final int NARROW = 360;

    /** A laptop and a telephone by turns. */
    private final List<Looker> all;

    /** One way to look. */
    private record Looker(String name, String language, Page page) {
        boolean narrow() {
            return page.viewportSize().width == NARROW;
        }
    }

    /**
     * @param at any address of the office
     * @param keys what the browser keeps of somebody who is signed in
     */
    Lookers(Chromium chromium, String at, String keys) {
        all = List.of(
                looker("laptop, English, light", chromium.laptop(ColorScheme.LIGHT, keys), at, "en", "machine"),
                looker("telephone, Spanish, dark machine", chromium.phone(ColorScheme.DARK, keys), at, "es", "machine"),
                looker("laptop, Spanish, dark chosen", chromium.laptop(ColorScheme.LIGHT, keys), at, "es", "dark"),
                looker("telephone, English, light chosen", chromium.phone(ColorScheme.DARK, keys), at, "en", "light"));
    }

    private static Looker looker(String name, BrowserContext context, String at, String language, String theme) {
        context.addCookies(List.of(
                new Cookie("cupwright-language", language).setUrl(at),
                new Cookie("cupwright-theme", theme).setUrl(at)));
        return new Looker(name, language, context.newPage());
    }

    /**
     * Looks at a page.
     *
     * @param turn whose turn it is
     * @param name what it is called where something is wrong
     * @param status what the office is to answer with
     * @param arrive leads there, from wherever the tab is, and gives the answer
     */
    void look(int turn, String name, int status, Function<Page, Response> arrive) {
        List<String> wrong = new ArrayList<>();
        List<Looker> theirs = turn(turn);
        for (Looker one : theirs) {
            arrived(one, status, arrive);
            rules(one, wrong);
            if (one.narrow()) {
                edge(one, wrong);
            }
        }
        if (theirs.stream().noneMatch(Looker::narrow)) {
            Looker other = all.get((place(turn) + 1) % all.size());
            arrived(other, status, arrive);
            edge(other, wrong);
        }
        assertThat(wrong).as(name + ", seed " + Suite.seed()).isEmpty();
    }

    private List<Looker> turn(int turn) {
        return Suite.full() ? all : List.of(all.get(place(turn)));
    }

    private int place(int turn) {
        return (int) Math.floorMod(turn + Suite.seed(), (long) all.size());
    }

    private static void arrived(Looker one, int status, Function<Page, Response> arrive) {
        Response answer = arrive.apply(one.page());
        assertThat(answer.status()).as(one.name() + " at " + answer.url()).isEqualTo(status);
        assertThat(one.page().locator(UNDERWAY))
                .hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(LOADED_MILLISECONDS));
        assertThat(one.page().locator("html")).hasAttribute("lang", one.language());
    }

    private static void rules(Looker one, List<String> wrong) {
        Axe.found(one.page()).forEach(found -> wrong.add(one.name() + ": " + found));
    }

    private static void edge(Looker one, List<String> wrong) {
        int beyond = (int)
                one.page().evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (beyond > 0) {
            wrong.add(one.name() + ": " + beyond + " pixels beyond the edge");
        }
    }

    @Override
    public void close() {
        all.forEach(one -> one.page().context().close());
    }
}
