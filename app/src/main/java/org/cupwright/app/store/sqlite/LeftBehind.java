package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Unfinished copies of processes that were killed: their names have the process in them. */
final class LeftBehind {
    private static final Pattern UNFINISHED =
            Pattern.compile("\\.?(?:cupwright.*|.*\\.db)\\.([0-9]{1,18})\\.(?:restoring|part)(?:-wal|-shm|-journal)?");

    private LeftBehind() {}

    /** Takes away those in a folder whose process is gone; what cannot go now goes the next time. */
    static void tidy(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.filter(LeftBehind::isLeft).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException later) {
            System.getLogger(LeftBehind.class.getName())
                    .log(System.Logger.Level.DEBUG, "unfinished copies stay for now", later);
        }
    }

    private static boolean isLeft(Path file) {
        Matcher name = UNFINISHED.matcher(file.getFileName().toString());
        return name.matches() && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty();
    }
}
