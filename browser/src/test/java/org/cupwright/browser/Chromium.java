package org.cupwright.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.BrowserType.LaunchPersistentContextOptions;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Debian's own browser; nothing is fetched for it. A missing browser fails the tests, and says what to install. */
final class Chromium implements AutoCloseable {
    private static final List<Path> PLACES = List.of(
            Path.of("/usr/bin/chromium"), Path.of("/usr/bin/chromium-browser"), Path.of("/usr/bin/google-chrome"));

    /** A busy machine is no reason to fail. */
    private static final int PATIENCE_MILLISECONDS = 240_000;

    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private final Playwright playwright;
    private final Path program;
    private final Browser browser;

    Chromium() {
        program = Stream.concat(Stream.ofNullable(System.getenv("CHROMIUM")).map(Path::of), PLACES.stream())
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "No browser found: install the package chromium, or name one in CHROMIUM"));
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MILLISECONDS);
        browser = playwright
                .chromium()
                .launch(new LaunchOptions().setExecutablePath(program).setArgs(ARGUMENTS));
    }

    /**
     * A telephone that keeps what pages keep on it when its browser is closed, and finds it when that is opened again.
     *
     * @param memory the folder that is its storage
     * @param further what else the browser is told when it is opened
     */
    BrowserContext phoneWithMemory(Path memory, String... further) {
        BrowserContext phone = playwright
                .chromium()
                .launchPersistentContext(
                        memory,
                        new LaunchPersistentContextOptions()
                                .setExecutablePath(program)
                                .setArgs(Stream.concat(ARGUMENTS.stream(), Stream.of(further))
                                        .toList())
                                .setViewportSize(360, 740));
        phone.setDefaultTimeout(PATIENCE_MILLISECONDS);
        return phone;
    }

    /**
     * Somebody at a laptop.
     *
     * @param keys what that person's browser keeps; empty: nothing
     */
    BrowserContext laptop(ColorScheme light, String keys) {
        return someone(1366, 768, light, keys);
    }

    /** Somebody with a telephone. */
    BrowserContext phone(ColorScheme light, String keys) {
        return someone(360, 740, light, keys);
    }

    private BrowserContext someone(int width, int height, ColorScheme light, String keys) {
        Browser.NewContextOptions options =
                new Browser.NewContextOptions().setViewportSize(width, height).setColorScheme(light);
        BrowserContext context = browser.newContext(keys.isEmpty() ? options : options.setStorageState(keys));
        context.setDefaultTimeout(PATIENCE_MILLISECONDS);
        return context;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
