package org.cupwright.app.field;

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
import org.cupwright.app.texts.Texts;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** What the changer's page is made of lies on the phone as a whole: what is missing is missed far from the office. */
class RoundFilesTest {
    private static final Path FILES = Path.of("src/main/resources/org/cupwright/app/field/files");

    private static Set<String> found(String pattern) throws IOException {
        Set<String> found = new TreeSet<>();
        try (Stream<Path> files = Files.list(FILES)) {
            for (Path file : files.filter(one -> one.toString().endsWith(".js")).toList()) {
                Pattern.compile(pattern)
                        .matcher(Files.readString(file))
                        .results()
                        .forEach(match -> found.add(match.group(1)));
            }
        }
        return found;
    }

    @Test
    void everyFileIsKeptOnThePhone() throws IOException {
        try (Stream<Path> files = Files.list(FILES)) {
            List<String> names = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.equals("worker.js"))
                    .toList();
            assertThat(names)
                    .isNotEmpty()
                    .allSatisfy(name -> assertThat(PageFiles.worker()).contains("'/round/files/" + name + "'"));
        }
    }

    @Test
    void everyPartThatAnotherOneTakesIsThere() throws IOException {
        assertThat(found("from '\\./([a-z-]+\\.js)'")).isNotEmpty().allMatch(name -> Files.exists(FILES.resolve(name)));
    }

    @Test
    void everyWordThatIsSaidIsCarried() throws IOException {
        Texts texts = Texts.find("en", Door.PAGES, UnitSystem.METRIC, Paces.STANDARD_METRES)
                .orElseThrow();
        Set<String> carried = new TreeSet<>(new RoundWords(texts).all().propertyNames());
        assertThat(found("say\\('([a-zA-Z.]+)'(?!\\s*\\+)")).isNotEmpty().isSubsetOf(carried);
    }
}
