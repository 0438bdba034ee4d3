package org.cupwright.browser;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.assertj.core.api.Assertions;

/**
 * The rules of WCAG 2.2 AA that a program can tell, as axe-core has them. Only what is wrong is brought out of the
 * browser: what is right is a hundred times as much.
 */
final class Axe {
    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");
    private static final String SCRIPT = script();

    private static final String RUN = """
            rules => axe.run(document, {runOnly: {type: 'tag', values: rules}, resultTypes: ['violations'],
                selectors: false, preload: false, iframes: false}).then(all =>
                [String(all.passes.length)].concat(all.violations.flatMap(rule =>
                    rule.nodes.map(node => rule.id + ', ' + rule.help + ': ' + node.html))))""";

    private Axe() {}

    /** What breaks a rule on the page as it stands. */
    static List<String> found(Page page) {
        page.evaluate(SCRIPT);
        @SuppressWarnings("unchecked")
        List<String> told = (List<String>) page.evaluate(RUN, RULES);
        Assertions.assertThat(Integer.parseInt(told.get(0)))
                .as("rules that were looked at on " + page.url())
                .isPositive();
        return told.subList(1, told.size());
    }

    /** As it lies in the library that brings it. */
    private static String script() {
        try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
