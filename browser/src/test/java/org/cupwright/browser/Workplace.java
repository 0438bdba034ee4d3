package org.cupwright.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One office with the invented course, and one browser, for all tests of the pages. Each test has days, greens and
 * people of its own there, and leaves the rest alone.
 */
final class Workplace implements AutoCloseable {
    /** Who answers for the greens there. */
    static final String FIRST = "Ash Overbury";

    static final String PASSWORD = "three plain oars";

    private final RunningOffice office;
    private final Chromium chromium;
    private final Path folder;

    /** What the browsers of people who are signed in keep, so that nobody signs in twice. */
    private final Map<String, String> keys = new LinkedHashMap<>();

    private Workplace(Path folder) {
        this.folder = folder;
        office = RunningOffice.open(data());
        chromium = new Chromium();
    }

    /** With the course, the account and the plans that all tests begin with. */
    static Workplace begun() {
        try {
            Path folder = Files.createTempDirectory("cupwright-browser");
            MadeOffice.copyTo(folder.resolve("data"));
            Workplace begun = new Workplace(folder);
            begun.keys.put(FIRST, begun.signedIn());
            Days.judged(begun);
            return begun;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** With a course, whose superintendent comes in for the first time. */
    static Workplace joining(Path folder) {
        Workplace joining = new Workplace(folder);
        joining.keys.put(FIRST, joining.joined(FIRST, joining.office.code().orElseThrow()));
        return joining;
    }

    private Path data() {
        return folder.resolve("data");
    }

    /** Whoever answers for the greens, in every way of looking at pages. */
    Lookers lookers() {
        return new Lookers(chromium, at("/"), keys.get(FIRST));
    }

    /** What the program wrote down of what went wrong. */
    String log() {
        try {
            Path log = data().resolve("log").resolve("office.log");
            return Files.exists(log) ? Files.readString(log) : "";
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** A file somebody has on the own machine. */
    Path file(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    String at(String path) {
        return office.at(path);
    }

    /** Somebody who is not signed in, at a laptop. */
    BrowserContext stranger() {
        return chromium.laptop(ColorScheme.LIGHT, "");
    }

    /** Whoever answers for the greens, at a laptop. */
    BrowserContext laptop(ColorScheme light) {
        return chromium.laptop(light, keys.get(FIRST));
    }

    /** Whoever answers for the greens, with a telephone. */
    BrowserContext phone(ColorScheme light) {
        return chromium.phone(light, keys.get(FIRST));
    }

    /**
     * Somebody else at a laptop, who is invited where that was not done before.
     *
     * @param role as it is chosen on the page of the people
     */
    BrowserContext colleague(String name, String role) {
        return chromium.laptop(
                ColorScheme.LIGHT, keys.computeIfAbsent(name, person -> joined(person, code(person, role))));
    }

    private String code(String name, String role) {
        try (BrowserContext laptop = laptop(ColorScheme.LIGHT)) {
            Page page = laptop.newPage();
            page.navigate(at("/people"));
            page.locator("#inviteName").fill(name);
            page.locator("#inviteRole").selectOption(role);
            page.locator("form[action='/people/invite'] button").click();
            return page.locator(".code").textContent();
        }
    }

    /** Takes a code, signs in, and gives what the browser keeps of it. */
    private String joined(String name, String code) {
        try (BrowserContext laptop = stranger()) {
            Page page = laptop.newPage();
            page.navigate(at("/join"));
            page.locator("#code").fill(code);
            page.locator("#name").fill(name);
            page.locator("#password").fill(PASSWORD);
            page.locator("button.main").click();
            page.waitForURL("**/sign-in?joined");
            signIn(page, name);
            page.waitForURL(at("/"));
            return laptop.storageState();
        }
    }

    private String signedIn() {
        try (BrowserContext laptop = stranger()) {
            Page page = laptop.newPage();
            page.navigate(at("/sign-in"));
            signIn(page, FIRST);
            page.waitForURL(at("/"));
            return laptop.storageState();
        }
    }

    /** Types name and password on the page where one comes in. */
    void signIn(Page page, String name) {
        page.locator("#name").fill(name);
        page.locator("#password").fill(PASSWORD);
        page.locator("button.main").click();
    }

    /** A button as somebody who cannot see it would ask for it. */
    static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new GetByRoleOptions().setName(name).setExact(true));
    }

    static Locator link(Page page, String name) {
        return page.getByRole(
                AriaRole.LINK, new GetByRoleOptions().setName(name).setExact(true));
    }

    @Override
    public void close() {
        chromium.close();
        office.close();
    }
}
