package org.cupwright.app.office.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.office.MadeOffice;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WishTest {
    private static final LocalDate SUNDAY = LocalDate.of(2026, 6, 21);
    private static final LocalDate TUESDAY = LocalDate.of(2026, 6, 23);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "here:2026-06-21:7",
                "free:2026-06-21:7",
                "spoiled:2026-06-21:A: the old one, left",
                "away:2026-06-21:3.5:7",
                "swap:2026-06-21:2026-06-23:7"
            })
    void isReadAsItIsWritten(String text) {
        assertThat(Wish.of(text).text()).isEqualTo(text);
    }

    @Test
    void saysWhichHoleOnWhichDays() {
        Wish swap = Wish.of("swap:2026-06-21:2026-06-23:7");
        assertThat(swap.kind()).isEqualTo(Wish.Kind.SWAP);
        assertThat(swap.hole()).isEqualTo("7");
        assertThat(swap.on()).isEqualTo(SUNDAY);
        assertThat(swap.other()).contains(TUESDAY);
        assertThat(swap.isOf(TUESDAY, "7")).isTrue();
        assertThat(swap.isOf(TUESDAY, "8")).isFalse();
        assertThat(Wish.of("spoiled:2026-06-21:A: the old one").hole()).isEqualTo("A: the old one");
    }

    @Test
    void metresAreReadAsPeopleTypeThem() {
        assertThat(Wish.of("away:2026-06-21:2,5:7").metres()).isEqualTo(Optional.of(2.5));
        assertThat(Wish.of("away:2026-06-21: 30 :7").metres()).isEqualTo(Optional.of(30.0));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "here",
                "here:",
                "here:2026-06-21",
                "here:2026-06-21:",
                "here:2026-06-31:7",
                "there:2026-06-21:7",
                "away:2026-06-21:7",
                "away:2026-06-21:0:7",
                "away:2026-06-21:31:7",
                "away:2026-06-21:far:7",
                "swap:2026-06-21:7",
                "swap:2026-06-21:2026-06-21:7"
            })
    void whatIsNoneIsRefusedInWords(String text) {
        assertThatThrownBy(() -> Wish.of(text))
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.what().key()).isEqualTo("problem.notAWish"));
    }

    @Test
    void theLastWishForAHoleOnADayCounts() {
        Wished one = Wished.of(SUNDAY, List.of("here:2026-06-21:7", "free:2026-06-22:7", "free:2026-06-21:8"));
        assertThat(one.with(Wish.of("away:2026-06-21:2:7")).texts())
                .containsExactly("free:2026-06-22:7", "free:2026-06-21:8", "away:2026-06-21:2:7");
        assertThat(one.with(Wish.of("swap:2026-06-22:2026-06-21:7")).texts())
                .containsExactly("free:2026-06-21:8", "swap:2026-06-22:2026-06-21:7");
        assertThat(one.with(Wish.of("here:2026-06-21:7")).all()).hasSize(3);
        assertThat(one.without(Wish.of("free:2026-06-22:7")).all()).hasSize(2);
    }

    @Test
    void thePagesAddressKeepsThem() {
        assertThat(Wished.of(SUNDAY, List.of("here:2026-06-21:A & B")).address())
                .isEqualTo("/weeks?date=2026-06-21&wish=here%3A2026-06-21%3AA+%26+B");
    }

    @Test
    void saysWhatIsWanted() {
        WishText text = new WishText(MadeOffice.TEXTS);
        assertThat(text.says(Wish.of("here:2026-06-21:7"))).isEqualTo("Hole 7, Sun 21 Jun: locked where it is planned");
        assertThat(text.says(Wish.of("away:2026-06-21:2.5:7")))
                .isEqualTo("Hole 7, Sun 21 Jun: not within 2.5 m of where it is planned");
        assertThat(text.says(Wish.of("swap:2026-06-21:2026-06-23:7")))
                .isEqualTo("Hole 7: the spots of Sun 21 Jun and Tue 23 Jun are exchanged");
    }
}
