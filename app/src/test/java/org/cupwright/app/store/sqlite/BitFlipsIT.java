package org.cupwright.app.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.CheckedRow;
import org.cupwright.app.store.Sql;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.green.SurveyPoints;
import org.cupwright.message.Problem;
import org.cupwright.policy.PolicyChange;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One bit turned over anywhere in a data file or a backup is found, or lies where nothing is kept: then every row reads
 * as it was written.
 */
class BitFlipsIT {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);
    private static final int FACTS = 400;

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
        try (SqliteFolder folder = folder(data)) {
            Writes.to(folder, stores -> {
                stores.courses().add(new DemoCourse(1).course());
                MadeFacts.sequence(new Random(7), FACTS).forEach(stores.facts()::add);
                stores.photos().add(Photo.kept(new byte[9000]));
                LocalDate day = LocalDate.of(2026, 6, 20);
                stores.policies().add("made", new PolicyChange(day, "desk.units", "imperial"));
                stores.policies().add("", new PolicyChange(day, "desk.units", "metric"));
                double[] some = new Random(3).doubles(500).toArray();
                SurveyPoints points = SurveyPoints.scattered(some, some, some);
                stores.surveys().add("made", new GreenSurvey("1", points, new Origin(32626, "m", "made.csv")));
            });
            folder.upkeep().backup(backup, false);
        }
        rows = rows(file);
    }

    private static SqliteFolder folder(Path data) {
        return new SqliteFolder(data, CLOCK);
    }

    /** Every row of every table in full, and the migrations that are written down. */
    private static List<String> rows(Path file) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            Sql sql = new Sql(connection);
            List<String> all = sql.texts("SELECT version || script || checksum || success FROM flyway_schema_history");
            FolderContents.NUMBERED.forEach((table, key) -> all.addAll(sql.list(
                    row -> table + " " + CheckedRow.at(row).columns().toString().replaceAll("\\[B@[0-9a-f]+", "")
                            + CheckedRow.at(row).sum(),
                    "SELECT * FROM " + table + " ORDER BY " + key)));
            return all;
        }
    }

    private static byte[] flipped(byte[] whole, Random random) {
        byte[] bytes = whole.clone();
        int at = random.nextInt(bytes.length * Byte.SIZE);
        bytes[at / Byte.SIZE] ^= (byte) (1 << at % Byte.SIZE);
        return bytes;
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
            Files.write(file, flipped(whole, random));
            if (found(data)) {
                found++;
            } else {
                assertThat(rows(file))
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
            Files.write(backup, flipped(whole, random));
            Path into = files.resolve("into" + i);
            try (SqliteFolder restored = folder(into)) {
                restored.upkeep().restore(backup);
                String told = "flip " + i + " of seed " + (Suite.seed() + 1);
                assertThat(rows(into.resolve("cupwright.db"))).as(told).isEqualTo(rows);
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
