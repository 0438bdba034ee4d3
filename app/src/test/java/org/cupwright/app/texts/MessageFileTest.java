package org.cupwright.app.texts;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.ChoiceFormat;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class MessageFileTest {
    private final MessageFile english = MessageFile.find("en").orElseThrow();

    @Test
    void englishHasASentenceForEveryKeyThatCanBeAskedFor() {
        Set<String> missing = new TreeSet<>(SentenceKeys.needed());
        missing.removeAll(english.keys());
        assertThat(missing).isEmpty();
    }

    @Test
    void englishHasNoSentenceThatNobodyAsksFor() {
        Set<String> needed = SentenceKeys.needed();
        Set<String> unused = new TreeSet<>(english.keys());
        unused.removeIf(key -> needed.contains(key) || SentenceKeys.used(key));
        assertThat(unused).isEmpty();
    }

    /** A single apostrophe would swallow placeholders without a word. */
    @Test
    void everySentenceIsAPatternWithoutLoneApostrophes() {
        for (String key : english.keys()) {
            String pattern = english.pattern(key).orElseThrow();
            assertThat(pattern.replace("''", "")).as(key).doesNotContain("'");
            assertThat(new MessageFormat(pattern, Locale.ENGLISH).toPattern())
                    .as(key)
                    .isNotBlank();
        }
    }

    /** What stands in a choice is a pattern once more: there an apostrophe swallows placeholders though it is written twice. */
    @Test
    void noChoiceHoldsAnApostrophe() {
        for (String key : english.keys()) {
            for (Object part : new MessageFormat(english.pattern(key).orElseThrow(), Locale.ENGLISH).getFormats()) {
                if (part instanceof ChoiceFormat choice) {
                    assertThat(choice.getFormats())
                            .as(key)
                            .noneMatch(text -> text.toString().contains("'"));
                }
            }
        }
    }

    @Test
    void aLanguageWithoutAFileIsNotFound() {
        assertThat(MessageFile.find("xx")).isEmpty();
        assertThat(MessageFile.find("../en")).isEmpty();
    }
}
