package org.cupwright.app.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DayRound;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.Writes;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.cupchange.Fact;
import org.cupwright.green.LevelReading;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.round.StartType;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An invented name goes from everywhere it stands as a name, and what it stood beside stays. */
class EraseTest {
    private static final String NAME = "Zbigniew Ås";
    private static final LocalDate DAY = LocalDate.of(2026, 6, 20);
    private static final UUID BY_ZBIGNIEW = new UUID(1, 1);
    private static final UUID BY_IDA = new UUID(1, 2);

    @TempDir
    Path files;

    private MadePeople people;
    private Session session;

    @BeforeEach
    void open() {
        people = new MadePeople(files);
        session = people.session(people.ida().person());
        String code =
                new Invite(session, people.random).person(NAME, Role.CHANGER).code();
        people.taking().take(code, NAME, MadePeople.OTHER);
        new Invite(session, people.random).person(NAME, Role.CHANGER);
        new ChangeRole(session).of(NAME, Role.READER);
        Writes.to(people.folder, stores -> {
            stores.facts().add(fact(BY_ZBIGNIEW, NAME.toUpperCase(java.util.Locale.ROOT)));
            stores.facts().add(fact(BY_IDA, "Ida"));
            stores.surveys().addLevels("made", levels());
            stores.rounds().add("made", DAY, round());
        });
    }

    @AfterEach
    void close() {
        people.close();
    }

    private static Fact fact(UUID id, String person) {
        Instant then = MadePeople.START.minusSeconds(60);
        return new Fact(
                id,
                Fact.CURRENT_VERSION,
                then,
                then,
                Optional.empty(),
                person,
                "made",
                Optional.empty(),
                new SpeedRead(10.25, java.util.OptionalDouble.empty()));
    }

    /** Who said it has the name, and who has the holes. */
    private static DayRound round() {
        DayRound.Shares shares = new DayRound.Shares(List.of(new DayRound.Share(NAME, List.of("1", "2"))));
        return new DayRound(NAME, Optional.empty(), StartType.FIRST_TEE, Optional.of(shares));
    }

    private static LevelSpots levels() {
        return new LevelSpots(java.util.Map.of(
                "1",
                List.of(new LevelReading(
                        new MapPoint(1.5, 2.5), 0.01, 0.02, 0.001, Optional.of(NAME), Optional.empty()))));
    }

    @Test
    void theNameGoesAndWhatWasDoneStays() throws IOException {
        people.folder.cache().keep("worked-out", NAME.getBytes(StandardCharsets.UTF_8));
        Erase.Erased erased = new Erase(session).person(NAME);
        String neutral = erased.account().name();
        assertThat(neutral).matches("erased-[0-9a-f]{8}");
        assertThat(erased.account().active()).isFalse();
        Writes.to(people.folder, stores -> {
            Fact was = fact(BY_ZBIGNIEW, neutral);
            assertThat(stores.facts().find(BY_ZBIGNIEW).orElseThrow().receivedAt(Instant.EPOCH))
                    .isEqualTo(was.receivedAt(Instant.EPOCH));
            assertThat(stores.facts().find(BY_IDA).orElseThrow().person()).isEqualTo("Ida");
            assertThat(stores.people().named(NAME)).isEmpty();
            DayRound round = stores.rounds().find("made", DAY).orElseThrow();
            assertThat(round.person()).isEqualTo(neutral);
            assertThat(round.given().orElseThrow().who("2")).contains(neutral);
        });
        assertThat(people.audit().toString()).doesNotContain("Zbigniew").contains(neutral, "Ida");
        assertThat(people.folder.upkeep().check().damages()).isEmpty();
        people.close();
        assertThat(anywhere("bigniew")).as("in the files of the folder").isEmpty();
    }

    /** Looked for in every byte of every file: free pages and journal too. */
    private List<Path> anywhere(String text) throws IOException {
        try (Stream<Path> all = Files.walk(files)) {
            return all.filter(Files::isRegularFile)
                    .filter(file ->
                            read(file).toLowerCase(java.util.Locale.ROOT).contains(text))
                    .toList();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    @Test
    void theNameIsFreeForAnother() {
        new Erase(session).person(NAME);
        NewCode made = new Invite(session, people.random).person(NAME, Role.READER);
        assertThat(people.taking().take(made.code(), NAME, MadePeople.OTHER).role())
                .isEqualTo(Role.READER);
        assertThat(people.folder.<List<KeptPerson>>read(
                        stores -> stores.people().all()))
                .hasSize(3);
    }

    /** A damaged row is not made to look sound; until it is mended nothing is erased. */
    @Test
    void aDamagedRowKeepsItBack() throws SQLException {
        people.close();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + files.resolve("cupwright.db"));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("UPDATE fact SET happened_millis = 5 WHERE received = 2");
        }
        assertThatThrownBy(() -> new Erase(session).person(NAME))
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.where().get(0).arguments().get(0))
                                .isEqualTo(new Name("fact")));
        assertThat(people.folder.<Boolean>read(
                        stores -> stores.people().named(NAME).orElseThrow().active()))
                .isTrue();
    }
}
