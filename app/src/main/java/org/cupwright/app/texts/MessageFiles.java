package org.cupwright.app.texts;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The message files on the class path beside this class, UTF-8: sentences by key, each file parsed once however often
 * asked for.
 */
final class MessageFiles {
    /** Those that come with Cupwright. */
    static final MessageFiles SHIPPED = new MessageFiles(MessageFiles.class::getResourceAsStream);

    private final Function<String, InputStream> opener;
    private final Map<String, Optional<Map<String, String>>> parsed = new ConcurrentHashMap<>();

    /**
     * Files from somewhere.
     *
     * @param opener opens a file by its name; null when there is none
     */
    MessageFiles(Function<String, InputStream> opener) {
        this.opener = opener;
    }

    /**
     * The sentences of a language given as two or three letters, without any door's own; empty when there is no file.
     */
    Optional<Map<String, String>> of(String language) {
        return language.matches("[a-z]{2,3}") ? file("messages_" + language + ".properties") : Optional.empty();
    }

    /** A door's own wordings in a language that has a file; empty when it has none. */
    Map<String, String> of(String language, Door door) {
        return file(door.file(language)).orElse(Map.of());
    }

    /** The keys that take the place of those no sentence is written for any more, by the old key. */
    Map<String, String> retired() {
        return file("messages_retired.properties").orElse(Map.of());
    }

    private Optional<Map<String, String>> file(String name) {
        return parsed.computeIfAbsent(name, this::parse);
    }

    private Optional<Map<String, String>> parse(String name) {
        try (InputStream stream = opener.apply(name)) {
            if (stream == null) {
                return Optional.empty();
            }
            Properties read = new Properties();
            read.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return Optional.of(
                    read.stringPropertyNames().stream().collect(Collectors.toMap(key -> key, read::getProperty)));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
