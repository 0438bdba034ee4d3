package org.cupwright.app.texts;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

/** The sentences of one language: {@code messages_xx.properties}, UTF-8, on the class path beside this class. */
public final class MessageFile {
    private final Properties sentences;

    private MessageFile(Properties sentences) {
        this.sentences = sentences;
    }

    /** The file of a language given as two or three letters; empty when there is none. */
    public static Optional<MessageFile> find(String language) {
        if (!language.matches("[a-z]{2,3}")) {
            return Optional.empty();
        }
        try (InputStream stream = MessageFile.class.getResourceAsStream("messages_" + language + ".properties")) {
            if (stream == null) {
                return Optional.empty();
            }
            Properties read = new Properties();
            read.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return Optional.of(new MessageFile(read));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The pattern of a sentence. */
    Optional<String> pattern(String key) {
        return Optional.ofNullable(sentences.getProperty(key));
    }

    /** All keys, sorted. */
    public Set<String> keys() {
        return new TreeSet<>(sentences.stringPropertyNames());
    }
}
