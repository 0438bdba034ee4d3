package org.cupwright.app.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Writes;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** People, codes and the audit trail in a real file. */
class SqlPeopleTest {
    @TempDir
    Path files;

    private SqliteFolder folder;

    @BeforeEach
    void fill() {
        folder = new SqliteFolder(files, EveryTable.CLOCK);
        Writes.to(folder, PeopleRowsMade::fill);
    }

    @AfterEach
    void close() {
        folder.close();
    }

    @Test
    void readsAsItWasWritten() {
        Writes.to(folder, stores -> {
            assertThat(stores.people().all()).containsExactly(PeopleRowsMade.IDA, PeopleRowsMade.BO);
            assertThat(stores.people().find(PeopleRowsMade.BO.id())).contains(PeopleRowsMade.BO);
            assertThat(stores.people().find(new UUID(0, 0))).isEmpty();
            assertThat(stores.people().code("ab12")).contains(PeopleRowsMade.OPEN);
            assertThat(stores.people().code("cd34")).contains(PeopleRowsMade.USED);
            assertThat(stores.people().code("ab")).isEmpty();
            assertThat(stores.audit().between(PeopleRowsMade.THEN, PeopleRowsMade.THEN.plusSeconds(10)))
                    .containsExactly(PeopleRowsMade.ROLE_LINE, PeopleRowsMade.PLAN_LINE);
        });
    }

    @Test
    void aNameIsFoundWithWhateverCapitalsAndSpaces() {
        Writes.to(folder, stores -> {
            assertThat(stores.people().named("IDA  åS ")).contains(PeopleRowsMade.IDA);
            assertThat(stores.people().named("ida A\u030As")).contains(PeopleRowsMade.IDA);
            assertThat(stores.people().named("Ida")).isEmpty();
        });
    }

    @Test
    void noTwoHaveOneName() {
        KeptPerson second =
                new KeptPerson(new UUID(7, 3), "BO", "reader", true, "", PeopleRowsMade.THEN, PeopleRowsMade.THEN);
        assertThatThrownBy(() -> Writes.to(folder, stores -> stores.people().add(second)));
        assertThat(folder.<List<KeptPerson>>read(stores -> stores.people().all()))
                .hasSize(2);
    }

    @Test
    void whatIsWrittenAnewIsReadAndItsSumHolds() {
        KeptPerson later = PeopleRowsMade.BO.as("official", PeopleRowsMade.THEN.plusSeconds(1));
        Writes.to(folder, stores -> {
            stores.people().replace(later);
            stores.people().replace(PeopleRowsMade.OPEN.used(PeopleRowsMade.THEN.plusSeconds(2)));
        });
        Writes.to(folder, stores -> {
            assertThat(stores.people().all()).containsExactly(PeopleRowsMade.IDA, later);
            assertThat(stores.people().openCodes(PeopleRowsMade.THEN)).isEmpty();
        });
        assertThat(folder.upkeep().check().damages()).isEmpty();
    }

    @Test
    void aCodeIsOpenUntilItsEndAndUntilItIsUsed() {
        Writes.to(folder, stores -> {
            assertThat(stores.people().openCodes(PeopleRowsMade.THEN.plusSeconds(59)))
                    .containsExactly(PeopleRowsMade.OPEN);
            assertThat(stores.people().openCodes(PeopleRowsMade.THEN.plusSeconds(60)))
                    .isEmpty();
        });
    }

    @Test
    void theAuditIsOfAStretchOfTime() {
        Writes.to(folder, stores -> {
            assertThat(stores.audit().between(PeopleRowsMade.THEN, PeopleRowsMade.THEN.plusSeconds(9)))
                    .containsExactly(PeopleRowsMade.ROLE_LINE);
            assertThat(stores.audit().between(PeopleRowsMade.THEN.plusMillis(1), PeopleRowsMade.THEN.plusSeconds(10)))
                    .containsExactly(PeopleRowsMade.PLAN_LINE);
        });
    }

    @Test
    void aDamagedRowIsNamed() throws SQLException {
        damage("UPDATE person SET role = 'superintendent' WHERE id = 2");
        refused("person", 2, stores -> stores.people().named("Bo"));
        damage("UPDATE sign_in_code SET used_at = NULL WHERE id = 2");
        refused("sign_in_code", 2, stores -> stores.people().code("cd34"));
        damage("UPDATE audit SET document = replace(document, 'reader', 'Reader') WHERE id = 1");
        refused("audit", 1, stores -> stores.audit().between(PeopleRowsMade.THEN, PeopleRowsMade.THEN.plusSeconds(10)));
        assertThat(folder.upkeep().check().damages())
                .extracting(damage -> damage.where().arguments())
                .containsExactlyInAnyOrder(
                        List.of(new Name("person"), new Count(2)),
                        List.of(new Name("sign_in_code"), new Count(2)),
                        List.of(new Name("audit"), new Count(1)));
    }

    private void refused(String table, long row, java.util.function.Function<Stores, Object> reading) {
        assertThatThrownBy(() -> folder.read(reading))
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.where().get(0).arguments())
                                .isEqualTo(List.of(new Name(table), new Count(row))));
    }

    private void damage(String change) throws SQLException {
        folder.close();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + files.resolve("cupwright.db"));
                Statement statement = connection.createStatement()) {
            assertThat(statement.executeUpdate(change)).isEqualTo(1);
        }
    }

    /** What passwords and codes are checked against is in no text made of them. */
    @Test
    void noHashIsShown() {
        assertThat(PeopleRowsMade.IDA.toString()).doesNotContain("hash").contains("Ida");
        assertThat(PeopleRowsMade.OPEN.toString()).doesNotContain("ab12").contains("Kim");
        assertThat(Optional.of(PeopleRowsMade.USED).toString()).doesNotContain("cd34");
    }
}
