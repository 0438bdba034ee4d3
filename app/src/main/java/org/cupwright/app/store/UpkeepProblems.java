package org.cupwright.app.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** What can keep a backup from being written or put in place. */
final class UpkeepProblems {
    private UpkeepProblems() {}

    static Problem nothingToBackUp(Path folder) {
        return about("nothingToBackUp", folder, "");
    }

    /** Refuses a target that is there, or that a backup cannot be written to. */
    static void refuseTarget(Path target, Database database, boolean replace) {
        if (database.files().contains(target)) {
            throw about("targetIsData", target, "");
        }
        if (Files.isDirectory(target)) {
            throw about("targetIsFolder", target, "");
        }
        if (Files.exists(target) && !replace) {
            throw about("targetExists", target, "");
        }
        if (target.getParent() == null || !Files.isDirectory(target.getParent())) {
            throw about("targetFolderMissing", target, "");
        }
        if (!Files.isWritable(target.getParent())) {
            throw about("targetNotWritable", target, "");
        }
    }

    static Problem of(IOException error, Path target) {
        Problem known = StoreProblems.of(error, target);
        boolean full = known.what().key().equals("problem.store.full");
        return about(full ? "targetFull" : "targetNotWritable", target, String.valueOf(error.getMessage()));
    }

    /** A full disk under the backup is not one under the data: what to try is another. */
    static RuntimeException ofBackup(SQLException error, Path data, Path target) {
        RuntimeException known = StoreProblems.of(error, data);
        boolean full = known instanceof Problem problem && problem.what().key().equals("problem.store.full");
        return full ? about("targetFull", target, error.getMessage()) : known;
    }

    static Problem noSuchBackup(Path source) {
        return about("noSuchBackup", source, "");
    }

    static Problem sourceIsData(Path source) {
        return about("sourceIsData", source, "");
    }

    /** A file that is no sound backup of a data folder. */
    static RuntimeException unusable(RuntimeException why, Path source) {
        if (why instanceof Problem problem) {
            String key = problem.what().key();
            return switch (key) {
                case "problem.store.damaged" -> about("backupDamaged", source, ((Name) problem.value()).text());
                case "problem.store.notOurs" -> about("notABackup", source, "");
                case "problem.store.folderNotWritable" -> about("backupNotReadable", source, "");
                default -> problem;
            };
        }
        return why;
    }

    static Problem notKept(Path copy, Exception why) {
        return about("beforeNotKept", copy, String.valueOf(why.getMessage()));
    }

    private static Problem about(String kind, Path place, String value) {
        return Problem.of(
                Message.of("problem.upkeep." + kind),
                Message.of("where.place", new Name(place.toString())),
                value,
                Message.of("try.upkeep." + kind));
    }
}
