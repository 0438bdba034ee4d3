package org.cupwright.app.texts;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The message files as they lie in the sources: which languages there are, and the lines of each. */
public final class LanguageFiles {
    private static final Path FOLDER = Path.of("src/main/resources/org/cupwright/app/texts");
    private static final Pattern NAME = Pattern.compile("messages_([a-z]{2,3})((?:\\.[a-z]+)?)\\.properties");

    private LanguageFiles() {}

    /** Every language that has a file, English among them. */
    public static List<String> languages() {
        return names().filter(name -> name.group(2).isEmpty())
                .map(name -> name.group(1))
                .sorted()
                .toList();
    }

    /** The languages but English. */
    static List<String> others() {
        return languages().stream().filter(language -> !language.equals("en")).toList();
    }

    /** What stands between language and ending of English's files: nothing, and {@code .commands} and the like. */
    static List<String> parts() {
        return names().filter(name -> name.group(1).equals("en"))
                .map(name -> name.group(2))
                .sorted()
                .toList();
    }

    /** Keys and values of one file in its own order; a key that stands there twice is refused. */
    static Map<String, String> lines(String language, String part) {
        Map<String, String> lines = new LinkedHashMap<>();
        for (String line : text("messages_" + language + part + ".properties").split("\n")) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] sides = line.split(" = ", 2);
                if (sides.length < 2 || lines.put(sides[0], sides[1]) != null) {
                    throw new IllegalStateException(language + part + ": no sentence, or a second one: " + line);
                }
            }
        }
        return lines;
    }

    /** Every sentence of a language, whatever file it stands in. */
    static List<String> sentences(String language) {
        return parts().stream()
                .flatMap(part -> lines(language, part).values().stream())
                .toList();
    }

    private static Stream<Matcher> names() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files
                    .map(file -> NAME.matcher(file.getFileName().toString()))
                    .filter(Matcher::matches)
                    .toList()
                    .stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String text(String name) {
        try {
            return Files.readString(FOLDER.resolve(name));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
