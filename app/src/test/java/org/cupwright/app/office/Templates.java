package org.cupwright.app.office;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The templates of the pages as they lie in the sources, taken apart into tags and attributes. */
final class Templates {
    static final Path PAGES = Path.of("src/main/resources/org/cupwright/app/office/pages");

    private static final Pattern TAG = Pattern.compile("(?s)<!--.*?-->|<(?:\"[^\"]*\"|'[^']*'|[^>\"'])*>");
    private static final Pattern ATTRIBUTE = Pattern.compile("(?s)\\s([\\w:-]+)=(?:\"([^\"]*)\"|'([^']*)')");
    private static final Pattern NAMED = Pattern.compile("(?:^|,)\\s*([a-z][\\w-]*)=(?!=)");

    private Templates() {}

    /**
     * An attribute as it stands.
     *
     * @param tag the tag it stands in
     * @param name its name; of {@code th:attr="a=…,b=…"} there is one for each, with the name {@code th:a}
     * @param text its value
     */
    record Attribute(String tag, String name, String text) {
        /** Whether what stands in it is worked out. */
        boolean isExpression() {
            return name.startsWith("th:");
        }

        /** The attribute that comes of it in the page. */
        String plainName() {
            return name.replaceFirst("^th:", "");
        }
    }

    static Stream<Path> all() {
        try (Stream<Path> all = Files.list(PAGES)) {
            return all.filter(file -> file.toString().endsWith(".html")).sorted().toList().stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** What stands between the tags. */
    static List<String> between(String html) {
        return Stream.of(TAG.split(html)).map(String::strip).toList();
    }

    static List<Attribute> attributes(String html) {
        List<Attribute> all = new ArrayList<>();
        TAG.matcher(html).results().map(MatchResult::group).forEach(tag -> {
            Matcher attribute = ATTRIBUTE.matcher(tag);
            while (attribute.find()) {
                String text = attribute.group(2) == null ? attribute.group(3) : attribute.group(2);
                all.addAll(
                        attribute.group(1).matches("th:attr(append|prepend)?")
                                ? named(tag, text)
                                : List.of(new Attribute(tag, attribute.group(1), text)));
            }
        });
        return all;
    }

    private static List<Attribute> named(String tag, String text) {
        List<MatchResult> starts = NAMED.matcher(text).results().toList();
        List<Attribute> all = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            int end = i + 1 < starts.size() ? starts.get(i + 1).start() : text.length();
            all.add(new Attribute(
                    tag,
                    "th:" + starts.get(i).group(1),
                    text.substring(starts.get(i).end(), end)));
        }
        return all;
    }
}
