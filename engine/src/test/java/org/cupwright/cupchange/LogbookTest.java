package org.cupwright.cupchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.cupwright.cupchange.MadeFacts.cut;
import static org.cupwright.cupchange.MadeFacts.on;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LogbookTest {
    private static final Fact FIRST = on("2024-05-01T05:00:00Z", "7", cut(3, 4));
    private static final Fact SECOND = on("2024-05-02T05:00:00Z", "7", cut(8, 9));

    private static Fact correction(String when, Fact of, Payload says) {
        return on(when, "", Correction.to(of.id(), says));
    }

    @Test
    void keepsTheOrderInWhichThingsHappenedNotThatInWhichTheyArrived() {
        assertThat(Logbook.of(List.of(SECOND, FIRST)).facts()).containsExactly(FIRST, SECOND);
    }

    @Test
    void countsTheSameIdOnce() {
        Fact received = FIRST.receivedAt(Instant.parse("2024-05-01T09:00:00Z"));
        Logbook book = Logbook.of(List.of(FIRST, received, FIRST));
        assertThat(book.facts()).containsExactly(received);
    }

    @Test
    void choosesTheSameOfDifferentContentsOfAnIdWhicheverCameFirst() {
        Fact other = MadeFacts.fact(FIRST.id(), FIRST.happenedAt(), FIRST.hole(), cut(1, 1));
        Logbook one = Logbook.of(List.of(FIRST, other));
        Logbook two = Logbook.of(List.of(other, FIRST));
        assertThat(one.facts()).isEqualTo(two.facts()).hasSize(1);
    }

    @Test
    void takesACorrectionAtTheTimeOfWhatItCorrects() {
        Fact late = correction("2024-06-01T05:00:00Z", FIRST, cut(5, 5));
        Logbook book = Logbook.of(List.of(late, FIRST, SECOND));
        assertThat(book.facts()).extracting(Fact::payload).containsExactly(cut(5, 5), SECOND.payload());
    }

    @Test
    void movesAFactToTheHoleThatTheCorrectionNames() {
        Fact hole8 = on("2024-05-01T08:00:00Z", "8", Correction.to(FIRST.id(), FIRST.payload()));
        assertThat(Logbook.of(List.of(FIRST, hole8)).facts().get(0).hole()).contains("8");
    }

    @Test
    void withdrawsAFact() {
        Fact gone = on("2024-05-01T08:00:00Z", "", Correction.withdrawing(FIRST.id()));
        assertThat(Logbook.of(List.of(FIRST, gone)).facts()).isEmpty();
    }

    @Test
    void takesTheLastRecordedOfTwoCorrections() {
        Fact earlier = correction("2024-05-02T08:00:00Z", FIRST, cut(5, 5));
        Fact later = correction("2024-05-03T08:00:00Z", FIRST, cut(6, 6));
        assertThat(Logbook.of(List.of(later, FIRST, earlier)).facts())
                .extracting(Fact::payload)
                .containsExactly(cut(6, 6));
    }

    @Test
    void bringsBackWhatAWithdrawnCorrectionHadHidden() {
        Fact earlier = correction("2024-05-02T08:00:00Z", FIRST, cut(5, 5));
        Fact later = on("2024-05-03T08:00:00Z", "", Correction.withdrawing(FIRST.id()));
        Fact undone = on("2024-05-04T08:00:00Z", "", Correction.withdrawing(later.id()));
        assertThat(Logbook.of(List.of(undone, later, earlier, FIRST)).facts())
                .extracting(Fact::payload)
                .containsExactly(cut(5, 5));
    }

    @Test
    void letsACorrectedCorrectionStandInItsOwnPlace() {
        Fact wrong = correction("2024-05-02T08:00:00Z", FIRST, cut(5, 5));
        Fact better = correction("2024-05-03T08:00:00Z", wrong, cut(6, 6));
        assertThat(Logbook.of(List.of(better, FIRST, wrong)).facts())
                .extracting(Fact::payload)
                .containsExactly(cut(6, 6));
    }

    @Test
    void keepsACorrectionWaitingUntilItsFactArrives() {
        Fact early = correction("2024-05-02T08:00:00Z", FIRST, cut(5, 5));
        Logbook without = Logbook.of(List.of(early));
        assertThat(without.facts()).isEmpty();
        Logbook with = Logbook.of(List.of(early, FIRST));
        assertThat(with.facts()).extracting(Fact::payload).containsExactly(cut(5, 5));
    }

    @Test
    void letsCorrectionsInACircleWait() {
        Fact one = on("2024-05-02T08:00:00Z", "", Correction.withdrawing(FIRST.id()));
        Fact circleA =
                MadeFacts.fact(SECOND.id(), one.happenedAt(), Optional.empty(), Correction.withdrawing(one.id()));
        Fact circleB =
                MadeFacts.fact(one.id(), one.happenedAt(), Optional.empty(), Correction.withdrawing(circleA.id()));
        Logbook book = Logbook.of(List.of(circleA, circleB, FIRST));
        assertThat(book.facts()).containsExactly(FIRST);
    }

    @Test
    void leavesAFactAsItWasWhenItsCorrectionLacksTheHole() {
        Fact watered = on("2024-05-02T08:00:00Z", "", new CareWork.Irrigated(4));
        Fact holeless = correction("2024-05-03T08:00:00Z", watered, cut(5, 5));
        Logbook book = Logbook.of(List.of(watered, holeless));
        assertThat(book.facts()).containsExactly(watered);
    }

    @Test
    void refusesFactsOfTwoCourses() {
        Fact elsewhere = new Fact(
                SECOND.id(),
                1,
                SECOND.happenedAt(),
                SECOND.recordedAtDevice(),
                Optional.empty(),
                "invented person",
                "another",
                SECOND.hole(),
                SECOND.payload());
        assertThatThrownBy(() -> Logbook.of(List.of(FIRST, elsewhere))).hasMessageContaining("another");
    }
}
