package org.cupwright.app.texts;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.ChoiceFormat;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

class MessageFilesTest {
    private static final List<String> SUBCOMMANDS = List.of(
            "drawn add",
            "drawn list",
            "drawn remove",
            "history import",
            "level add",
            "level list",
            "level remove",
            "level round",
            "log add",
            "log correct",
            "log cutter-stop",
            "log export",
            "log import",
            "log kinds",
            "log list",
            "log photo",
            "log seen",
            "log withdraw",
            "people audit",
            "people erase",
            "people invite",
            "people remove",
            "people role",
            "survey compare",
            "survey list",
            "weather import",
            "weather list");

    private final Map<String, String> english = MessageFiles.SHIPPED.of("en").orElseThrow();
    private final Map<String, String> commands = MessageFiles.SHIPPED.of("en", Door.COMMANDS);
    private final Map<String, String> pages = MessageFiles.SHIPPED.of("en", Door.PAGES);

    @Test
    void englishHasASentenceForEveryKeyThatCanBeAskedFor() {
        Set<String> missing = new TreeSet<>(SentenceKeys.needed());
        missing.removeAll(english.keySet());
        assertThat(missing).isEmpty();
    }

    @Test
    void pagesHaveASentenceForEveryKeyTheyAskFor() {
        Set<String> missing = new TreeSet<>(SentenceKeys.ofPages());
        missing.removeAll(english.keySet());
        missing.removeAll(pages.keySet());
        assertThat(SentenceKeys.ofPages()).isNotEmpty();
        assertThat(missing).isEmpty();
    }

    @Test
    void pagesHaveNoSentenceThatNoPageAsksFor() {
        Set<String> unused = new TreeSet<>(pages.keySet());
        unused.removeAll(english.keySet()); // what pages say in their own way
        unused.removeIf(SentenceKeys::usedByPages);
        assertThat(unused).isEmpty();
    }

    @Test
    void englishHasNoSentenceThatNobodyAsksFor() {
        Set<String> needed = SentenceKeys.needed();
        Set<String> unused = new TreeSet<>(english.keySet());
        unused.removeIf(key -> needed.contains(key) || SentenceKeys.used(key));
        assertThat(unused).isEmpty();
    }

    /** A single apostrophe would swallow placeholders without a word. */
    @Test
    void everySentenceIsAPatternWithoutLoneApostrophes() {
        for (String pattern : everyPattern()) {
            assertThat(pattern.replace("''", "")).as(pattern).doesNotContain("'");
            assertThat(new MessageFormat(pattern, Locale.ENGLISH).toPattern())
                    .as(pattern)
                    .isNotBlank();
        }
    }

    /**
     * What stands in a choice is a pattern once more: there an apostrophe swallows placeholders though it is written
     * twice.
     */
    @Test
    void noChoiceHoldsAnApostrophe() {
        for (String pattern : everyPattern()) {
            for (Object part : new MessageFormat(pattern, Locale.ENGLISH).getFormats()) {
                if (part instanceof ChoiceFormat choice) {
                    assertThat(choice.getFormats())
                            .as(pattern)
                            .noneMatch(text -> text.toString().contains("'"));
                }
            }
        }
    }

    @Test
    void whatIsSaidAtEveryDoorSpeaksOfNoOptionsAndCommands() {
        assertThat(english.values())
                .allSatisfy(sentence -> assertThat(sentence).doesNotContainPattern("(?i)\\b(options?|commands?)\\b"));
        for (String language : LanguageFiles.languages()) {
            assertThat(LanguageFiles.lines(language, "").values())
                    .allSatisfy(sentence ->
                            assertThat(sentence).doesNotContain(SUBCOMMANDS).doesNotContain("--", "cupwright "));
        }
    }

    /** A wording of the command line only would leave the other doors without a sentence. */
    @Test
    void whatTheCommandLineWordsItselfHasAWordingForEveryDoor() {
        assertThat(commands).isNotEmpty();
        assertThat(english).containsKeys(commands.keySet().toArray(String[]::new));
    }

    /** Both wordings are given the same arguments; the one for every door may leave some out. */
    @Test
    void theWordingForEveryDoorHasNoArgumentsOfItsOwn() {
        commands.forEach(
                (key, sentence) -> assertThat(arguments(sentence)).as(key).containsAll(arguments(english.get(key))));
    }

    private static Set<String> arguments(String pattern) {
        return Pattern.compile("\\{(\\d)")
                .matcher(pattern)
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toSet());
    }

    private List<String> everyPattern() {
        return LanguageFiles.languages().stream()
                .flatMap(language -> LanguageFiles.sentences(language).stream())
                .toList();
    }

    @Test
    void everyFieldHasAWordForEveryDoorAndAnOption() {
        assertThat(SentenceKeys.fields()).isNotEmpty();
        assertThat(english).containsKeys(SentenceKeys.fields().toArray(String[]::new));
        assertThat(commands).containsKeys(SentenceKeys.fields().toArray(String[]::new));
    }

    @Test
    void aLanguageWithoutAFileIsNotFound() {
        assertThat(MessageFiles.SHIPPED.of("xx")).isEmpty();
        assertThat(MessageFiles.SHIPPED.of("../en")).isEmpty();
        assertThat(MessageFiles.SHIPPED.of("en.commands")).isEmpty();
    }

    @Test
    void aFileIsParsedOnceHoweverOftenItsWordsAreAskedFor() {
        List<String> opened = new ArrayList<>();
        MessageFiles counted = new MessageFiles(name -> {
            opened.add(name);
            return MessageFiles.class.getResourceAsStream(name);
        });
        for (UnitSystem units : UnitSystem.values()) {
            assertThat(Texts.find(counted, "en", Door.COMMANDS, units, 0.914)).isPresent();
            assertThat(Texts.find(counted, "xx", Door.PAGES, units, 0.914)).isEmpty();
        }
        assertThat(opened)
                .containsExactlyInAnyOrder(
                        "messages_en.properties",
                        "messages_en.commands.properties",
                        "messages_retired.properties",
                        "messages_xx.properties");
    }
}
