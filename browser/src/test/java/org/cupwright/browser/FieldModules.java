package org.cupwright.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route.FulfillOptions;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;

/** The modules of the changer's page in a browser, with neither an office nor a page about them. */
final class FieldModules implements AutoCloseable {
    private static final String FILES = "/org/cupwright/app/field/files";
    private static final String PLACE = "http://modules.invalid";

    private final Chromium chromium = new Chromium();
    private final BrowserContext phone = chromium.phone(ColorScheme.LIGHT, "");
    private final Page page = phone.newPage();

    FieldModules() {
        page.route(PLACE + "/**", route -> {
            String path = URI.create(route.request().url()).getPath();
            boolean module = path.endsWith(".js");
            route.fulfill(new FulfillOptions()
                    .setContentType(module ? "text/javascript" : "text/html")
                    .setBodyBytes(module ? file(path) : new byte[0]));
        });
        page.navigate(PLACE + "/");
    }

    private static byte[] file(String path) {
        try (InputStream in = FieldModules.class.getResourceAsStream(FILES + path)) {
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** What a function of the browser's answers, which may take modules in. */
    Object ask(String function, Object argument) {
        return page.evaluate(function, argument);
    }

    @Override
    public void close() {
        phone.close();
        chromium.close();
    }
}
