package org.cupwright.app.texts;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * No finished sentence leaves the engine: what it has to say are keys of the message file. English stands only in
 * exceptions that tell a programmer of a defect, and in the sources of settings, which are citations.
 */
class EngineSentencesTest {
    private static final Path ENGINE = Path.of("../engine/src/main/java/org/cupwright");
    private static final Path APP = Path.of("src/main/java/org/cupwright/app");

    private static final Pattern COMMENT =
            Pattern.compile("/\\*.*?\\*/|(?m:^\\s*//[^\n]*$)|\\s// [^\"\\n]*(?=\\n)", Pattern.DOTALL);
    private static final Pattern TOKEN = Pattern.compile("\"(?:\\\\.|[^\"\\\\])*\"|[;{}]|[^;{}\"]+");
    private static final Pattern SENTENCE = Pattern.compile("\".*[A-Za-z]{2,} [A-Za-z].*\"");

    /**
     * What may go before a sentence in its statement: a defect being told of, or where a setting or a constant of it
     * comes from.
     */
    private static final Pattern MAY_SPEAK = Pattern.compile(
            "new (?:Illegal(?:Argument|State)|IndexOutOfBounds|Arithmetic|UncheckedIO)Exception\\(|requireNonNull\\("
                    + "|super\\(reason|(?:\\.setting|weight|amount)\\(|String [A-Z]+ =|check\\(day");

    private static final Pattern SAID =
            Pattern.compile("(?:Message\\.of|new Message|Translated)\\(\\s*\"([^\"]*)\"(\\s*\\+)?");

    private final Map<String, String> english = MessageFiles.SHIPPED.of("en").orElseThrow();

    @Test
    void everyMessageIsSaidByAKeyOfTheMessageFile() {
        Set<String> unknown = new TreeSet<>();
        int said = 0;
        for (String source : SentenceKeys.sources(ENGINE)) {
            Matcher message = SAID.matcher(source);
            while (message.find()) {
                said++;
                String key = message.group(1);
                boolean known = message.group(2) == null
                        ? english.keySet().contains(key)
                        : english.keySet().stream().anyMatch(whole -> whole.startsWith(key));
                if (!known || !key.matches("[a-zA-Z0-9.]+")) {
                    unknown.add(key);
                }
            }
        }
        assertThat(unknown).isEmpty();
        assertThat(said).as("messages looked at").isGreaterThan(30);
    }

    @Test
    void sentencesTellOfDefectsAlone() {
        Set<String> sentences = new TreeSet<>();
        for (String source : SentenceKeys.sources(ENGINE)) {
            collect(COMMENT.matcher(source).replaceAll(""), sentences);
        }
        assertThat(sentences).isEmpty();
    }

    @Test
    void aSentenceIsFoundWhereItStands() {
        Set<String> sentences = new TreeSet<>();
        collect("return \"the cup is\" + too; throw new IllegalStateException(\"a defect of ours\");", sentences);
        assertThat(sentences).containsExactly("\"the cup is\"");
    }

    /** What tells of a defect is shown to nobody: the app takes no text from it. */
    @Test
    void theAppShowsNoTextOfADefect() {
        assertThat(SentenceKeys.literals(
                        APP, "catch \\(IllegalArgumentException (\\w+)\\) \\{[^}]*\\1\\.getMessage\\(\\)"))
                .isEmpty();
    }

    private static void collect(String source, Set<String> sentences) {
        StringBuilder statement = new StringBuilder();
        Matcher token = TOKEN.matcher(source);
        while (token.find()) {
            String text = token.group();
            if (text.matches("[;{}]")) {
                statement.setLength(0);
            } else if (SENTENCE.matcher(text).matches()
                    && !MAY_SPEAK.matcher(statement).find()) {
                sentences.add(text);
            }
            statement.append(text);
        }
    }
}
