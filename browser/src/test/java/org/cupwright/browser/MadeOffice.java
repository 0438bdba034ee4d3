package org.cupwright.browser;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * The data of the tests' office as they find it: the invented course, an account, and the days of the tests planned.
 * It is made once for all test processes, by the first that needs it, and anew for another build of the program.
 */
final class MadeOffice {
    private static final Path ALL = Path.of("target", "made-once");

    private MadeOffice() {}

    /** Puts a copy of it into a folder that is not there yet. */
    static void copyTo(Path data) throws IOException {
        long built = Files.getLastModifiedTime(RunningOffice.JAR).toMillis();
        Path made = ALL.resolve(Long.toString(built));
        Files.createDirectories(ALL);
        try (FileChannel channel =
                        FileChannel.open(ALL.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            if (!Files.exists(made)) {
                Path unfinished = ALL.resolve("unfinished");
                remove(unfinished); // of a run that was stopped
                Files.createDirectories(unfinished);
                fill(unfinished.toAbsolutePath());
                Files.move(unfinished, made, StandardCopyOption.ATOMIC_MOVE);
            }
        }
        copy(made.resolve("data"), data);
    }

    private static void fill(Path folder) {
        RunningOffice.open(folder.resolve("data"), "--demo").close(); // it sets the course up, and has no accounts
        try (Workplace first = Workplace.joining(folder)) {
            Days.plan(first);
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : (Iterable<Path>) all::iterator) {
                Files.copy(each, to.resolve(from.relativize(each).toString()));
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
    }
}
