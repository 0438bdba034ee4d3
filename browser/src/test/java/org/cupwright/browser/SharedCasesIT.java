package org.cupwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What the changer's page works out by itself, in a browser, held to the cases that the office is held to
 * ({@code app.field.cases.SharedCasesTest}): both agree with the files within a millimetre.
 */
class SharedCasesIT {
    private static final Path CASES = Path.of("../app/src/test/resources/org/cupwright/app/field/cases");
    private static final Path FILES = Path.of("../app/src/main/resources/org/cupwright/app/field/files");
    private static final Path MEASURES = FILES.resolve("measures.js");
    private static final Path HOLDING = Path.of("src/test/resources/org/cupwright/browser/cases.js");
    private static final String SITE = "http://cases.test/";

    private static final Map<String, Integer> AT_LEAST =
            Map.of("pace", 400, "at", 400, "tapes", 400, "meet", 400, "phone", 400);

    private static Chromium chromium;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    private static String cases() throws IOException {
        StringBuilder all = new StringBuilder();
        for (String file : List.of("paces", "places", "tapes", "meetings", "phones")) {
            all.append(Files.readString(CASES.resolve(file + ".txt")));
        }
        return all.toString();
    }

    /** What comes of all cases with measures such as these: how many were tried of each, and the lines that fail. */
    @SuppressWarnings("unchecked") // what a page answers has no type
    private static Map<String, Object> held(String measures) throws IOException {
        try (BrowserContext phone = chromium.phone(ColorScheme.LIGHT, "")) {
            Page page = phone.newPage();
            page.route("**/*", route -> serve(route, measures));
            page.navigate(SITE);
            return (Map<String, Object>) page.evaluate("async text => (await import('/cases.js')).hold(text)", cases());
        }
    }

    private static void serve(Route route, String measures) {
        String path = route.request().url().substring(SITE.length());
        Route.FulfillOptions answer = new Route.FulfillOptions();
        switch (path) {
            case "measures.js" -> answer.setContentType("text/javascript").setBody(measures);
            case "edges.js" -> answer.setContentType("text/javascript").setBody(text(FILES.resolve(path)));
            case "cases.js" -> answer.setContentType("text/javascript").setBody(text(HOLDING));
            default -> answer.setContentType("text/html").setBody("<title>cases</title>");
        }
        route.fulfill(answer);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Test
    @SuppressWarnings("unchecked")
    void theBrowserAgreesWithEveryCase() throws IOException {
        Map<String, Object> held = held(text(MEASURES));
        assertThat((List<String>) held.get("wrong")).isEmpty();
        Map<String, Integer> tried = new TreeMap<>((Map<String, Integer>) held.get("tried"));
        assertThat(tried).containsOnlyKeys("pace", "at", "tapes", "meet", "phone", "green");
        AT_LEAST.forEach((word, least) -> assertThat(tried.get(word)).as(word).isGreaterThanOrEqualTo(least));
        System.out.println("cases held by the browser: " + tried);
    }

    /** Left taken for right, and front for back: the cases notice each. */
    @Test
    void whatIsMirroredIsNoticed() throws IOException {
        assertThat(noticed("left: left <= right", "left: left > right")).isGreaterThan(300);
        assertThat(noticed("return [world[2] * east", "return [-world[2] * east"))
                .isGreaterThan(300);
        assertThat(noticed("[-beside, beside]", "[beside, -beside]")).isZero(); // both are looked at, in any order
        assertThat(noticed("along * x + by * y", "along * x - by * y")).isGreaterThan(200);
        assertThat(noticed("axis: axis >= 180 ? axis - 180 : axis", "axis: 180 - axis"))
                .isGreaterThan(150);
    }

    @SuppressWarnings("unchecked")
    private static int noticed(String right, String wrong) throws IOException {
        String measures = text(MEASURES);
        assertThat(measures).containsOnlyOnce(right);
        return ((List<String>) held(measures.replace(right, wrong)).get("wrong")).size();
    }
}
