package org.cupwright.app.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Scripts and styles show only words that a template handed them: they have none of their own. */
class ScriptWordsTest {
    private static final Path ASSETS = Path.of("src/main/resources/org/cupwright/app/office/assets");

    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)(?<!:)//.*$");
    private static final Pattern LITERAL = Pattern.compile("\"([^\"\n]*)\"|'([^'\n]*)'|`([^`]*)`");

    /** Ways in which a script shows something. */
    private static final Pattern SHOWN =
            Pattern.compile("\\.(?:textContent|innerText|innerHTML|outerHTML|title|alt|placeholder|ariaLabel|label)"
                    + "\\s*\\+?=(?!=)([^;]*)"
                    + "|\\b(?:alert|confirm|prompt|fillText|strokeText|createTextNode|insertAdjacentText"
                    + "|insertAdjacentHTML|append|prepend|replaceChildren|Text|Option)\\(([^;]*)"
                    + "|setAttribute\\(\\s*[\"'`](?:title|alt|placeholder|label|aria-label|aria-description"
                    + "|aria-roledescription|aria-valuetext)[\"'`]([^;]*)");

    /** Choosing elements, whose words are names of tags and classes. */
    private static final Pattern CHOOSING =
            Pattern.compile("(?:querySelector|querySelectorAll|closest|matches)\\(\\s*(?:\"[^\"]*\"|`[^`]*`)");

    /** What looks like words and is none: the language's own, classes, a font, names of keys. */
    private static final Set<String> NO_WORDS =
            Set.of("use strict", "play dragged", "ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown");

    private static final Set<String> KEYS = Set.of("Enter", "Escape", "Home", "End");

    private static final Pattern SENTENCE = Pattern.compile("\\p{L}{2,}[,.;:]? \\p{L}{2,}|^\\p{Lu}\\p{Ll}");

    static Stream<Path> scripts() throws IOException {
        return files(".js");
    }

    private static Stream<Path> files(String ending) throws IOException {
        try (Stream<Path> all = Files.list(ASSETS)) {
            return all.filter(file -> file.toString().endsWith(ending)).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("scripts")
    void aScriptHasNoWords(Path script) {
        assertThat(words(Templates.text(script)))
                .as("words in %s", script.getFileName())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "said.textContent = \"saved\";",
                "said.textContent = it ? it.dataset.told : 'saved';",
                "said.textContent = `saved ${it}`;",
                "tell(\"Saved\");",
                "tell('it is saved');",
                "one.setAttribute(\"aria-label\", \"larger\");",
                "alert(\"saved\");",
                "pen.fillText(\"saved\", 1, 2);",
                "list.append(\"saved\");"
            })
    void aWordIsFoundHoweverItIsShown(String script) {
        assertThat(words(script)).isNotEmpty();
    }

    @Test
    void whatATemplateHandedOverIsNoWord() {
        assertThat(words("said.textContent = other ? table.dataset.other : \"\"; // shown to whoever listens\n"
                        + "table.querySelectorAll(\"tbody tr td\"); if (event.key === \"Enter\") go();"))
                .isEmpty();
    }

    @Test
    void theStylesHaveNoWords() throws IOException {
        Pattern content = Pattern.compile("content:\\s*[\"'][^\"']*\\p{L}[^\"']*[\"']");
        assertThat(files(".css")
                        .flatMap(file -> content.matcher(Templates.text(file).replaceAll("\\\\[0-9a-fA-F]{1,6}", ""))
                                .results()
                                .map(MatchResult::group)))
                .isEmpty();
    }

    private static Set<String> words(String script) {
        String code = COMMENT.matcher(script).replaceAll("");
        Set<String> words = new TreeSet<>();
        SHOWN.matcher(code)
                .results()
                .map(ScriptWordsTest::whatIsIn)
                .flatMap(ScriptWordsTest::literals)
                .filter(text -> text.replaceAll("\\$\\{[^}]*}", "").matches("(?s).*\\p{L}.*"))
                .forEach(words::add);
        literals(CHOOSING.matcher(code).replaceAll("chosen("))
                .filter(text ->
                        SENTENCE.matcher(text.replaceAll("\\$\\{[^}]*}", "")).find())
                .filter(text -> !NO_WORDS.contains(text) && !KEYS.contains(text) && !text.contains("sans-serif"))
                .forEach(words::add);
        return words;
    }

    private static Stream<String> literals(String code) {
        return LITERAL.matcher(code).results().map(ScriptWordsTest::whatIsIn);
    }

    private static String whatIsIn(MatchResult found) {
        return Stream.of(1, 2, 3)
                .map(found::group)
                .filter(text -> text != null)
                .findFirst()
                .orElseThrow();
    }
}
