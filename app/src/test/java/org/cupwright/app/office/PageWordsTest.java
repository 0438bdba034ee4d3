package org.cupwright.app.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cupwright.app.office.Templates.Attribute;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.LanguageFiles;
import org.cupwright.app.texts.Texts;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The templates have no words of their own, and every key they name has words in every language. */
class PageWordsTest {
    private static final Pattern LITERAL = Pattern.compile("'([^']*)'");
    private static final Pattern SAY = Pattern.compile("say\\(");

    /** Attributes that nobody reads or hears. All others may be shown, by the browser or by a script. */
    private static final Set<String> UNSEEN = Set.of("""
            accept action aria-busy aria-current aria-describedby aria-hidden aria-invalid aria-live
            aria-pressed autocapitalize autocomplete case charset checked class classappend colspan
            data-corners data-draft data-draw data-mean data-script data-undo data-zoom defer disabled
            each enctype for form fragment hidden href hx-get hx-headers hx-swap hx-swap-oob hx-sync
            hx-target hx-trigger id if inputmode insert lang list max maxlength method min multiple
            name open rel replace required role rows scope selected size spellcheck src switch
            tabindex target type unless xmlns:th""".split("\\s+"));

    /** A value is shown in a field that is typed into, and on a button that is an input. */
    private static final Pattern VALUE_UNSEEN =
            Pattern.compile("(?s)<(?:button|option)\\b.*|<input\\b.*type=\"(?:hidden|checkbox|radio)\".*");

    /** What stands for a value that is worked out elsewhere: names of fields, ids of parts of the page. */
    private static final Pattern NAMES = Pattern.compile("form\\.(?:field|value)\\([^)]*\\)|' ?[pfh]-'");

    /** The languages' own names, which are the same in every language. */
    private static final Set<String> SAME_EVERYWHERE = Set.of("English", "Español");

    static Stream<Path> pages() {
        return Templates.all();
    }

    private static boolean knows(String language, String key) {
        return Texts.find(language, Door.PAGES, UnitSystem.PACES, 0.914)
                .orElseThrow()
                .knows(key);
    }

    /** The first literal of each thing that is said: its key, or the beginning of one that is put together. */
    @ParameterizedTest
    @MethodSource("pages")
    void everyKeyHasWords(Path page) {
        Set<String> missing = new TreeSet<>();
        for (Attribute attribute : Templates.attributes(Templates.text(page))) {
            for (String key : keys(attribute.text())) {
                if (!key.endsWith(".")) {
                    LanguageFiles.languages().stream()
                            .filter(language -> !knows(language, key))
                            .forEach(language -> missing.add(language + ": " + key));
                }
            }
        }
        assertThat(missing).as("keys of %s without words", page.getFileName()).isEmpty();
    }

    /** Literals within what is said that look like keys or beginnings of keys. */
    static List<String> keys(String expression) {
        return LITERAL.matcher(expression)
                .results()
                .filter(literal -> isSaid(expression, literal.start()))
                .map(literal -> literal.group(1))
                .filter(PageWordsTest::isWord)
                .toList();
    }

    /** Whether a place stands between the brackets of {@code say(…)}. */
    private static boolean isSaid(String expression, int at) {
        return SAY.matcher(expression).results().filter(say -> say.end() <= at).anyMatch(say -> {
            int open = 1;
            for (int i = say.end(); i < at && open > 0; i++) {
                open += expression.charAt(i) == '(' ? 1 : expression.charAt(i) == ')' ? -1 : 0;
            }
            return open > 0;
        });
    }

    @ParameterizedTest
    @MethodSource("pages")
    void noTextStandsInATemplate(Path page) {
        String html = Templates.text(page);
        assertThat(Templates.between(html).stream().filter(PageWordsTest::isWord))
                .as("words in %s", page.getFileName())
                .isEmpty();
        assertThat(Templates.attributes(html).stream().filter(PageWordsTest::hasWords))
                .as("words in attributes of %s", page.getFileName())
                .isEmpty();
    }

    /** What the test is to find, in each of the ways in which a word could come into a page. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<p th:text=\"'Save'\"></p>",
                "<p th:text=\"${may} ? 'Save' : ''\"></p>",
                "<p th:text=\"${words.say('page.today') + ' Save'}\"></p>",
                "<p th:text=\"|Save ${it}|\"></p>",
                "<p th:utext=\"'&lt;b>Save'\"></p>",
                "<p th:attr=\"id=${it},aria-label='Save'\"></p>",
                "<p th:attr=\"data-told=${it} ? 'Save' : null\"></p>",
                "<p th:title=\"'Save'\"></p>",
                "<p th:with=\"told='Save'\"></p>",
                "<p title=\"Save\"></p>",
                "<p data-told=\"Save\"></p>",
                "<option label=\"Save\"/>",
                "<input type=\"submit\" value=\"Save\"/>",
                "<input th:value=\"'Save'\"/>",
                "<p th:text=\"#{save}\"></p>"
            })
    void aWordIsFoundWhereverItStands(String html) {
        assertThat(Templates.attributes(html)).anyMatch(PageWordsTest::hasWords);
    }

    @Test
    void whatIsSaidIsNoWord() {
        String html = "<p th:text=\"${words.say(a ? 'page.today' : 'state.' + b)} + ': ' + ${c}\" th:attr=\"open=${d} ?"
                + " 'open' : null,aria-label=${words.say('page.log', d.e())}\"></p>";
        assertThat(Templates.attributes(html)).noneMatch(PageWordsTest::hasWords);
        assertThat(Templates.attributes(html).stream().flatMap(one -> keys(one.text()).stream()))
                .containsExactly("page.today", "state.", "page.log");
    }

    private static boolean hasWords(Attribute attribute) {
        String name = attribute.plainName();
        boolean unseen = UNSEEN.contains(name)
                || name.equals("value") && VALUE_UNSEEN.matcher(attribute.tag()).matches();
        if (unseen || SAME_EVERYWHERE.contains(attribute.text())) {
            return false;
        }
        return attribute.isExpression() ? saysMoreThanKeys(attribute.text()) : isOwnWord(name, attribute.text());
    }

    private static boolean isOwnWord(String name, String text) {
        boolean technical = name.equals("content") || name.equals("value") && text.matches("[LR]?");
        return !technical && isWord(text);
    }

    private static boolean saysMoreThanKeys(String expression) {
        String said = NAMES.matcher(expression).replaceAll("");
        if (said.contains("#{") || isWord(outsideOfBars(said))) {
            return true;
        }
        Matcher literal = LITERAL.matcher(said);
        while (literal.find()) {
            if (isWord(literal.group(1)) && !isSaid(said, literal.start())) {
                return true;
            }
        }
        return keys(said).stream().anyMatch(key -> !key.matches("[a-z]\\w*(?:\\.[a-z]\\w*)*\\.?"));
    }

    /** The words of {@code |words ${…}|}. */
    private static String outsideOfBars(String expression) {
        String[] parts = expression.split("\\|", -1);
        return parts.length == 3 ? parts[1].replaceAll("\\$\\{[^}]*}", "") : "";
    }

    private static boolean isWord(String text) {
        return text.matches("(?s).*\\p{L}.*") && !SAME_EVERYWHERE.contains(text);
    }
}
