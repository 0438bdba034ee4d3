package org.cupwright.app.desk.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** Rights of files that a person asked for. */
final class FileRights {
    private FileRights() {}

    /** Others may read it: the golf shop prints it. Files made under another name first are private otherwise. */
    static void asUsual(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        }
    }
}
