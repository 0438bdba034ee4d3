package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.storage.upkeep.FolderReport;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.cupchange.Fact;

/** What is kept in a data folder of {@link FactWriter}. */
final class Kept {
    private Kept() {}

    static SqliteFolder folder(Path data) {
        return new SqliteFolder(data, Clock.systemUTC());
    }

    static List<Fact> facts(SqliteFolder folder) {
        return folder.read(stores -> stores.facts().all(FactWriter.COURSE));
    }

    static Set<UUID> ids(SqliteFolder folder) {
        Set<UUID> ids = new HashSet<>();
        facts(folder).forEach(fact -> ids.add(fact.id()));
        return ids;
    }

    static void assertSound(Path data, String told) {
        if (!Files.exists(data.resolve("cupwright.db"))) {
            return; // killed before there was a file
        }
        try (SqliteFolder folder = folder(data)) {
            FolderReport report = folder.upkeep().check();
            assertThat(report.damages()).as(told).isEmpty();
            assertThat(report.synchronous()).isEqualTo(2);
            assertThat(report.journal()).isEqualTo("wal");
        }
    }

    /** The names of all files in a folder. */
    static Set<String> files(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            Set<String> names = new HashSet<>();
            all.forEach(path -> names.add(path.getFileName().toString()));
            return names;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
