package org.cupwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.cupwright.app.session.Role;
import org.cupwright.app.visit.access.Route;
import org.cupwright.app.visit.access.Routes;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every address with every role, asked for by the browser of somebody who is signed in, with the cookies and the form's
 * token that it has. For a day that there is not, so that whoever may ask changes nothing: what is looked at is whether
 * the door lets through. In a reduced run each fourth address, others with another seed; all of them are asked for
 * there without a browser.
 */
@ExtendWith(AtWork.class)
class EveryDoorIT {
    private static final List<String> OUT = List.of("/sign-out", "/round/share");
    private static final int EVERY = 4;
    private static final int REFUSED = 403;
    private static final int DEFECT = 500;

    /** Answers the status, and the address that it came to in the end. */
    private static final String ASK = """
            async asked => {
                const form = new URLSearchParams({_csrf: asked.token});
                const how = asked.method === 'POST' ? {method: 'POST', body: form} : {};
                const answer = await fetch(asked.path, how);
                return [String(answer.status), new URL(answer.url).pathname];
            }
            """;

    /** What became of a request. */
    private record Answer(int status, String at) {
        boolean leadsIn() {
            return at.equals("/sign-in");
        }
    }

    private static List<Route> routes() {
        int first = (int) Math.floorMod(Suite.seed(), (long) EVERY);
        return IntStream.range(0, Routes.ALL.size())
                .filter(number -> Suite.full() || number % EVERY == first)
                .mapToObj(Routes.ALL::get)
                .toList();
    }

    private static Answer ask(Page page, String token, Route route) {
        String path = route.pattern()
                        .replace("{id}", "00000000-0000-0000-0000-000000000000")
                        .replace("{kind}", "card")
                        .replaceAll("\\{[^}]*}|\\*\\*", "7")
                + "?date=never";
        Object told = page.evaluate(ASK, Map.of("method", route.method(), "path", path, "token", token));
        List<?> both = (List<?>) told;
        return new Answer(Integer.parseInt(both.get(0).toString()), both.get(1).toString());
    }

    private static String token(Page page) {
        return page.locator("input[name=_csrf]").first().inputValue();
    }

    private static BrowserContext somebody(Workplace work, Role role) {
        return role == Role.SUPERINTENDENT
                ? work.laptop(ColorScheme.LIGHT)
                : work.colleague("Door " + role.name().toLowerCase(Locale.ROOT), role.name());
    }

    @ParameterizedTest
    @EnumSource
    void itOpensToWhomTheTableSays(Role role, Workplace work) {
        List<String> otherwise = new ArrayList<>();
        int refused = 0;
        try (BrowserContext browser = somebody(work, role)) {
            Page page = browser.newPage();
            page.navigate(work.at("/password"));
            String token = token(page);
            for (Route route : routes()) {
                if (OUT.contains(route.pattern())) {
                    continue; // whoever goes through is out
                }
                Answer answer = ask(page, token, route);
                boolean may = route.open() || route.roles().contains(role);
                refused += may ? 0 : 1;
                boolean asSaid = may ? answer.status != REFUSED && answer.status < DEFECT : answer.status == REFUSED;
                if (!asSaid || answer.leadsIn() && !route.pattern().equals("/sign-in")) {
                    otherwise.add(route.method() + " " + route.pattern() + ": " + answer);
                }
            }
        }
        assertThat(otherwise).isEmpty();
        assertThat(refused == 0).as("nothing is refused").isEqualTo(role == Role.SUPERINTENDENT);
    }

    /** A stranger has no form of ours but the one to sign in with. */
    @Test
    void strangersAreLedIn(Workplace work) {
        List<String> otherwise = new ArrayList<>();
        try (BrowserContext browser = work.stranger()) {
            Page page = browser.newPage();
            page.navigate(work.at("/sign-in"));
            String token = token(page);
            for (Route route : routes()) {
                if (!route.open() && !ask(page, token, route).leadsIn()) {
                    otherwise.add(route.method() + " " + route.pattern());
                }
            }
        }
        assertThat(otherwise).isEmpty();
    }
}
