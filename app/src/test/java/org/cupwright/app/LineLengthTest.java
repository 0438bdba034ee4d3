package org.cupwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No line of a Java source is longer than .editorconfig allows; the formatter leaves long comments as they are. */
class LineLengthTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern SECTION = Pattern.compile("\\[\\*\\.java](?:\\R(?!\\[).*)*");
    private static final Pattern LENGTH = Pattern.compile("(?m)^max_line_length = (\\d+)$");
    private static final int FEWEST_FILES = 500;

    private static int longestCharacters() throws IOException {
        Matcher section = SECTION.matcher(Files.readString(ROOT.resolve(".editorconfig")));
        assertThat(section.find()).isTrue();
        Matcher length = LENGTH.matcher(section.group());
        assertThat(length.find()).isTrue();
        return Integer.parseInt(length.group(1));
    }

    @Test
    void noLineIsLongerThanTheEditorIsTold() throws IOException {
        int longest = longestCharacters();
        List<String> tooLong = new ArrayList<>();
        List<Path> sources = sources();
        for (Path source : sources) {
            List<String> lines = Files.readAllLines(source);
            for (int i = 0; i < lines.size(); i++) {
                if (lines.get(i).codePointCount(0, lines.get(i).length()) > longest) {
                    tooLong.add(ROOT.relativize(source) + ":" + (i + 1));
                }
            }
        }
        assertThat(sources).hasSizeGreaterThan(FEWEST_FILES);
        assertThat(tooLong).isEmpty();
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> modules = Files.list(ROOT)) {
            List<Path> roots = modules.map(module -> module.resolve("src"))
                    .filter(Files::isDirectory)
                    .toList();
            List<Path> sources = new ArrayList<>();
            for (Path root : roots) {
                try (Stream<Path> all = Files.walk(root)) {
                    all.filter(path -> path.toString().endsWith(".java")).forEach(sources::add);
                }
            }
            return sources;
        }
    }
}
