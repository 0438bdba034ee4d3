package org.cupwright.formats.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FarDaysTest {
    private static final LocalDate DAY = LocalDate.of(2025, 5, 1);

    private static List<LocalDate> days(int count, LocalDate... more) {
        List<LocalDate> days = new ArrayList<>(List.of(more));
        for (int i = 0; i < count; i++) {
            days.add(DAY.plusDays(7L * i));
        }
        return days;
    }

    @Test
    void aSlipInTheYearIsFarWhicheverWay() {
        LocalDate century = DAY.minusYears(100);
        LocalDate decade = DAY.plusYears(10);
        assertThat(FarDays.among(days(10, century, century.plusDays(1), decade)))
                .containsExactlyInAnyOrder(century, century.plusDays(1), decade);
        assertThat(FarDays.among(days(2, century))).containsExactly(century);
    }

    @Test
    void aPauseOfSeasonsIsNotFar() {
        assertThat(FarDays.among(days(10, DAY.minusDays(366)))).isEmpty();
        assertThat(FarDays.among(List.of())).isEmpty();
        assertThat(FarDays.among(days(1, DAY.minusYears(3))))
                .as("nobody knows which")
                .isEmpty();
        List<LocalDate> twoBooks = days(10);
        days(4).forEach(day -> twoBooks.add(day.minusYears(5)));
        assertThat(FarDays.among(twoBooks)).as("an older notebook").isEmpty();
    }
}
