package org.cupwright.app.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Random;
import org.cupwright.message.Problem;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One bit turned over anywhere in a data file or a backup is found, or lies where nothing is kept: then every row reads
 * as it was written.
 */
class BitFlipsIT {
    @TempDir
    Path files;

    private Path data;
    private Path file;
    private Path backup;
    private List<String> rows;

    @BeforeEach
    void aFolderWithSomethingInEveryTable() throws SQLException {
        data = files.resolve("data");
        file = data.resolve("cupwright.db");
        backup = files.resolve("backup.db");
        EveryTable.make(data, backup);
        rows = EveryTable.rows(file);
    }

    private static SqliteFolder folder(Path data) {
        return new SqliteFolder(data, EveryTable.CLOCK);
    }

    private boolean found(Path folder) {
        try (SqliteFolder kept = folder(folder)) {
            return !kept.upkeep().check().sound();
        } catch (Problem refused) {
            return true;
        }
    }

    @Test
    void inTheDataFileItIsFoundByCheck() throws IOException, SQLException {
        byte[] whole = Files.readAllBytes(file);
        Random random = new Random(Suite.seed());
        int found = 0;
        int flips = Suite.count("bits turned over in a data file", 1000, 60);
        for (int i = 0; i < flips; i++) {
            Files.write(file, EveryTable.flipped(whole, random));
            if (found(data)) {
                found++;
            } else {
                assertThat(EveryTable.rows(file))
                        .as("flip " + i + " of seed " + Suite.seed())
                        .isEqualTo(rows);
            }
        }
        System.out.println(
                "bits turned over in a data file: " + found + " of " + flips + " found, the others harmless");
        assertThat(found).isGreaterThan(flips / 2);
    }

    @Test
    void inABackupItIsRefused() throws IOException, SQLException {
        byte[] whole = Files.readAllBytes(backup);
        Random random = new Random(Suite.seed() + 1);
        int refused = 0;
        int flips = Suite.count("bits turned over in a backup", 1000, 60);
        for (int i = 0; i < flips; i++) {
            Files.write(backup, EveryTable.flipped(whole, random));
            Path into = files.resolve("into" + i);
            try (SqliteFolder restored = folder(into)) {
                restored.upkeep().restore(backup);
                String told = "flip " + i + " of seed " + (Suite.seed() + 1);
                assertThat(EveryTable.rows(into.resolve("cupwright.db")))
                        .as(told)
                        .isEqualTo(rows);
            } catch (Problem problem) {
                refused++;
                assertThat(into).doesNotExist();
            }
        }
        System.out.println(
                "bits turned over in a backup: " + refused + " of " + flips + " refused, the others harmless");
        assertThat(refused).isGreaterThan(flips / 2);
    }
}
