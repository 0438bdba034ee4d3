package org.cupwright.formats;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;

/**
 * The lines of a text file from outside that say something: comments ({@code #}) and blank lines are passed over. Lines
 * are counted as an editor counts them and bounded in length.
 */
public final class TextLines {
    /** A line of numbers has some hundred characters. Our choice. */
    private static final int LONGEST_LINE = 4096;

    private final BufferedReader reader;
    private long number;

    /**
     * @param in UTF-8 text; not closed
     * @param maxBytes at most so much is read
     */
    public TextLines(InputStream in, long maxBytes) throws IOException {
        this.reader = BoundedInput.text(in, maxBytes);
    }

    /** Number of the line last given, the first being 1. */
    public long number() {
        return number;
    }

    /**
     * The next line that says something; empty at the end.
     *
     * @throws UnreadableFile if the file is no text
     */
    public Optional<String> next() throws IOException {
        Optional<String> line = readLine();
        while (line.isPresent() && (line.get().isBlank() || line.get().strip().startsWith("#"))) {
            line = readLine();
        }
        return line;
    }

    private Optional<String> readLine() throws IOException {
        StringBuilder line = new StringBuilder();
        int character = reader.read();
        if (character < 0) {
            return Optional.empty();
        }
        number++;
        while (character >= 0 && character != '\n') {
            if (character == 0 || line.length() >= LONGEST_LINE) {
                throw Finding.of(FindingKind.NOT_TEXT, Where.line(number), Excerpt.of(line.toString()))
                        .failure();
            }
            line.append((char) character);
            character = reader.read();
        }
        return Optional.of(line.toString());
    }
}
