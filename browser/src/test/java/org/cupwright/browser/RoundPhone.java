package org.cupwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A telephone on the changer's page: what a thumb does there, and what the page says became of it. */
record RoundPhone(BrowserContext context, Page page) {
    /** What is waited for twenty seconds is waited for less than one, and pauses are a twentieth. */
    private static final String IMPATIENT = """
            const patience = AbortSignal.timeout.bind(AbortSignal);
            AbortSignal.timeout = ms => patience(ms === 20000 ? 900 : ms);
            const later = window.setTimeout.bind(window);
            window.setTimeout = (work, ms, ...more) => later(work, ms >= 2000 ? ms / 20 : ms, ...more);
            """;

    private static final String ENTRIES =
            "() => [...document.querySelectorAll('[data-entry]')].map(one => [one.dataset.entry, one.dataset.state])";

    private static final String STANDS = """
            () => document.querySelector('#password') ? 'doors'
                : document.querySelector("a[href='/round/again']") ? 'signedOut'
                : document.querySelector('#content')?.ariaBusy === 'false'
                    && document.querySelector('#unsent')?.textContent === 'All you wrote down has been sent.'
                ? 'sent' : ''
            """;

    private static final int LOOK_MILLISECONDS = 50;
    private static final int MOST_LOOKS = 2400;

    /** A page of a telephone that does not wait long. */
    static RoundPhone of(BrowserContext context) {
        context.addInitScript(IMPATIENT);
        return new RoundPhone(context, context.newPage());
    }

    /** The same telephone after its page was closed, without a goodbye, and opened again. */
    RoundPhone reopened(String address) {
        page.close();
        RoundPhone again = new RoundPhone(context, context.newPage());
        again.page().navigate(address);
        return again;
    }

    void signIn(String name) {
        page.locator("#name").fill(name);
        page.locator("#password").fill(Workplace.PASSWORD);
        page.locator("button.main").click();
    }

    /** Opens the round, comes in, and waits until page and day lie on the phone. */
    void load(String address, String name) {
        page.navigate(address);
        signIn(name);
        kept();
    }

    /** The page lies on the phone, and so does the day. */
    void kept() {
        assertThat(page.locator(".greens li").first()).isVisible();
        page.evaluate("navigator.serviceWorker.ready.then(worker => worker.scope)");
        until("navigator.serviceWorker.controller !== null");
        settled();
    }

    /** Waits until something is so there; the page's rules forbid the browser's own way of waiting for it. */
    void until(String is) {
        for (int look = 0; look < MOST_LOOKS; look++) {
            if (Boolean.TRUE.equals(page.evaluate(is))) {
                return;
            }
            page.waitForTimeout(LOOK_MILLISECONDS);
        }
        throw new AssertionError("never so: " + is);
    }

    /** Nothing is being loaded any more. */
    void settled() {
        assertThat(page.locator("#content")).hasAttribute("aria-busy", "false");
    }

    Locator row(String hole) {
        return page.locator(".greens li", new Page.LocatorOptions().setHas(page.locator("b:text-is('" + hole + "')")));
    }

    /** Three taps: the hole, that it is cut as planned, and back to the round. */
    void cut(String hole) {
        row(hole).locator("a").click();
        page.locator("#as-planned").click();
        assertThat(page.locator("#became")).containsText("Cut as planned");
        page.locator("a[href='#']").click();
    }

    void cutElsewhere(String hole, String on, String from) {
        row(hole).locator("a").click();
        page.locator("details.elsewhere summary").click();
        page.locator("#on").fill(on);
        page.locator("#from").fill(from);
        page.locator("details.elsewhere button.main").click();
        assertThat(page.locator("#became")).containsText("Cut elsewhere");
        page.locator("a[href='#']").click();
    }

    /** What the page says of each entry it has: its id, and what became of it. */
    Map<String, String> said() {
        Map<String, String> said = new LinkedHashMap<>();
        for (Object one : (List<?>) page.evaluate(ENTRIES)) {
            said.put((String) ((List<?>) one).get(0), (String) ((List<?>) one).get(1));
        }
        return said;
    }

    /** Asks to send at once, where something is to be sent. */
    void sendNow() {
        page.evaluate("() => { document.querySelector('.unsent .do button')?.click(); }");
    }

    /** Waits until all is sent; whoever is signed out meanwhile signs in. */
    void allSent(String name) {
        for (int look = 0; look < MOST_LOOKS; look++) {
            switch (stands()) {
                case "sent":
                    return;
                case "signedOut":
                    signAgain();
                    break;
                case "doors":
                    signIn(name);
                    break;
                default:
                    page.waitForTimeout(LOOK_MILLISECONDS);
            }
        }
        throw new AssertionError("not sent: " + page.locator(".unsent").textContent());
    }

    /** The way to the door goes by itself where the next try finds that nobody was signed out. */
    private void signAgain() {
        page.evaluate("() => { document.querySelector('a[href=\"/round/again\"]')?.click(); }");
        page.waitForTimeout(LOOK_MILLISECONDS);
    }

    private String stands() {
        try {
            return (String) page.evaluate(STANDS);
        } catch (PlaywrightException left) { // the page is being left for another one
            return "";
        }
    }
}
