package org.cupwright.app.desk.files;

import java.io.IOException;
import java.io.InputStream;

/**
 * A file that a person hands in.
 *
 * @param name what the person calls it, for messages
 * @param opener opens it; may be asked more than once
 */
public record SourceFile(String name, Opener opener) {
    /** Opens a stream from the file's beginning. */
    public interface Opener {
        InputStream open() throws IOException;
    }

    public InputStream open() throws IOException {
        return opener.open();
    }
}
