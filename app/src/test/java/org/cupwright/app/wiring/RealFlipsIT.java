package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Random;
import org.cupwright.app.store.sqlite.EveryTable;
import org.cupwright.app.wiring.RealProcess.Result;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One bit turned over in a data file or a backup, and what the real program says of it. */
@Tag("long")
class RealFlipsIT {
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

    /** Runs a command that either does what it should or tells a problem that a person can mend. */
    private static Result told(String flip, Object... arguments) throws IOException, InterruptedException {
        Result result = RealProcess.cupwright(arguments);
        assertThat(result.status()).as(flip + result.out() + result.err()).isIn(0, 1);
        assertThat(result.err()).as(flip).doesNotContain("Exception", "\tat ");
        assertThat(result.status() == 1).as(flip).isEqualTo((result.out() + result.err()).contains("try:"));
        return result;
    }

    private String exported(String flip, Path folder) throws IOException, InterruptedException {
        Path log = files.resolve("log.jsonl");
        Result result = told(flip, "log", "export", log, "--replace", "--course", MadeFacts.COURSE, "--data", folder);
        return result.status() + Files.readString(log);
    }

    @Test
    void inTheDataFileCheckNoticesItOrEveryRowReadsAsItWas() throws Exception {
        byte[] whole = Files.readAllBytes(file);
        String log = exported("none", data);
        assertThat(log).startsWith("0").hasLineCount(400);
        Random random = new Random(Suite.seed() + 2);
        int flips = Suite.count("bits turned over in a data file, by the real program", 50, 3);
        int noticed = 0;
        for (int i = 0; i < flips; i++) {
            Files.write(file, EveryTable.flipped(whole, random));
            String flip = "flip " + i + " of seed " + Suite.seed() + " ";
            if (told(flip, "check", "--data", data).status() == 1) {
                noticed++;
            } else {
                assertThat(EveryTable.rows(file)).as(flip).isEqualTo(rows);
                assertThat(exported(flip, data)).as(flip).isEqualTo(log);
            }
        }
        System.out.println("real program, data file: " + noticed + " of " + flips + " noticed, the others harmless");
        assertThat(noticed).isGreaterThan(flips / 4);
    }

    @Test
    void inABackupRestoreRefusesItOrEveryRowIsAsItWas() throws Exception {
        byte[] whole = Files.readAllBytes(backup);
        Random random = new Random(Suite.seed() + 3);
        int flips = Suite.count("bits turned over in a backup, by the real program", 50, 3);
        int refused = 0;
        for (int i = 0; i < flips; i++) {
            Files.write(backup, EveryTable.flipped(whole, random));
            Path into = files.resolve("into" + i);
            String flip = "flip " + i + " of seed " + Suite.seed() + " ";
            if (told(flip, "restore", backup, "--data", into).status() == 1) {
                refused++;
                assertThat(into).as(flip).doesNotExist();
            } else {
                assertThat(EveryTable.rows(into.resolve("cupwright.db")))
                        .as(flip)
                        .isEqualTo(rows);
            }
        }
        System.out.println("real program, backup: " + refused + " of " + flips + " refused, the others harmless");
        assertThat(refused).isGreaterThan(flips / 4);
    }

    /** Bits of the number by which a file says of which format it is; in a full check more of them. */
    @Test
    void aFormatThatABitMadeNewerOrOlderIsToldAsDamage() throws Exception {
        byte[] whole = Files.readAllBytes(backup);
        for (int bit : Suite.full() ? new int[] {0, 1, 2, 3, 5, 12, 31} : new int[] {0, 2, 31}) {
            byte[] bytes = whole.clone();
            int last = 60 + Integer.BYTES - 1; // user_version: four bytes from the 60th, the greatest first
            bytes[last - bit / Byte.SIZE] ^= (byte) (1 << bit % Byte.SIZE);
            for (Path place : List.of(backup, file)) {
                Files.write(place, bytes);
            }
            Result restore = told("bit " + bit, "restore", backup, "--data", files.resolve("into"));
            assertThat(restore.status()).as("bit " + bit).isEqualTo(1);
            assertThat(restore.err()).as("bit " + bit).contains("damaged").doesNotContain("newer");
            Result check = told("bit " + bit, "check", "--data", data);
            assertThat(check.status()).as("bit " + bit).isEqualTo(1);
            assertThat(check.out() + check.err())
                    .as("bit " + bit)
                    .contains("damaged")
                    .doesNotContain("newer");
        }
    }
}
