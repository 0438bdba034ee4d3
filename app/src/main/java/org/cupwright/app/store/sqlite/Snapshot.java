package org.cupwright.app.store.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.cupwright.app.store.Sql;

/**
 * A whole copy of a data file in one file: taken at one moment while others write, checked, on the disk, and only then
 * given its name, so that a file of that name is never half a copy.
 *
 * <p>By {@code VACUUM INTO}, which reads one moment and lets others go on writing. The library's page-by-page copying
 * starts again with every change that another process makes, and need not come to an end on a busy folder.
 */
final class Snapshot {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    /** A page that lost its head has a fault in each of its cells: some are enough to know of it (our choice). */
    private static final int FAULTS_TOLD = 3;

    private Snapshot() {}

    /** A free name beside the data file, which says what the copy is and when it was taken. */
    static Path nameBeside(Database database, String what, Instant moment) {
        Path folder = database.file().getParent();
        String base = "cupwright-" + what + "-" + STAMP.format(moment);
        Path name = folder.resolve(base + ".db");
        for (int i = 2; Files.exists(name); i++) {
            name = folder.resolve(base + "-" + i + ".db");
        }
        return name;
    }

    /** Writes the copy, over what has the name already; answers the copy. */
    static Path write(Database from, Path target) throws SQLException, IOException {
        Path part = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            Files.deleteIfExists(part);
            try (Connection connection = from.openToCopy()) {
                // the driver does not take it with an argument
                Database.run(connection, "VACUUM INTO " + quoted(part));
            }
            refuseDamaged(new Database(part), from.file());
            sync(part);
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            syncFolder(target.getParent());
            return target;
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** A path as SQL writes text. */
    static String quoted(Path path) {
        return "'" + path.toString().replace("'", "''") + "'";
    }

    /** What the database itself finds wrong with a file; empty when nothing is. */
    static List<String> damage(Database database) throws SQLException {
        try (Connection connection = database.openToRead()) {
            return damage(connection);
        }
    }

    /** Tells damage that the database finds in one file of another one, or of the file itself; answers the file. */
    static Database refuseDamaged(Database database, Path told) throws SQLException {
        List<String> damage = damage(database);
        if (!damage.isEmpty()) {
            throw StoreProblems.about("damaged", told, damage.get(0));
        }
        return database;
    }

    static List<String> damage(Connection connection) {
        return new Sql(connection)
                .texts("PRAGMA integrity_check(" + FAULTS_TOLD + ")").stream()
                        .filter(said -> !said.equals("ok"))
                        .toList();
    }

    static void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Makes a new name in a folder last; on Windows folders cannot be opened, and names last without it. */
    static void syncFolder(Path folder) throws IOException {
        if (!System.getProperty("os.name").startsWith("Windows")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}
