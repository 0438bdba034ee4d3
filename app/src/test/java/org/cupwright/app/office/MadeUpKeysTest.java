package org.cupwright.app.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.LanguageFiles;
import org.cupwright.app.texts.Texts;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Keys that pages put together from a beginning and a name: whatever the name can be has words in every language. A key
 * without words would stand on the page as it is.
 */
class MadeUpKeysTest {
    private static final List<Path> SOURCES = Stream.of("office", "visit", "field")
            .map(Path.of("src/main/java/org/cupwright/app")::resolve)
            .toList();

    private static final Pattern BEGINNING = Pattern.compile("\"([a-z]\\w*(?:\\.\\w+)*\\.)\"\\s*\\+");

    static Stream<String> languages() {
        return LanguageFiles.languages().stream();
    }

    /** Whoever makes a page put keys together says here what they can be. */
    @Test
    void everyBeginningOfAKeyIsListed() throws IOException {
        Set<String> found = new TreeSet<>();
        Templates.all()
                .flatMap(page -> Templates.attributes(Templates.text(page)).stream())
                .flatMap(attribute -> PageWordsTest.keys(attribute.text()).stream())
                .filter(key -> key.endsWith("."))
                .forEach(found::add);
        for (Path room : SOURCES) {
            try (Stream<Path> sources = Files.walk(room)) {
                sources.filter(file -> file.toString().endsWith(".java"))
                        .flatMap(file -> BEGINNING.matcher(Templates.text(file)).results())
                        .forEach(beginning -> found.add(beginning.group(1)));
            }
        }
        assertThat(KeyNames.all().keySet()).containsExactlyElementsOf(found);
    }

    @ParameterizedTest
    @MethodSource("languages")
    void everyNameThatCanComeAfterItHasWords(String language) {
        Texts texts = Texts.find(language, Door.PAGES, UnitSystem.PACES, 0.914).orElseThrow();
        Set<String> missing = new TreeSet<>();
        KeyNames.all()
                .forEach((beginning, names) -> names.map(name -> beginning + name)
                        .filter(key -> !texts.knows(key))
                        .forEach(missing::add));
        assertThat(missing).isEmpty();
    }
}
