package org.cupwright.app.texts;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.desk.policy.DeskPolicy;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every language that has a file says all that English says, with the same arguments, and none of it in English. */
class LanguagesTest {
    /** Words that a language has in common with English. */
    private static final Map<String, Set<String>> SAME =
            Map.of("es", Set.of("Green", "Greens", "green", "greens", "publ", "verticut", "C", "no", "A"));

    /** Units, ways on a map, and what is typed: the same in every language. */
    private static final Set<String> SIGNS =
            Set.of("mm", "cm", "ft", "m", "s", "d", "E", "N", "ID", "set", "port", "bind", "certificate", "key", "PIN");

    private static final Pattern ENGLISH =
            Pattern.compile("(?i)(?<![-.\\w])(?:the|and|of|with|this|that|which|there|were|they)(?![-.=\\w])");

    /** A placeholder with its format; of a choice only that it is one. */
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d+)(,choice,|,[a-z]+[^}]*)?");

    private static final Pattern WORD = Pattern.compile("\\p{L}+");

    /** Widest word of a column on the terminal with a blank after it, characters, by how its keys begin. */
    private static final Map<String, Integer> COLUMNS = Map.of(
            "outcome.", 12,
            "difficulty.", 7,
            "log.kept", 5,
            "log.was", 5,
            "log.now", 5,
            "weather.list.highest", 8,
            "weather.list.lowest", 8,
            "weather.list.rain", 8,
            "weather.list.wind", 8);

    static Stream<String> all() {
        return LanguageFiles.languages().stream();
    }

    static Stream<String> others() {
        return LanguageFiles.others().stream();
    }

    @Test
    void everyLanguageThatHasAFileCanBeSet() {
        assertThat(DeskPolicy.LANGUAGES).containsExactlyElementsOf(LanguageFiles.languages());
    }

    @ParameterizedTest
    @MethodSource("others")
    void saysAllThatEnglishSaysInTheSameOrder(String language) {
        for (String part : LanguageFiles.parts()) {
            assertThat(LanguageFiles.lines(language, part).keySet())
                    .as(language + part)
                    .containsExactlyElementsOf(LanguageFiles.lines("en", part).keySet());
        }
    }

    @ParameterizedTest
    @MethodSource("others")
    void hasTheSamePlaceholdersWithTheSameFormats(String language) {
        pairs(
                language,
                (english, own) ->
                        assertThat(placeholders(own)).as("%s: %s", english, own).isEqualTo(placeholders(english)));
    }

    /** Numbers take every branch of a choice: none, one and more. */
    @ParameterizedTest
    @MethodSource("all")
    void everySentenceIsAPatternThatTakesItsArguments(String language) {
        for (String sentence : LanguageFiles.sentences(language)) {
            for (int number : new int[] {0, 1, 2}) {
                Object[] arguments = Stream.generate(() -> number)
                        .limit(10)
                        .map(Object.class::cast)
                        .toArray();
                assertThat(new MessageFormat(sentence, Locale.forLanguageTag(language)).format(arguments))
                        .as(sentence)
                        .doesNotContain("{", "}", "choice,");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("others")
    void noSentenceIsTheEnglishOne(String language) {
        Set<String> same = SAME.getOrDefault(language, Set.of());
        pairs(language, (english, own) -> {
            if (own.equals(english)) {
                assertThat(words(own))
                        .as("as in English: " + own)
                        .allMatch(word -> same.contains(word) || SIGNS.contains(word));
            }
        });
    }

    @ParameterizedTest
    @MethodSource("others")
    void noCommonWordOfEnglishIsLeft(String language) {
        assertThat(LanguageFiles.sentences(language))
                .allSatisfy(sentence -> assertThat(
                                ENGLISH.matcher(sentence).results().map(MatchResult::group))
                        .as(sentence)
                        .isEmpty());
    }

    @ParameterizedTest
    @MethodSource("all")
    void whatStandsInAColumnFitsIntoIt(String language) {
        COLUMNS.forEach((beginning, widest) -> assertThat(LanguageFiles.lines(language, ""))
                .anySatisfy((key, word) -> assertThat(key).startsWith(beginning))
                .allSatisfy((key, word) -> assertThat(key.startsWith(beginning) ? word.length() : 0)
                        .as(key + " = " + word)
                        .isLessThanOrEqualTo(widest)));
    }

    /** Of a judgement in a list: the place in 39 columns, how far it holds in 25. */
    @ParameterizedTest
    @MethodSource("all")
    void aJudgementFitsIntoItsColumns(String language) {
        Texts texts = Texts.find(language, Door.COMMANDS, UnitSystem.PACES, Paces.STANDARD_METRES)
                .orElseThrow();
        for (String key : LanguageFiles.lines(language, "").keySet()) {
            if (key.startsWith("area.")) {
                assertThat(texts.say("place.right", texts.say(key), texts.halves(10.5), texts.halves(12.5)))
                        .hasSizeLessThan(39);
            }
        }
        String paces = texts.paces(2.5);
        assertThat(texts.say("goodWithin", paces)).hasSizeLessThan(25);
        assertThat(texts.say("sameWithin", paces)).hasSizeLessThan(25);
    }

    @ParameterizedTest
    @MethodSource("all")
    void aYesIsALanguagesOwn(String language) {
        Texts texts = Texts.find(language, Door.COMMANDS, UnitSystem.PACES, Paces.STANDARD_METRES)
                .orElseThrow();
        String[] yes = texts.say("answer.yes").split(" ");
        assertThat(yes).allMatch(texts::isYes).allMatch(word -> texts.isYes(" " + word.toUpperCase(Locale.ROOT)));
        assertThat(texts.isYes("")).isFalse();
        assertThat(texts.isYes("n")).isFalse();
        assertThat(texts.isYes("no")).isFalse();
    }

    private static void pairs(String language, BiConsumer<String, String> check) {
        for (String part : LanguageFiles.parts()) {
            Map<String, String> own = LanguageFiles.lines(language, part);
            LanguageFiles.lines("en", part).forEach((key, english) -> check.accept(english, own.get(key)));
        }
    }

    private static Set<String> placeholders(String sentence) {
        return PLACEHOLDER
                .matcher(sentence)
                .results()
                .map(found -> found.group(1) + (found.group(2) == null ? "" : found.group(2)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> words(String sentence) {
        String said = sentence.replaceAll("\\{\\d+(?:,[a-z]+[^}]*)?}", "");
        return WORD.matcher(said).results().map(MatchResult::group).collect(Collectors.toSet());
    }
}
