package org.cupwright.app.cli;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.holelocation.judging.GreenJudge;

/**
 * Folders that many tests begin with, made once for all test processes: of several that need one at once, the first
 * makes it. They are made anew whenever anything was compiled since.
 */
final class MadeOnce {
    private static final Path ALL = Path.of("target", "made-once");

    /** One class of each of our parts, to find out when it was compiled. */
    private static final List<Class<?>> OURS = List.of(GreenJudge.class, DemoCourse.class, Cli.class, MadeOnce.class);

    private MadeOnce() {}

    /** Fills a folder that is not there yet. */
    interface Maker {
        void fill(Path folder) throws IOException;
    }

    /** The folder of that name, which nobody may change. */
    static synchronized Path folder(String name, Maker maker) throws IOException {
        Path own = ALL.resolve(Long.toString(compiled()));
        Files.createDirectories(own);
        try (FileChannel channel = FileChannel.open(
                        own.resolve(name + ".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            Path made = own.resolve(name);
            if (!Files.exists(made)) {
                Path unfinished = own.resolve(name + ".unfinished");
                remove(unfinished); // of a run that was stopped
                maker.fill(unfinished);
                Files.move(unfinished, made, StandardCopyOption.ATOMIC_MOVE);
            }
            return made;
        }
    }

    /** When the newest of our classes was written, in milliseconds. */
    private static long compiled() throws IOException {
        long newest = 0;
        for (Class<?> one : OURS) {
            try (Stream<Path> all = Files.walk(Path.of(
                    one.getProtectionDomain().getCodeSource().getLocation().toURI()))) {
                for (Path file : (Iterable<Path>) all.filter(Files::isRegularFile)::iterator) {
                    newest = Math.max(newest, Files.getLastModifiedTime(file).toMillis());
                }
            } catch (URISyntaxException impossible) {
                throw new IllegalStateException(impossible);
            }
        }
        return newest;
    }

    static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : (Iterable<Path>) all::iterator) {
                Files.copy(each, to.resolve(from.relativize(each).toString()));
            }
        }
    }

    static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
    }
}
