package org.cupwright.app.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records of training as they are kept: as they were said, once, and without a name that is erased. */
class SqlTrainingTest {
    private static final Clock CLOCK = Clock.fixed(TrainingMade.THEN.plusSeconds(7200), ZoneOffset.UTC);

    @TempDir
    Path files;

    private SqliteFolder folder;

    @BeforeEach
    void fill() {
        folder = new SqliteFolder(files, CLOCK);
        Writes.to(folder, stores -> TrainingMade.all().forEach(stores.training()::add));
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private List<TrainingRecord> all() {
        return folder.read(stores -> stores.training().all());
    }

    @Test
    void everyKindComesBackAsItWasSaid() {
        assertThat(all())
                .isEqualTo(TrainingMade.all().stream()
                        .map(record -> record.receivedAt(CLOCK.instant()))
                        .toList());
        List<TrainingRecord> decisions = folder.read(stores -> stores.training().decisions());
        assertThat(decisions).isEqualTo(all().subList(2, 6));
        Optional<TrainingRecord> second =
                folder.read(stores -> stores.training().find(new UUID(3, 2)));
        assertThat(second).contains(all().get(1));
        assertThat(folder.upkeep().check().damages()).isEmpty();
    }

    @Test
    void whatComesAgainIsKeptOnce() {
        Writes.to(folder, stores -> TrainingMade.all().forEach(stores.training()::add));
        assertThat(all()).hasSameSizeAs(TrainingMade.all());
    }

    @Test
    void aRowThatIsNotAsItWasWrittenIsNamed() throws SQLException {
        folder.close();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + files.resolve("cupwright.db"));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("UPDATE training SET document = replace(document, 'CUTTING', 'CUP') WHERE id = 1");
        }
        assertThatThrownBy(this::all).isInstanceOf(Problem.class);
        assertThat(folder.upkeep().check().damages()).hasSize(1);
    }

    /** Whoever learnt before there was an account, and whoever said what of others. */
    @Test
    void anErasedNameGoesFromRecordsAndFromTheirTrail() {
        AuditLine signed = new AuditLine(
                TrainingMade.THEN,
                new AuditLine.Who(Optional.empty(), "Ida Ås"),
                AuditKind.SIGNED_OFF,
                new AuditLine.About("", new Name(TrainingMade.LEARNER)),
                Optional.empty(),
                Optional.empty());
        KeptPerson learner = person(1, TrainingMade.LEARNER);
        KeptPerson ida = person(2, "Ida Ås");
        Writes.to(folder, stores -> {
            stores.audit().add(signed);
            stores.people().add(learner);
            stores.people().add(ida);
            assertThat(stores.people().erase(learner, "erased-1"))
                    .isEqualTo(TrainingMade.all().size() + 2);
            stores.people().erase(ida, "erased-2");
        });
        assertThat(all()).allMatch(record -> record.person().name().equals("erased-1"));
        assertThat(all()).allMatch(record -> record.by().name().equals("erased-2"));
        List<AuditLine> lines =
                folder.read(stores -> stores.audit().between(TrainingMade.THEN, TrainingMade.THEN.plusSeconds(1)));
        assertThat(lines.toString()).contains("erased-1", "erased-2").doesNotContain("Ås");
        assertThat(folder.upkeep().check().damages()).isEmpty();
    }

    private static KeptPerson person(int number, String name) {
        return new KeptPerson(
                new UUID(9, number), name, "changer", true, "no hash", TrainingMade.THEN, TrainingMade.THEN);
    }

    /** A copy of the folder has them. */
    @Test
    void aBackupHoldsThem(@TempDir Path elsewhere) {
        Path backup = elsewhere.resolve("copy.db");
        folder.upkeep().backup(backup, false);
        try (SqliteFolder other = new SqliteFolder(elsewhere.resolve("other"), CLOCK)) {
            other.upkeep().restore(backup);
            List<TrainingRecord> restored =
                    other.read(stores -> stores.training().all());
            assertThat(restored).isEqualTo(all());
        }
    }
}
