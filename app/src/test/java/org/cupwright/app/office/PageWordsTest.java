package org.cupwright.app.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The templates have no words of their own, and every key they name has words in every language. */
class PageWordsTest {
    private static final Path PAGES = Path.of("src/main/resources/org/cupwright/app/office/pages");
    private static final Pattern KEY = Pattern.compile("say\\('([^']+)'(?!\\s*\\+)");
    private static final Pattern TAG = Pattern.compile("(?s)<!--.*?-->|<(?:\"[^\"]*\"|'[^']*'|[^>\"'])*>");
    private static final Pattern SPOKEN =
            Pattern.compile("(?<![:\\w-])(?:title|alt|placeholder|aria-label)=\"([^\"]*[A-Za-z]{3}[^\"]*)\"");
    /** The languages' own names, which are the same in every language. */
    private static final Set<String> SAME_EVERYWHERE = Set.of("English", "Español");

    static Stream<Path> pages() throws IOException {
        try (Stream<Path> all = Files.list(PAGES)) {
            return all.filter(file -> file.toString().endsWith(".html")).sorted().toList().stream();
        }
    }

    static List<String> languages() {
        return Stream.of("en", "es")
                .filter(language -> words(language).isPresent())
                .toList();
    }

    private static Optional<Texts> words(String language) {
        return Texts.find(language, Door.PAGES, UnitSystem.PACES, 0.914);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyKeyHasWords(Path page) throws IOException {
        Matcher keys = KEY.matcher(Files.readString(page));
        Set<String> missing = new TreeSet<>();
        while (keys.find()) {
            if (!words("en").orElseThrow().knows(keys.group(1))) {
                missing.add(keys.group(1));
            }
        }
        assertThat(missing).as("keys of %s without words", page.getFileName()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void noTextStandsInATemplate(Path page) throws IOException {
        String html = Files.readString(page);
        List<String> texts = Stream.of(TAG.split(html))
                .map(String::strip)
                .filter(PageWordsTest::isWord)
                .toList();
        assertThat(texts).as("words in %s", page.getFileName()).isEmpty();
        Matcher spoken = SPOKEN.matcher(html);
        Set<String> said = new TreeSet<>();
        while (spoken.find()) {
            said.add(spoken.group(1));
        }
        said.removeAll(SAME_EVERYWHERE);
        assertThat(said).as("words in attributes of %s", page.getFileName()).isEmpty();
    }

    private static boolean isWord(String text) {
        return text.matches("(?s).*\\p{L}.*") && !SAME_EVERYWHERE.contains(text);
    }

    /** Every key for pages is in every language there is. */
    @ParameterizedTest
    @MethodSource("languages")
    void everyLanguageHasTheKeysOfPages(String language) throws IOException {
        assertThat(keys(language)).containsExactlyInAnyOrderElementsOf(keys("en"));
    }

    private static Set<String> keys(String language) throws IOException {
        Path file = Path.of(
                "src/main/resources/org/cupwright/app/texts",
                "messages_" + language.toLowerCase(Locale.ROOT) + ".pages.properties");
        Properties properties = new Properties();
        if (Files.exists(file)) {
            properties.load(Files.newBufferedReader(file));
        }
        return properties.stringPropertyNames();
    }
}
