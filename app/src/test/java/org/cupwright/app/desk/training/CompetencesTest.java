package org.cupwright.app.desk.training;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.training.Competence.Ended;
import org.cupwright.app.desk.training.Competence.NotYet;
import org.cupwright.app.desk.training.Competence.Signed;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.Learnt.Corrected;
import org.cupwright.app.storage.training.Learnt.SignedOff;
import org.cupwright.app.storage.training.Learnt.Trainer;
import org.cupwright.app.storage.training.Learnt.Withdrawn;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.storage.training.TrainingRecord.Somebody;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How people stand, from what was decided about them; all names are invented. */
class CompetencesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 10);
    private static final UUID FIRST = new UUID(1, 1);
    private static final UUID SECOND = new UUID(1, 2);

    private static TrainingRecord record(UUID id, String name, Learnt learnt) {
        Instant then = Instant.parse("2026-03-10T05:00:00Z");
        Somebody ida = new Somebody(Optional.empty(), "Ida");
        return new TrainingRecord(id, then, then, new Somebody(Optional.of(new UUID(5, 5)), name), ida, "", learnt);
    }

    private static TrainingRecord signed(UUID id, LocalDate day) {
        return record(id, "Ash", new SignedOff(Skill.CUTTING, day));
    }

    private static TrainingRecord withdrawn(UUID id, LocalDate day) {
        return record(id, "Ash", new Withdrawn(Skill.CUTTING, day, "a slip"));
    }

    private static TrainingRecord corrected(UUID of, Optional<LocalDate> day) {
        return record(UUID.randomUUID(), "Ash", new Corrected(of, day, "written down wrongly"));
    }

    private static Competence stands(LocalDate today, int months, TrainingRecord... decisions) {
        return new Competences(List.of(decisions), today, months).of("ash", Skill.CUTTING);
    }

    /** By hand: a month that has no such day ends on its last; the refresher's own day still counts. */
    @ParameterizedTest
    @CsvSource({
        "2026-01-31, 1, 2026-02-28, DUE, 2026-02-28",
        "2026-01-31, 1, 2026-03-01, OVERDUE, 2026-02-28",
        "2027-08-31, 6, 2028-02-29, DUE, 2028-02-29",
        "2027-08-31, 6, 2028-03-01, OVERDUE, 2028-02-29",
        "2024-02-29, 12, 2025-02-28, DUE, 2025-02-28",
        "2024-02-29, 12, 2025-03-01, OVERDUE, 2025-02-28",
        "2026-03-10, 12, 2026-03-10, GOOD, 2027-03-10",
        "2026-03-10, 12, 2027-02-10, GOOD, 2027-03-10",
        "2026-03-10, 12, 2027-02-11, DUE, 2027-03-10",
        "2026-12-31, 2, 2027-02-28, DUE, 2027-02-28",
        "2026-12-31, 2, 2027-03-01, OVERDUE, 2027-02-28"
    })
    void aRefresherIsDueAfterItsMonths(
            LocalDate day, int months, LocalDate today, Competence.State state, LocalDate refresher) {
        Competence stands = stands(today, months, signed(FIRST, day));
        assertThat(stands).isEqualTo(new Signed(day, "Ida", refresher, state));
        assertThat(stands.counts()).isEqualTo(state != Competence.State.OVERDUE);
    }

    @Test
    void whatNobodySignedOffIsNot() {
        assertThat(stands(DAY, 12)).isEqualTo(new NotYet());
        assertThat(stands(DAY, 12, record(FIRST, "Ash", new SignedOff(Skill.CUP, DAY))))
                .isEqualTo(new NotYet());
        assertThat(stands(DAY, 12, record(FIRST, "Noor", new SignedOff(Skill.CUTTING, DAY))))
                .isEqualTo(new NotYet());
    }

    @Test
    void aWithdrawalEndsItAndAnotherSignOffBeginsAnew() {
        Competence ended = stands(DAY, 12, signed(FIRST, DAY), withdrawn(SECOND, DAY));
        assertThat(ended).isEqualTo(new Ended(DAY, "Ida", "a slip"));
        assertThat(ended.counts()).isFalse();
        Competence again =
                stands(DAY.plusDays(2), 12, signed(FIRST, DAY), withdrawn(SECOND, DAY), signed(UUID.randomUUID(), DAY));
        assertThat(again.counts()).isTrue();
    }

    /** Old paper that is written down later does not stand before what was decided since. */
    @Test
    void theLatestDayCountsNotTheLatestEntry() {
        Competence stands = stands(DAY, 12, withdrawn(FIRST, DAY), signed(SECOND, DAY.minusYears(1)));
        assertThat(stands).isEqualTo(new Ended(DAY, "Ida", "a slip"));
    }

    @Test
    void aCorrectionStandsForWhatItCorrects() {
        LocalDate meant = DAY.minusMonths(13);
        Competence stands = stands(DAY, 12, signed(FIRST, DAY), corrected(FIRST, Optional.of(meant)));
        assertThat(stands).isEqualTo(new Signed(meant, "Ida", meant.plusMonths(12), Competence.State.OVERDUE));
        assertThat(stands(DAY, 12, signed(FIRST, DAY), corrected(FIRST, Optional.empty())))
                .isEqualTo(new NotYet());
        Competence twice = stands(
                DAY,
                12,
                signed(FIRST, DAY),
                corrected(FIRST, Optional.empty()),
                corrected(FIRST, Optional.of(DAY.minusDays(1))));
        assertThat(twice.counts()).isTrue();
        Competence withdrawalTakenBack =
                stands(DAY, 12, signed(FIRST, DAY), withdrawn(SECOND, DAY), corrected(SECOND, Optional.empty()));
        assertThat(withdrawalTakenBack.counts()).isTrue();
    }

    @Test
    void aTrainerIsOneUntilThatEnds() {
        TrainingRecord named = record(FIRST, "Ash", new Trainer(true));
        TrainingRecord ended = record(SECOND, "Ash", new Trainer(false));
        assertThat(new Competences(List.of(named), DAY, 12).isTrainer(new UUID(5, 5)))
                .isTrue();
        assertThat(new Competences(List.of(named, ended), DAY, 12).isTrainer(new UUID(5, 5)))
                .isFalse();
        assertThat(new Competences(List.of(), DAY, 12).isTrainer(new UUID(5, 5)))
                .isFalse();
    }

    @Test
    void thoseWhoMayAreNamedInTheOrderOfTheAlphabet() {
        Competences all = new Competences(
                List.of(
                        record(FIRST, "noor", new SignedOff(Skill.EVENT_HOLES, DAY)),
                        record(SECOND, "Ash", new SignedOff(Skill.EVENT_HOLES, DAY)),
                        record(new UUID(1, 3), "Bo", new SignedOff(Skill.EVENT_HOLES, DAY.minusYears(2)))),
                DAY,
                12);
        assertThat(all.may(Skill.EVENT_HOLES)).containsExactly("Ash", "noor");
    }
}
