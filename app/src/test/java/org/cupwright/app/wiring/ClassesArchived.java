package org.cupwright.app.wiring;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;

/**
 * The archive of classes that the launcher makes after a build, made once for all tests that start the program: theirs
 * start as a user's do. Of several processes that need it the first makes it.
 */
final class ClassesArchived {
    private static final Path JAR = Path.of(System.getProperty("cupwright.jar"));
    private static final Path FOLDER = JAR.resolveSibling("rehearsed");
    private static final Path LIBRARY = FOLDER.resolve("native");
    private static final Path TEMPORARY = FOLDER.resolve("temporary");

    private static List<String> options;

    private ClassesArchived() {}

    /** What Java is told so that it takes classes from the archive, as the launcher tells it. */
    static synchronized List<String> options() {
        if (options == null) {
            options = List.of(
                    "-Xshare:auto",
                    "-XX:SharedArchiveFile=" + archive(),
                    "-Xlog:cds*=off",
                    "-Dorg.sqlite.lib.path=" + LIBRARY);
        }
        return options;
    }

    /** Where making it could put what is temporary. */
    static Path temporary() {
        archive();
        return TEMPORARY;
    }

    private static Path archive() {
        try {
            Files.createDirectories(TEMPORARY);
            try (FileChannel channel = FileChannel.open(
                            FOLDER.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    FileLock lock = channel.lock()) {
                Path archive = FOLDER.resolve(Files.getLastModifiedTime(JAR).toMillis() + ".jsa");
                if (!Files.exists(archive)) {
                    rehearse(archive);
                }
                return archive;
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }

    private static void rehearse(Path archive) throws IOException, InterruptedException {
        Path unfinished = archive.resolveSibling("unfinished.jsa");
        RealProcess.Result rehearsed = RealProcess.run(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-Djava.io.tmpdir=" + TEMPORARY,
                "-XX:ArchiveClassesAtExit=" + unfinished,
                "-cp",
                JAR.toString(),
                Rehearsal.class.getName(),
                LIBRARY.toString()));
        if (rehearsed.status() != 0) {
            throw new IllegalStateException(rehearsed.err());
        }
        Files.move(unfinished, archive, StandardCopyOption.ATOMIC_MOVE);
    }
}
