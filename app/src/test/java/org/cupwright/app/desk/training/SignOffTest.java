package org.cupwright.app.desk.training;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.entry.SentForm;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.training.Exercise;
import org.cupwright.app.storage.training.HowWell;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.message.Problem;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Who may say what others can do, and what is left of it; all names are invented. */
class SignOffTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 20);
    private static final UUID KIM = new UUID(2, 1);
    private static final UUID NOOR = new UUID(2, 2);

    @TempDir
    Path files;

    private SqliteFolder folder;
    private Session ida;

    @BeforeEach
    void open() {
        folder = new SqliteFolder(files, CLOCK);
        folder.write(stores -> {
            stores.people().add(changer(KIM, "Kim"));
            stores.people().add(changer(NOOR, "Noor"));
            return stores;
        });
        ida = session(Optional.empty(), "Ida", Role.SUPERINTENDENT);
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private static KeptPerson changer(UUID id, String name) {
        return new KeptPerson(id, name, "changer", true, "no hash", CLOCK.instant(), CLOCK.instant());
    }

    private Session session(Optional<UUID> id, String name, Role role) {
        return new Session(
                folder,
                new Person(id, name, role),
                new CourseChoice(Optional.empty()),
                CLOCK,
                UUID::randomUUID,
                new Speech(Door.COMMANDS, "en", UnitSystem.METRIC, 0.914));
    }

    private Session kim() {
        return session(Optional.of(KIM), "Kim", Role.CHANGER);
    }

    private List<AuditKind> audit() {
        List<AuditLine> lines = folder.read(stores -> stores.audit().between(FactStore.LONG_AGO, FactStore.LONG_HENCE));
        return lines.stream().map(AuditLine::what).toList();
    }

    private Competence stands(String name) {
        return new ShowTraining(ida).person(name).person().of(Skill.CUP);
    }

    private static Learnt done() {
        return new Learnt.Done(Skill.CUP, HowWell.ALONE, TODAY, Optional.empty());
    }

    @Test
    void aSuperintendentSignsAnybodyOffAlsoHimself() {
        new SignOff(ida).person("  Ash ", Skill.CUP, Optional.empty());
        new SignOff(ida).person("Ida", Skill.CUP, Optional.of(TODAY.minusDays(3)));
        assertThat(stands("ash").counts()).isTrue();
        assertThat(stands("Ida").counts()).isTrue();
        assertThat(audit()).containsExactly(AuditKind.SIGNED_OFF, AuditKind.SIGNED_OFF);
    }

    @Test
    void aChangerDoesAsLongAsNamedATrainerAndNotHimself() {
        assertThatThrownBy(() -> new SignOff(kim()).person("Ash", Skill.CUP, Optional.empty()))
                .isInstanceOf(Problem.class)
                .hasMessageContaining("notTrainer");
        new SignOff(ida).trainer("kim", true);
        new SignOff(kim()).person("Ash", Skill.CUP, Optional.empty());
        assertThat(stands("Ash").counts()).isTrue();
        assertThatThrownBy(() -> new SignOff(kim()).person("KIM", Skill.CUP, Optional.empty()))
                .isInstanceOf(Problem.class)
                .hasMessageContaining("ownself");
        new SignOff(ida).trainer("Kim", false);
        assertThatThrownBy(() -> new SignOff(kim()).withdraw("Ash", Skill.CUP, "because"))
                .isInstanceOf(Problem.class);
        assertThat(audit()).containsExactly(AuditKind.TRAINER_NAMED, AuditKind.SIGNED_OFF, AuditKind.TRAINER_ENDED);
    }

    /** A trainer who became something else is none. */
    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"OFFICIAL", "READER"})
    void nobodyElseDoes(Role role) {
        new SignOff(ida).trainer("Kim", true);
        Session other = session(Optional.of(KIM), "Kim", role);
        assertThatThrownBy(() -> new SignOff(other).person("Ash", Skill.CUP, Optional.empty()))
                .isInstanceOf(Problem.class);
        assertThatThrownBy(() -> new SignOff(kim()).trainer("Noor", true)).isInstanceOf(Problem.class);
        assertThatThrownBy(() -> new SignOff(ida).trainer("Nobody", true)).isInstanceOf(Problem.class);
    }

    @Test
    void aWithdrawalSaysWhyAndACorrectionPutsItRight() {
        assertThatThrownBy(() -> new SignOff(ida).withdraw("Ash", Skill.CUP, "because"))
                .isInstanceOf(Problem.class)
                .hasMessageContaining("notSigned");
        new SignOff(ida).person("Ash", Skill.CUP, Optional.of(TODAY.minusDays(9)));
        assertThatThrownBy(() -> new SignOff(ida).withdraw("Ash", Skill.CUP, " "))
                .isInstanceOf(Problem.class);
        SignOff.Answer ended = new SignOff(ida).withdraw("Ash", Skill.CUP, "cups too high");
        assertThat(ended.stands()).isEqualTo(new Competence.Ended(TODAY, "Ida", "cups too high"));
        SignOff.Answer right = new SignOff(ida).correct(ended.record().id(), Optional.empty(), "it was Noor");
        assertThat(right.stands().counts()).isTrue();
        List<TrainingRecord> all = new ShowTraining(ida).person("Ash").records();
        assertThat(all).hasSize(3);
        assertThat(audit())
                .containsExactly(AuditKind.SIGNED_OFF, AuditKind.SIGN_OFF_WITHDRAWN, AuditKind.TRAINING_CORRECTED);
        assertThatThrownBy(() -> new SignOff(ida).correct(new UUID(4, 4), Optional.empty(), "none"))
                .isInstanceOf(Problem.class);
    }

    @Test
    void nothingIsSignedOffForDaysToCome() {
        assertThatThrownBy(() -> new SignOff(ida).person("Ash", Skill.CUP, Optional.of(TODAY.plusDays(1))))
                .isInstanceOf(Problem.class);
        assertThat(audit()).isEmpty();
    }

    /** Ticks are a trainer's; what one practises one may write down oneself. Each once, however often it comes. */
    @Test
    void practiceIsKeptOnceAndTicksAreATrainers() {
        UUID sent = UUID.randomUUID();
        for (int time = 0; time < 2; time++) {
            new SentForm(ida, sent).once(session -> new RecordPractice(session).keep(Optional.of("Ash"), done()));
        }
        assertThat(new ShowTraining(ida).person("Ash").records()).hasSize(1);
        assertThatThrownBy(() -> new RecordPractice(kim()).keep(Optional.of("Ash"), done()))
                .isInstanceOf(Problem.class);
        Learnt ten = new Learnt.Practised(Exercise.LEVEL_PLUGS, TODAY, 10, 10);
        new RecordPractice(kim()).keep(Optional.empty(), ten);
        assertThatThrownBy(() -> new RecordPractice(kim()).keep(Optional.of("Noor"), ten))
                .isInstanceOf(Problem.class);
        assertThatThrownBy(() -> new RecordPractice(kim())
                        .keep(Optional.empty(), new Learnt.Practised(Exercise.PACES, TODAY, 1, 2)))
                .isInstanceOf(Problem.class);
        assertThat(new ShowTraining(kim()).mine().records()).hasSize(1);
        assertThat(audit()).as("practice decides nothing").isEmpty();
    }

    @Test
    void othersRecordsAreForThoseWhoSignOff() {
        new SignOff(ida).person("Ash", Skill.CUP, Optional.empty());
        assertThatThrownBy(() -> new ShowTraining(kim()).person("Ash")).isInstanceOf(Problem.class);
        assertThat(new ShowTraining(kim()).learners()).isEmpty();
        assertThat(new ShowTraining(ida).learners().stream().map(ShowTraining.One::name))
                .containsExactly("Ash", "Kim", "Noor");
    }
}
