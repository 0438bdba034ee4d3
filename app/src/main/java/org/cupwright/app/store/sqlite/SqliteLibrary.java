package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * The part of SQLite that is not Java. Left in its jar it is unpacked into the system's folder for temporary files and
 * compared byte by byte at every start; where it lies in a folder, it is taken from there.
 */
public final class SqliteLibrary {
    /** The system property that names the folder in which the driver looks first. */
    public static final String FOLDER_PROPERTY = "org.sqlite.lib.path";

    private SqliteLibrary() {}

    /** Puts the library for this machine into a folder. */
    public static void putInto(Path folder) throws IOException {
        String name = LibraryLoaderUtil.getNativeLibName();
        String resource = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
        Files.createDirectories(folder);
        try (InputStream library = SQLiteJDBCLoader.class.getResourceAsStream(resource)) {
            if (library == null) {
                throw new IllegalStateException("SQLite comes without a library for this machine: " + resource);
            }
            Files.write(folder.resolve(name), library.readAllBytes());
        }
    }
}
