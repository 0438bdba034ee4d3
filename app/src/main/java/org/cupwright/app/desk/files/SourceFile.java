package org.cupwright.app.desk.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

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

    /** One by its path; anything but a file, such as a pipe, is not opened: reading it might never end. */
    public static SourceFile at(Path path) {
        return new SourceFile(path.toString(), () -> {
            if (Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path)) {
                throw new NotAFile(path);
            }
            return Files.newInputStream(path);
        });
    }

    /** What is there is no file. */
    static final class NotAFile extends FileSystemException {
        private static final long serialVersionUID = 1L;

        NotAFile(Path path) {
            super(path.toString());
        }
    }

    public InputStream open() throws IOException {
        return opener.open();
    }
}
